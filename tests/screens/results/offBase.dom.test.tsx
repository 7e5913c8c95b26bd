import { screen, within } from '@testing-library/react';
import { expect, test } from 'vitest';
import type { CommandBody, SetUp } from '#counting';
import ResultsScreen from '../../../src/screens/results';
import { v8SetUp } from '../../fakes/setUps';
import { draw, fakeServices, openJob } from '../services';

const counted: readonly CommandBody[] = [
  { type: 'cautionsHeard' },
  { type: 'crankThere' },
  { type: 'zero' },
  { type: 'step', size: 'step' },
  { type: 'seat', loose: false },
  { type: 'land', word: 'half' },
];

/** One exhaust, counted at its firing TDC, said to have been cylinder six's all along. */
const wrong: CommandBody = { type: 'moveReading', cylinder: 6 };

async function results(setUp: SetUp, more: readonly CommandBody[]) {
  const { services } = fakeServices();
  await openJob(services, setUp);
  for (const command of [...counted, ...more]) services.touch(command);
  draw(<ResultsScreen />, services);
}

function rowOf(cylinder: number): HTMLElement {
  const table = screen.getByRole('table', { name: 'Readings' });
  const row = table.querySelector<HTMLElement>(`tr[data-valve="${cylinder} exhaust"]`);
  if (row === null) throw new Error(`no row for ${cylinder} exhaust`);
  return row;
}

test('a reading taken where its valve was on its ramp says so; one well placed does not', async () => {
  await results(v8SetUp(), []);
  expect(rowOf(1)).not.toHaveTextContent('base circle');
});

test('moved to the companion, which was at overlap there: 50° off, by the cautious cam', async () => {
  // Open 320° about 110° before TDC at overlap: its exhaust shuts 50° after that.
  await results(v8SetUp(), [wrong]);
  expect(within(rowOf(6)).getByText('counted 50° off base circle: count it again')).toBeVisible();
});

test('with more margin wanted than there was, by how much it fell short', async () => {
  // At its firing TDC 360 − 160 − 110 = 90 either way.
  const walk = {
    ...({ method: 'firing order', marginDeg: 95 } as const),
    ...({ at: 'TDCs', prefer: 'most margin' } as const),
  };
  await results(v8SetUp({ walk }), []);
  expect(
    within(rowOf(1)).getByText('counted only 90° off its ramp, 95° wanted: count it again'),
  ).toBeVisible();
});
