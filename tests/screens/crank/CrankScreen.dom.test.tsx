import { screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { expect, test } from 'vitest';
import { type SetUp, usualWalk } from '#counting';
import { valvesOf } from '#valvetrain';
import CrankScreen from '../../../src/screens/crank';
import { v8SetUp } from '../../fakes/setUps';
import { engine } from '../../valvetrain/samples';
import { draw, fakeServices, openJob } from '../services';

const user = userEvent.setup();

/** Seat durations of 280, separation 110, straight up: exhaust open 110 to 390, intake 330 to 610. */
const cam: NonNullable<SetUp['cam']> = {
  form: 'durations',
  statedAt: 'seat',
  lobes: {
    intakeDurationDeg: 280,
    exhaustDurationDeg: 280,
    lobeSeparationDeg: 110,
    intakeCentrelineDeg: 110,
  },
};

async function shown(changes: Partial<SetUp> = {}, stands = false) {
  const { services } = fakeServices();
  await openJob(services, v8SetUp({ cam, ...changes }));
  if (stands) {
    services.touch({ type: 'cautionsHeard' });
    services.touch({ type: 'crankThere' });
    services.touch({ type: 'chooseValve', cylinder: 4 });
    services.touch({ type: 'crankThere' });
  }
  draw(<CrankScreen />, services);
  return services;
}

/** The table's cells for a cylinder: piston, exhaust, intake. */
function row(cylinder: number): readonly string[] {
  const table = screen.getByRole('table', { name: 'Every valve at this angle' });
  const header = within(table).getByRole('rowheader', { name: String(cylinder) });
  return [...(header.parentElement?.querySelectorAll('td') ?? [])].map(
    (cell) => cell.textContent ?? '',
  );
}

function angle(): string | null {
  return screen.getByRole('slider', { name: 'Crank angle' }).getAttribute('aria-valuetext');
}

test('at number one’s firing TDC: every valve by the card’s own figures, worked by hand', async () => {
  await shown();
  expect(angle()).toBe('0°, 1 at its firing TDC');
  expect(row(1)).toEqual([
    'power, 0° from TDC, 0 % down',
    'shut110° off its rampmay be counted',
    'shut110° off its rampmay be counted',
  ]);
  // Six is a turn away: 360 after its own firing TDC, 30 before its exhaust shuts at 390 and 30 after
  // its intake opened at 330.
  expect(row(6)).toEqual([
    'intake, 0° from TDC, 0 % down',
    'closing30° off its base circlenot here',
    'opening30° off its base circlenot here',
  ]);
  // Eight fires 90 on, so stands at 630 of its own: its intake shut at 610, 20 ago.
  expect(row(8)[2]).toBe('shut20° off its rampmay be counted');
});

test('it says why: both valves, the companion that proves it, and the proof on the valve itself', async () => {
  await shown();
  const why = screen.getByRole('region', { name: 'Why: cylinder 1' });
  expect(why).toHaveTextContent(
    'The exhaust may be counted here: its lifter rests on base circle, 330° since it shut and 110° before it opens.',
  );
  expect(why).toHaveTextContent('6 is its companion: its valves rock here');
  expect(why).toHaveTextContent('a little further on, its pushrod has not moved');
  await user.click(screen.getByRole('button', { name: /^Cylinder 6:/ }));
  expect(screen.getByRole('region', { name: 'Why: cylinder 6' })).toHaveTextContent(
    'The intake must not be counted here: the cam has it opening, and a count would be of the cam’s lift. It is on base circle again 250° on.',
  );
});

test('by keys: a degree, the stops, and back to where the crank stands', async () => {
  await shown({}, true);
  // Four is third in 1-8-4-3-6-5-7-2.
  expect(angle()).toBe('180°, 4 at its firing TDC');
  await user.keyboard('{ArrowRight}{ArrowRight}{ArrowLeft}');
  expect(angle()).toBe('181°, 1° past 4’s firing TDC');
  await user.keyboard('{PageDown}');
  expect(angle()).toBe('270°, 3 at its firing TDC');
  await user.keyboard('{PageUp}{PageUp}{PageUp}{PageUp}');
  expect(angle()).toBe('630°, 2 at its firing TDC');
  await user.keyboard('{Home}');
  expect(angle()).toBe('180°, 4 at its firing TDC');
});

test('by touch: ten degrees either way round two turns, and the stops by name', async () => {
  await shown();
  await user.click(screen.getByRole('button', { name: 'Back 10°' }));
  expect(angle()).toBe('710°, 80° past 2’s firing TDC');
  await user.click(screen.getByRole('button', { name: 'On 10°' }));
  await user.click(screen.getByRole('button', { name: /^Stop 5/ }));
  expect(angle()).toBe('360°, 6 at its firing TDC');
  expect(screen.getByRole('button', { name: /^Stop 5/ })).toHaveAttribute('aria-current', 'step');
  expect(screen.getByRole('region', { name: 'Why: cylinder 6' })).toBeVisible();
});

test('a learned pedal goes from stop to stop, but presses the button that has the focus', async () => {
  const services = await shown();
  services.keys.setState({ pedal: ['Space'] });
  await user.keyboard(' ');
  expect(angle()).toBe('90°, 8 at its firing TDC');
  screen.getByRole('button', { name: 'On 10°' }).focus();
  await user.keyboard(' ');
  expect(angle()).toBe('100°, 10° past 8’s firing TDC');
});

test('the fewest stops: two places, what is counted at each, none of it out of the log', async () => {
  const services = await shown({ walk: { ...usualWalk, method: 'fewest stops' } });
  const stops = screen.getByRole('region', { name: 'Planned stops' });
  expect(
    within(stops)
      .getAllByRole('button')
      .map((one) => one.textContent),
  ).toEqual([
    expect.stringContaining('exhaust 1 3 4 8, intake 1 2 5 7'),
    expect.stringContaining('exhaust 2 5 6 7, intake 3 4 6 8'),
  ]);
  const before = services.bench.store.getState().job;
  await user.click(within(stops).getAllByRole('button')[1]!);
  await user.keyboard('{ArrowRight}');
  expect(services.bench.store.getState().job).toBe(before);
});

test('an odd-fire V6: its own angles, and no companion where none is a turn away', async () => {
  const odd = engine([1, 6, 5, 4, 3, 2], { firingAnglesDeg: [0, 90, 240, 330, 480, 570] });
  await shown({ engine: odd, scope: valvesOf(odd) });
  await user.keyboard('{PageDown}{PageDown}');
  expect(angle()).toBe('240°, 5 at its firing TDC');
  await user.click(screen.getByRole('button', { name: /^Cylinder 5:/ }));
  expect(screen.getByRole('region', { name: 'Why: cylinder 5' })).not.toHaveTextContent(
    'companion',
  );
});

test('an unknown cam says what it is taken for; no engine leads to the set-up', async () => {
  const { services } = fakeServices();
  await openJob(services, v8SetUp());
  const { unmount } = draw(<CrankScreen />, services);
  expect(screen.getByText(/^The cam is not known: each valve is taken/)).toBeVisible();
  unmount();
  const other = fakeServices();
  await openJob(other.services, v8SetUp({ engine: null, scope: [] }));
  draw(<CrankScreen />, other.services);
  expect(screen.getByText(/^This job has no engine yet/)).toBeVisible();
  await user.click(screen.getByRole('button', { name: 'Go to the set-up' }));
  expect(other.services.go).toHaveBeenCalledWith({ screen: 'set-up', jobId: 'job-1' });
});

test('shut, but nearer its ramp than is wanted: had better not be counted', async () => {
  await shown({ walk: { ...usualWalk, method: 'fewest stops', marginDeg: 60, at: 'any angle' } });
  await user.keyboard('{Home}');
  const { cylinder } = nearRamp();
  await user.click(screen.getByRole('button', { name: new RegExp(`^Cylinder ${cylinder}:`) }));
  expect(screen.getByRole('region', { name: `Why: cylinder ${cylinder}` })).toHaveTextContent(
    /had better not be counted here: its lifter rests on base circle, .* and 60° either way is wanted\./,
  );
});

/** The first cylinder in the table with a valve that is shut, but not to be counted. */
function nearRamp(): { readonly cylinder: number } {
  const table = screen.getByRole('table', { name: 'Every valve at this angle' });
  const found = [...table.querySelectorAll('tr[data-cylinder]')].find((one) =>
    /shut[\d.]+° off its rampnot here/.test(one.textContent ?? ''),
  );
  return { cylinder: Number(found?.getAttribute('data-cylinder')) };
}

test.each([1, 2, 3, 5, 7, 12])(
  '%i cylinders: a row and a card for each, no figure amiss',
  async (n) => {
    const order = Array.from({ length: n }, (_, place) => place + 1);
    const row = engine(order, { layout: 'inline', numbering: 'in line' });
    await shown({ engine: row, scope: valvesOf(row) });
    for (const key of ['{ArrowRight}', '{PageDown}', '{PageUp}', '{ArrowLeft}']) {
      await user.keyboard(key);
      expect(screen.getAllByRole('button', { name: /^Cylinder \d+:/ })).toHaveLength(n);
      expect(screen.getAllByRole('rowheader')).toHaveLength(n);
      expect(document.body.innerHTML).not.toMatch(/NaN|Infinity|undefined/);
    }
  },
);

test('nothing on it tells anyone to turn the crank', async () => {
  await shown({ walk: { ...usualWalk, method: 'fewest stops', at: 'any angle' } });
  const text = document.body.textContent ?? '';
  expect(text).toMatch(/Planned stops/);
  expect(text).not.toMatch(/\bturn (the crank|it|on|round)\b/i);
});
