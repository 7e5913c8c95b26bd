import { screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { expect, test } from 'vitest';
import { type CommandBody, usualWalk, type WalkChoice } from '#counting';
import { openBench } from './openBench';

const user = userEvent.setup();
const heard: CommandBody = { type: 'cautionsHeard' };
const there: CommandBody = { type: 'crankThere' };
const overshot: CommandBody = { type: 'overshot' };

function by(changes: Partial<WalkChoice>) {
  return { setUp: { walk: { ...usualWalk, ...changes } } };
}

/** One valve counted, accepted and passed on from. */
const valve: readonly CommandBody[] = [
  { type: 'zero' },
  { type: 'step', size: 'step' },
  { type: 'seat', loose: false },
  { type: 'land', word: 'half' },
  { type: 'next', cylinder: false },
];

test('a stop of many valves: its name, its proof and what to count there', async () => {
  await openBench([heard], by({ method: 'fewest stops' }));
  expect(screen.getByRole('heading', { name: 'To stop 1' })).toBeVisible();
  expect(screen.getByRole('img', { name: /^1 stop/ })).toBeVisible();
  expect(
    screen.getByText(
      'Turn the crank in its running direction to stop 1. Watch 6 cross. Count there: exhaust 1 3 4 8, intake 1 2 5 7.',
    ),
  ).toBeVisible();
});

test('the second stop is one turn on', async () => {
  const eight = Array.from({ length: 8 }, () => valve).flat();
  await openBench(
    [heard, there, ...eight, { type: 'pushrodsLoose' }],
    by({ method: 'fewest stops' }),
  );
  expect(
    screen.getByText(/^Turn the crank 360° in its running direction to stop 2\./),
  ).toHaveTextContent('Watch 1 cross. Count there: exhaust 2 5 6 7, intake 3 4 6 8.');
  expect(screen.getByRole('img', { name: /^360° to stop 2/ })).toBeVisible();
});

test('a stop of one valve is named by it, and shown by the other of its cylinder', async () => {
  const lobe = { intakeDurationDeg: 280, exhaustDurationDeg: 280 };
  const lobes = { ...lobe, lobeSeparationDeg: 110, intakeCentrelineDeg: 110 };
  const { setUp } = by({ method: 'exhaust opening, intake closing' });
  await openBench([heard], {
    setUp: { ...setUp, cam: { form: 'durations', statedAt: 'seat', lobes } },
  });
  // Two fires last, at 630: its exhaust, opening 110 after that, is the first to open from nought on.
  expect(screen.getByRole('heading', { name: 'To 2 intake' })).toBeVisible();
  expect(screen.getByRole('img', { name: /^2 intake/ })).toBeVisible();
  expect(screen.getByText(/to 2 intake\. 2’s exhaust just starts to open\.$/)).toBeVisible();
});

test('overshot is a touch: round again by two turns, never back', async () => {
  const { sent } = await openBench([heard, there, ...valve, ...valve, { type: 'pushrodsLoose' }]);
  expect(
    screen.getByText(/^Turn the crank 90° in its running direction to cylinder 8\./),
  ).toBeVisible();
  await user.click(screen.getByRole('button', { name: 'More' }));
  const more = screen.getByRole('region', { name: 'More' });
  await user.click(within(more).getByRole('button', { name: 'Overshot' }));
  expect(sent.at(-1)).toEqual(overshot);
  expect(
    screen.getByText('Gone past: round again, two turns in its running direction. Watch 5 cross.'),
  ).toBeVisible();
  expect(screen.getByRole('img', { name: /^720° round to cylinder 8/ })).toBeVisible();
});

test('with a helper nothing on the bench says turn until hands are clear, after an overshot place too', async () => {
  const { bench } = await openBench([heard], { setUp: { hands: 'with helper' } });
  const turns = () => /turn the crank|two turns/i.test(document.body.textContent ?? '');
  expect(turns()).toBe(false);
  const act = (command: CommandBody) => bench.submit(command, 'touch');
  act({ type: 'handsClear' });
  await screen.findByText(/^Turn the crank in its running direction to cylinder 1/);
  act(overshot);
  await waitFor(() =>
    expect(screen.getByRole('main')).toHaveAttribute('data-stage', 'hands clear'),
  );
  expect(turns()).toBe(false);
});

test('the crank’s picture is one press away', async () => {
  const { services } = await openBench([heard]);
  await user.click(screen.getByRole('button', { name: 'More' }));
  expect(
    within(screen.getByRole('region', { name: 'More' })).getByRole('button', { name: 'Crank' }),
  ).toBeVisible();
  expect(services.bench.store.getState().jobId).toBe('job');
});
