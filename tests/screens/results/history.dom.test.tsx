import { screen } from '@testing-library/react';
import { expect, test } from 'vitest';
import { HistoryPart } from '../../../src/screens/results/HistoryPart';
import { countAll, openedJob } from '../../fakes/countedJob';
import { oneCylinder } from '../../fakes/setUps';
import { draw, fakeServices } from '../services';

/** Jobs of one recipe that ask for these lengths, inches: the test pushrod as long, on target. */
async function withPast(...inches: readonly number[]) {
  const made = fakeServices();
  for (const [at, length] of inches.entries()) {
    const testPushrod = { mm: length * 25.4, convention: 'tip to tip' } as const;
    const { events } = countAll(openedJob(oneCylinder({ testPushrod }), `past-${at}`), () => 4.5);
    await made.keeper.append(events);
  }
  return made.services;
}

const now = (inches: number) =>
  countAll(
    openedJob(oneCylinder({ testPushrod: { mm: inches * 25.4, convention: 'tip to tip' } }), 'now'),
    () => 4.5,
  ).state;

test('an engine unlike the last nine is warned of, and no length is presumed', async () => {
  const services = await withPast(8.15, 8.175, 8.15, 8.175, 8.15, 8.15, 8.175, 8.15, 8.175);
  draw(<HistoryPart job={now(8.075)} units="inch" />, services);
  expect(await screen.findByRole('alert')).toHaveTextContent(
    'The last nine took 8.150 to 8.175 in; this one asks for 8.075 in: check base circle first.',
  );
  expect(screen.getByText(/never in place of measuring/)).toBeVisible();
});

test('one like them: said, and no warning', async () => {
  const services = await withPast(8.15, 8.15, 8.175);
  draw(<HistoryPart job={now(8.15)} units="mm" />, services);
  expect(
    await screen.findByText(
      'The last three took 207.01 to 207.65 mm; this one asks for 207.01 mm. Nothing unusual.',
    ),
  ).toBeVisible();
  expect(screen.queryByRole('alert')).toBeNull();
});

test('too few to judge by; and none at all', async () => {
  const services = await withPast(8.25, 8.25);
  draw(<HistoryPart job={now(8.15)} units="inch" />, services);
  expect(
    await screen.findByText(/The last two took 8\.250 in; .* Too few to judge it by\./),
  ).toBeVisible();
  expect(screen.queryByRole('alert')).toBeNull();
});

test('no other job of these parts', async () => {
  draw(<HistoryPart job={now(8.15)} units="inch" />, await withPast());
  expect(await screen.findByText(/nothing to compare with/)).toBeVisible();
});
