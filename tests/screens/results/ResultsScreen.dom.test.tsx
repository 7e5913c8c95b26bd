import { screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, test, vi } from 'vitest';
import type { CommandBody } from '#counting';
import ResultsScreen from '../../../src/screens/results';
import type { Services } from '../../../src/screens/services';
import { oneCylinder, v8SetUp } from '../../fakes/setUps';
import { draw, fakeServices, openJob } from '../services';

const user = userEvent.setup();

/** From zero to the seat in whole quarters, and what lay past the last one. */
function count(services: Services, quarters: number, landing: 'half' | 'nothing' | null): void {
  const commands: readonly CommandBody[] = [
    { type: 'zero' },
    ...Array.from({ length: quarters }, () => ({ type: 'step', size: 'step' }) as const),
    { type: 'seat', loose: false },
    ...(landing === null ? [] : [{ type: 'land', word: landing } as const]),
  ];
  for (const command of commands) services.touch(command);
}

/** Exhaust 4½ and intake 4 quarters on cylinder one. */
async function twoValves(setUp = oneCylinder()) {
  const { services } = fakeServices();
  const jobId = await openJob(services, setUp);
  services.touch({ type: 'cautionsHeard' });
  services.touch({ type: 'crankThere' });
  count(services, 4, 'half');
  services.touch({ type: 'next', cylinder: false });
  count(services, 4, 'nothing');
  return { services, jobId };
}

/** The cells of one valve's row. */
function cells(name: string): readonly string[] {
  const row = screen.getByRole('row', { name: new RegExp(`^${name}\\b`) });
  return within(row)
    .getAllByRole('cell')
    .map((cell) => cell.textContent ?? '');
}

describe('two valves of one cylinder', () => {
  // By hand: 1.25 × (1 + 1/1.7) / 4 = 0.49632 mm a quarter; × 4.5 = 2.2335 mm = 87.9 thou;
  // × 4 = 1.9853 mm = 78.2 thou. Usable 75 to 110, preferred 80 to 100.
  test('in inches', async () => {
    const { services } = await twoValves();
    draw(<ResultsScreen />, services);
    expect(cells('Exhaust')).toEqual(['4½to half a quarter', '88± 8', 'Fits']);
    expect(cells('Intake')).toEqual([
      '4to half a quarter',
      '78± 8',
      'Fits, light sidecan’t tell from light',
    ]);
    expect(screen.getByText('2 of 2 valves read')).toBeVisible();
  });

  test('in millimetres', async () => {
    const { services } = await twoValves();
    services.settings.change({ units: 'mm' });
    draw(<ResultsScreen />, services);
    expect(cells('Exhaust')[1]).toBe('2.23± 0.20');
    expect(cells('Intake')[1]).toBe('1.99± 0.19');
    expect(screen.getAllByText('207.01 mm')[0]).toBeVisible();
  });

  test('one length: 8.150 proves one of the two (88 and 78), 8.175 none (113 and 103)', async () => {
    const { services } = await twoValves();
    draw(<ResultsScreen />, services);
    const panel = screen.getByRole('region', { name: 'One length for all' });
    expect(within(panel).getAllByText('8.150 in')[0]).toBeVisible();
    // The intake's 78 is no more than can't tell from light, and it differs really from the exhaust.
    expect(panel).toHaveTextContent('Puts 1 of 2 inside the usable window');
    expect(panel).toHaveTextContent('1 intake: ');
    expect(panel).toHaveTextContent('Measured on a test pushrod of 8.150 in.');
    expect(panel).toHaveTextContent('Rests on 2 valves of one cylinder, not on the whole engine.');
    expect(panel).toHaveTextContent(/no leave to start the engine/);
  });

  test('the plan says every reading in words too', async () => {
    const { services } = await twoValves();
    draw(<ResultsScreen />, services);
    expect(screen.getByRole('img', { name: /1 exhaust 88 fits/ })).toBeVisible();
  });

  test('a repeat makes a mean with the first count, and what is wrong with it is said', async () => {
    const { services } = await twoValves();
    services.touch({ type: 'repeat' });
    count(services, 5, null);
    draw(<ResultsScreen />, services);
    // Unasked, the landing may lie anywhere up to the next mark: 5½ to a whole quarter. Mean of 4 and
    // 5½: 4¾ quarters, 92.8 thou.
    expect(cells('Intake')).toEqual(['5½to a whole quarter2 readings, before: 4', '93± 8', 'Fits']);
  });

  test('figures on a changed set-up stand beside the earlier ones', async () => {
    const { services } = await twoValves();
    const measured = { ...oneCylinder().adjuster!, measuredTravelPerQuarterMm: 0.46 };
    services.touch({
      type: 'changeSetUp',
      setUp: oneCylinder({ adjuster: measured }),
      appliesTo: 'all',
    });
    draw(<ResultsScreen />, services);
    // 4 × 0.46 = 1.84 mm = 72.4 thou.
    expect(cells('Intake')[1]).toBe('72± 5before the change: 78 thou, fits, light side');
    expect(cells('Intake')[2]).toBe('Lightcan’t tell from fits');
  });

  test('exports the job', async () => {
    const { services, jobId } = await twoValves();
    draw(<ResultsScreen />, services);
    await user.click(screen.getByRole('button', { name: 'Export this job' }));
    await vi.waitFor(() => expect(services.save).toHaveBeenCalledTimes(1));
    expect(services.save).toHaveBeenCalledWith('pump-3.json', expect.stringContaining(jobId));
  });
});

test('adjustable rockers order nothing and say where to stop', async () => {
  const { services } = await twoValves(oneCylinder({ rockers: 'adjustable' }));
  draw(<ResultsScreen />, services);
  const panel = screen.getByRole('region', { name: 'Where to stop' });
  expect(panel).toHaveTextContent('nothing is ordered');
  // Target 90 thou = 2.286 mm; / 0.49632 = 4.606 quarters, 4½ to the nearest quarter of one.
  expect(panel).toHaveTextContent(
    'stop at about 4½ quarters past zero lash, for 88 thou (proven usable)',
  );
});

test('nothing read yet: says so and leads to the bench', async () => {
  const { services } = fakeServices();
  const jobId = await openJob(services, v8SetUp());
  draw(<ResultsScreen />, services);
  await user.click(screen.getByRole('button', { name: 'Go to the bench' }));
  expect(services.go).toHaveBeenCalledWith({ screen: 'bench', jobId });
});

test('a reading without a name is named, and then stands in the table', async () => {
  const { services } = fakeServices();
  await openJob(services, v8SetUp({ engine: null, scope: [] }));
  services.touch({ type: 'cautionsHeard' });
  services.touch({ type: 'chooseValve' });
  count(services, 4, 'half');
  draw(<ResultsScreen />, services);
  const one = screen.getByRole('region', { name: 'Reading 1: 4½ quarters' });
  expect(one).toHaveTextContent('88 thou');
  await user.click(within(one).getByRole('button', { name: 'Name it' }));
  expect(one).toHaveTextContent('Give a cylinder’s number from 1 to 12.');
  await user.type(within(one).getByLabelText('Cylinder'), '3');
  await user.click(within(one).getByLabelText('Intake'));
  await user.click(within(one).getByRole('button', { name: 'Name it' }));
  expect(screen.queryByRole('region', { name: /^Reading 1/ })).toBeNull();
  expect(screen.getByRole('rowheader', { name: 'Cylinder 3' })).toBeVisible();
  expect(cells('Intake')[1]).toBe('88± 8');
});
