import { screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { expect, test } from 'vitest';
import { type CommandBody, type SetUp, setUpOf } from '#counting';
import { turn48 } from '#valvetrain';
import ResultsScreen from '../../../src/screens/results';
import type { Services } from '../../../src/screens/services';
import { oneCylinder } from '../../fakes/setUps';
import { draw, fakeServices, openJob } from '../services';

const user = userEvent.setup();
const THOU = 0.0254;
const exhaust = { cylinder: 1, valve: 'exhaust' } as const;

function run(services: Services, ...commands: readonly CommandBody[]): void {
  for (const command of commands) services.touch(command);
}

/** The exhaust of one, from zero to so many whole quarters and nothing past. */
function count(services: Services, quarters: number, again = false): void {
  run(
    services,
    ...(again ? [{ type: 'repeat' } as const] : []),
    { type: 'zero' },
    { type: 'call', to48: turn48(12 * quarters), form: 'turns' },
    { type: 'seat', loose: false },
    { type: 'land', word: 'nothing' },
  );
}

async function began(changes: Partial<SetUp> = {}): Promise<Services> {
  const { services } = fakeServices();
  await openJob(services, oneCylinder(changes));
  run(services, { type: 'cautionsHeard' }, { type: 'crankThere' });
  return services;
}

const section = (name: string) => screen.getByRole('region', { name });

test('what would settle a verdict stands in order, and that no count will', async () => {
  const services = await began();
  count(services, 4);
  draw(<ResultsScreen />, services);
  const part = screen.getByText('What would settle them').closest('details')!;
  const remedies = within(part)
    .getAllByRole('listitem', { hidden: true })
    .map((item) => item.textContent);
  // At 78 thou, 3.2 from 75: the travel's own share alone leaves 5.2, and half a quarter about as much.
  expect(remedies).toEqual([
    expect.stringMatching(/^Measure the travel of a turn: with 3 more counts it settles it\.$/),
    expect.stringMatching(/^Find zero again and recount: no count will: 5 thou stays/),
    'Read the last landing by the clock hour: not enough alone.',
    'Use a dial indicator: settles it.',
  ]);
});

test('two counts of one valve on one pushrod stand side by side with their mean', async () => {
  const services = await began();
  count(services, 4);
  count(services, 5, true);
  draw(<ResultsScreen />, services);
  const row = section('Read more than once').querySelector('[data-valve="1 exhaust"]');
  // 78.2 and 97.7; their mean 87.9; 1.96 u of the difference with 0.15 and half a quarter is about 9.
  expect(row).toHaveTextContent('4: 78 thou5: 98 thou');
  expect(row).toHaveTextContent('88 thou');
  expect(row).toHaveTextContent('mean of 2');
  expect(row).toHaveTextContent(
    'Repeats don’t agree: count again20 thou apart, noise up to 9 thou',
  );
});

test('the travel by two test lengths is offered, and its button says what it changes', async () => {
  const services = await began();
  count(services, 4);
  run(services, {
    type: 'fitPushrod',
    length: { mm: 8.2 * 25.4, convention: 'tip to tip' },
  });
  count(services, 7, true);
  draw(<ResultsScreen />, services);
  const part = section('Travel per quarter turn');
  // 50 thou longer came to 3 quarters: 16.67 thou.
  expect(part).toHaveTextContent('8.150 in, 8.200 in: 16.7 thou give or take');
  await user.click(
    within(part).getByRole('button', { name: 'Use 16.7 thou: works out 2 readings anew' }),
  );
  const setUp = setUpOf(services.bench.store.getState().job);
  expect(setUp?.adjuster?.measuredTravelPerQuarterMm).toBeCloseTo((50 / 3) * THOU, 9);
  expect(setUp?.measuredTravel?.basis).toBe('two test lengths');
  expect(part).toHaveTextContent('Used now: 16.7 thou');
  expect(part).toHaveTextContent('in use');
});

test('counts that do not rise with the length are told as such, and nothing is offered', async () => {
  const services = await began();
  count(services, 4);
  run(services, { type: 'fitPushrod', length: { mm: 8.2 * 25.4, convention: 'tip to tip' } });
  count(services, 3, true);
  draw(<ResultsScreen />, services);
  expect(section('Travel per quarter turn')).toHaveTextContent(
    /1 exhaust do not rise with the length/,
  );
  expect(screen.queryByRole('button', { name: /^Use / })).toBeNull();
});

test('a dial over a known count gives a travel with its own uncertainty', async () => {
  const services = await began();
  count(services, 5);
  run(services, { type: 'readDial', valve: exhaust, travelMm: 92 * THOU });
  draw(<ResultsScreen />, services);
  const part = section('Travel per quarter turn');
  expect(part).toHaveTextContent('By the dial over one count: 18.4 thou give or take');
  await user.click(within(part).getByRole('button', { name: /^Use 18\.4 thou/ }));
  expect(setUpOf(services.bench.store.getState().job)?.measuredTravel).toMatchObject({
    basis: 'dial readings',
  });
});
