import { screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { parse } from 'csv-parse/sync';
import { describe, expect, test, vi } from 'vitest';
import { noNotes } from '#counting';
import { turn48, type ValveId } from '#valvetrain';
import SheetScreen from '../../../src/screens/sheet';
import { afterAll, type CountedJob, countAll, openedJob } from '../../fakes/countedJob';
import { settled } from '../../fakes/keeper';
import { oneCylinder, v8SetUp } from '../../fakes/setUps';
import { draw, fakeServices } from '../services';

const user = userEvent.setup();

async function shown({ events, state }: CountedJob, units: 'inch' | 'mm' = 'inch') {
  const { services, keeper } = fakeServices();
  await keeper.append(events);
  services.settings.change({ units });
  await services.bench.open(state.jobId);
  await settled();
  draw(<SheetScreen />, services);
  return { services, paper: screen.getByRole('article', { name: 'Job sheet' }) };
}

/** The last file handed over, by its ending. */
function saved(services: { save: unknown }, ending: string): string {
  const calls = vi.mocked(services.save as (name: string, text: string) => void).mock.calls;
  return calls.findLast(([name]) => name.endsWith(ending))?.[1] ?? '';
}

const cells = (paper: HTMLElement, name: string) =>
  [...(paper.querySelector(`tr[data-valve="${name}"]`)?.querySelectorAll('td') ?? [])].map(
    ({ textContent }) => textContent,
  );

/** By hand, 19.54 thou a quarter: 4½ is 87.9, 3¾ is 73.3; 8.150 keeps 4½ on target. */
const v8 = countAll(openedJob(), ({ cylinder }) => (cylinder === 3 ? 3.75 : 4.5));

describe('the sheet of sixteen valves', () => {
  test('engine, parts, method, travel and windows in words', async () => {
    const { paper } = await shown(v8);
    for (const text of [
      'V8, 1-8-4-3-6-5-7-2',
      'Left bank 1 3 5 7, right 2 4 6 8, seen from the rear',
      'Long-travel hydraulic roller',
      'Test pushrod 8.150 in tip to tip',
      'Zero felt by up-and-down play, read to half a quarter',
      '19.5 thou, by pitch and lever, ± 7 %',
      'By pitch alone 12.3 thou',
      'All valves: usable 75 to 110, preferred 80 to 100, plunger travel 180, keep-out 20 thou',
    ])
      expect(paper).toHaveTextContent(text);
  });

  test('every reading with its band and verdict, in the table and on the engine', async () => {
    const { paper } = await shown(v8);
    expect(paper.querySelectorAll('tbody tr')).toHaveLength(16);
    expect(cells(paper, '1 intake').slice(0, 4)).toEqual(['4½', '88 ± 8', '', 'Fits']);
    expect(cells(paper, '3 exhaust').slice(0, 4)).toEqual(['3¾', '73 ± 7', '', 'Light (fits?) !']);
    const plan = within(paper).getByRole('img', { name: /^Engine from above/ });
    expect(plan).toHaveAccessibleName(/1 intake 88 ± 8 Fits/);
    expect(plan.querySelectorAll('[data-mark]')).toHaveLength(16);
    expect(plan).toHaveTextContent('88±8');
  });

  test('what is to be looked at, and the cautions', async () => {
    const { paper } = await shown(v8);
    expect(paper).toHaveTextContent('Not proven across a limit that hurts: 3 intake, 3 exhaust.');
    expect(paper).toHaveTextContent('no leave to start the engine');
    expect(paper.textContent).not.toMatch(/NaN|undefined|Infinity/);
  });

  test('the CSV read back by a general library has the figures on the sheet', async () => {
    const { services, paper } = await shown(v8);
    await user.click(screen.getByRole('button', { name: 'Figures as CSV' }));
    const rows: Record<string, string>[] = parse(saved(services, '.csv'), { columns: true });
    expect(rows).toHaveLength(16);
    for (const row of rows) {
      const [, preload = '', , verdict = ''] = cells(paper, `${row.cylinder} ${row.valve}`);
      expect(`${row.preload} ± ${row.preload_band}`).toBe(preload);
      expect(verdict?.toLowerCase()).toContain(row.verdict);
    }
    expect(rows[0]).toMatchObject({
      job: 'Pump 3',
      unit: 'thou',
      readings_quarters: '4.5',
      resolution_quarters: '0.5',
      preload_mm: '2.2335',
      test_pushrod_mm: '207.01',
      final: '',
      repeats_differ: 'no',
    });
  });

  test('the JSON has the same figures under the same names', async () => {
    const { services } = await shown(v8, 'mm');
    await user.click(screen.getByRole('button', { name: 'Figures as CSV' }));
    await user.click(screen.getByRole('button', { name: 'Figures as JSON' }));
    const rows: Record<string, string>[] = parse(saved(services, '.csv'), { columns: true });
    const json = JSON.parse(saved(services, '.json'));
    expect(json).toMatchObject({ format: 'turncaller job sheet', version: 1 });
    const asText = (value: unknown) =>
      value === null ? '' : typeof value === 'boolean' ? (value ? 'yes' : 'no') : String(value);
    expect(json.valves).toHaveLength(16);
    json.valves.forEach((valve: Record<string, unknown>, at: number) => {
      for (const [name, value] of Object.entries(valve))
        expect(rows[at]?.[name]).toBe(asText(value));
    });
    expect(json.valves[0]).toMatchObject({ unit: 'mm', preload: 2.23, preload_mm: 2.2335 });
    expect(json.travelPerQuarter.byPitchAloneMm).toBeCloseTo(0.3125, 9);
  });

  test('a name that would be a formula is made harmless in the CSV', async () => {
    const { services } = await shown(countAll(openedJob(oneCylinder({ name: '=2+2' })), () => 4));
    await user.click(screen.getByRole('button', { name: 'Figures as CSV' }));
    const rows: Record<string, string>[] = parse(saved(services, '.csv'), { columns: true });
    expect(rows.map(({ job }) => job)).toEqual(["'=2+2", "'=2+2"]);
  });

  test('another answer goes on the sheet when it is chosen', async () => {
    const { paper } = await shown(v8);
    await user.selectOptions(
      screen.getByLabelText('Pushrods on the sheet'),
      screen.getByRole('option', { name: /^Fewest lengths/ }),
    );
    expect(cells(paper, '3 exhaust')[4]).toBe('8.175 in');
    await user.selectOptions(
      screen.getByLabelText('Pushrods on the sheet'),
      screen.getByRole('option', { name: /^One for all/ }),
    );
    expect(cells(paper, '3 exhaust')[4]).toBe('8.150 in');
  });
});

test('a final check: fitted, predicted, found, and whether they agree', async () => {
  const length = { mm: 8.175 * 25.4, convention: 'tip to tip' } as const;
  const fitted = afterAll(
    countAll(openedJob(oneCylinder()), () => 4),
    { type: 'startRound', purpose: 'final check' },
    { type: 'fitPushrod', length },
  );
  const { paper } = await shown(countAll(fitted, ({ valve }) => (valve === 'intake' ? 5.25 : 3)));
  // 78.2 + 25 = 103.2 predicted; 5¼ is 102.6, 3 is 58.6.
  expect(cells(paper, '1 intake').slice(4)).toEqual(['8.175 in', ' 103 ± 8', ' 103 ± 9 agrees']);
  expect(cells(paper, '1 exhaust')[6]).toMatch(/^ 59 ± \d differs$/);
  expect(paper).toHaveTextContent('8.175 in tip to tip: 2');
  expect(paper).toHaveTextContent(
    '1 exhaust: the final check differs from the prediction by 45 thou',
  );
});

test('repeats that do not agree, and a stray, stand on the sheet', async () => {
  const stray = (valve: ValveId) => (valve.cylinder === 5 && valve.valve === 'intake' ? 7 : 4.5);
  const job = afterAll(
    countAll(openedJob(), stray),
    { type: 'repeat' },
    { type: 'zero' },
    { type: 'call', to48: turn48(84), form: 'turns' },
    { type: 'seat', loose: false },
    { type: 'land', word: 'nothing' },
  );
  const { paper } = await shown(job);
  expect(paper).toHaveTextContent(
    '5 intake: 49 thou more than the other intakes; look at base circle first.',
  );
  expect(cells(paper, '5 intake')[3]).toMatch(/!$/);
  // The last of the walk is the intake of 2: 4½ and 7 quarters, 48.8 thou apart.
  expect(cells(paper, '2 intake')[0]).toBe('4½, 7');
  expect(paper).toHaveTextContent(
    /2 intake: its readings are 49 thou apart, noise up to \d+ thou\./,
  );
});

test('who and for whom are asked here, kept with the job, and stand on the sheet', async () => {
  const { services, paper } = await shown(v8);
  expect(paper).toHaveTextContent('Built by…');
  await user.type(screen.getByLabelText('Built by'), 'Wren Lode');
  await user.type(screen.getByLabelText('For'), ' Pump house ');
  await user.type(screen.getByLabelText('Tags'), 'spare, pump,');
  await user.click(screen.getByRole('button', { name: 'Keep' }));
  expect(screen.getByText('Kept with the job.')).toBeVisible();
  expect(services.bench.store.getState().job.notes).toEqual({
    ...noNotes,
    builder: 'Wren Lode',
    customer: 'Pump house',
    tags: ['spare', 'pump'],
  });
  expect(paper).toHaveTextContent('Built byWren LodeForPump house');
});

test('adjustable rockers: where to stop, no order', async () => {
  const { paper } = await shown(
    countAll(openedJob(oneCylinder({ rockers: 'adjustable' })), () => 4),
  );
  expect(paper).toHaveTextContent('All valves: stop 4½ quarters past zero lash, for 88 thou.');
  expect(paper).not.toHaveTextContent('Pushrods to order');
});

test('nothing read, and nothing described: a sheet all the same', async () => {
  const { paper } = await shown(
    openedJob(v8SetUp({ engine: null, scope: [], adjuster: null, groups: [] })),
  );
  expect(paper).toHaveTextContent('EngineNot described');
  expect(paper).toHaveTextContent('Not known: counts only');
  expect(paper).toHaveTextContent('No lifter chosen: counts are not judged');
  expect(paper.textContent).not.toMatch(/NaN|undefined|Infinity/);
});
