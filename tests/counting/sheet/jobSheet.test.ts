import { describe, expect, test } from 'vitest';
import { jobSheet } from '#counting';
import { turn48 } from '#valvetrain';
import { afterAll, countAll, openedJob } from '../../fakes/countedJob';
import { oneCylinder, v8SetUp } from '../../fakes/setUps';

const IN = 25.4;
const PER_QUARTER_MM = (1.25 * (1 + 1 / 1.7)) / 4;
const counted = countAll(openedJob(), ({ cylinder }) => (cylinder === 5 ? 7 : 4.5));

describe('the sheet of a counted engine', () => {
  const sheet = jobSheet(counted.state)!;

  test('all sixteen by cylinder number, intake first, with reading, figure and verdict', () => {
    expect(sheet.valves.map(({ valve }) => `${valve.cylinder}${valve.valve[0]}`).join(' ')).toBe(
      '1i 1e 2i 2e 3i 3e 4i 4e 5i 5e 6i 6e 7i 7e 8i 8e',
    );
    const [first] = sheet.valves;
    expect(first!.group).toBe('All valves');
    expect(first!.readings).toHaveLength(1);
    expect(first!.measured.figures!.preloadMm).toBeCloseTo(4.5 * PER_QUARTER_MM, 9);
    expect(first!.measured.figures!.verdict).toBe('fits');
  });

  test('a valve far from its fellows is named', () => {
    const off = sheet.valves.filter(({ distrusted }) => distrusted !== null);
    expect(off.map(({ valve }) => valve.cylinder)).toEqual([5, 5]);
  });

  test('predicted is the reading moved by the change of length', () => {
    for (const { measured, orderedMm, predicted } of sheet.valves) {
      expect(predicted!.preload.preloadMm).toBeCloseTo(
        measured.figures!.preloadMm! + orderedMm! - 8.15 * IN,
        9,
      );
    }
    expect(sheet.finalCheck).toBe(false);
    expect(sheet.valves.every(({ final }) => final === null)).toBe(true);
  });

  test('the travel with what it might have been taken for', () => {
    expect(sheet.travel!.perQuarterMm).toBeCloseTo(PER_QUARTER_MM, 9);
    expect(sheet.travel!.byPitchAloneMm).toBeCloseTo(1.25 / 4, 9);
    expect(sheet.travel!.basis).toBe('geometry');
  });

  test('counted from the first reading to the last', () => {
    const seats = counted.events.filter(({ type }) => type === 'seated').map(({ at }) => at);
    expect(sheet.counted).toEqual({ from: Math.min(...seats), to: Math.max(...seats) });
  });

  test('another answer may be asked for', () => {
    const other = jobSheet(counted.state, 'fewest lengths')!;
    expect(other.order!.taken.scheme).toBe('fewest lengths');
    expect(other.valves.map(({ orderedMm }) => orderedMm)).toEqual(
      other
        .order!.taken.valves.toSorted(
          (a, b) => a.id.cylinder - b.id.cylinder || b.id.valve.localeCompare(a.id.valve),
        )
        .map(({ lengthMm }) => lengthMm),
    );
  });
});

test('in a final check: what was fitted, what it predicts, what was found', () => {
  const length = { mm: 8.175 * IN, convention: 'tip to tip' } as const;
  const fitted = afterAll(
    countAll(openedJob(oneCylinder()), () => 4),
    { type: 'startRound', purpose: 'final check' },
    { type: 'fitPushrod', length },
  );
  const { state } = countAll(fitted, ({ valve }) => (valve === 'intake' ? 5.25 : 3));
  const sheet = jobSheet(state)!;
  expect(sheet.finalCheck).toBe(true);
  const [intake, exhaust] = sheet.valves;
  const predicted = 4 * PER_QUARTER_MM + 0.025 * IN;
  expect(intake!.predicted!.preload.preloadMm).toBeCloseTo(predicted, 9);
  expect(intake!.final!.fitted).toEqual(length);
  expect(intake!.final!.line.figures!.preloadMm).toBeCloseTo(5.25 * PER_QUARTER_MM, 9);
  expect(intake!.final!.agreement!.agrees).toBe(true);
  expect(exhaust!.final!.agreement!.agrees).toBe(false);
  // The measuring round stays what the sheet shows as readings.
  expect(intake!.measured.figures!.preloadMm).toBeCloseTo(4 * PER_QUARTER_MM, 9);
});

test('repeats that do not agree are told, with every reading', () => {
  const twice = afterAll(
    countAll(openedJob(oneCylinder()), () => 4),
    { type: 'repeat' },
    { type: 'zero' },
    { type: 'call', to48: turn48(84), form: 'turns' },
    { type: 'seat', loose: false },
    { type: 'land', word: 'nothing' },
  );
  const valves = jobSheet(twice.state)!.valves.filter(({ readings }) => readings.length > 1);
  expect(valves).toHaveLength(1);
  expect(valves[0]!.disagrees).toMatchObject({ with: 'repeat' });
});

test('adjustable rockers: where to stop, nothing ordered', () => {
  const setUp = oneCylinder({ rockers: 'adjustable' });
  const sheet = jobSheet(countAll(openedJob(setUp), () => 4).state)!;
  expect(sheet.order).toBeNull();
  expect(sheet.stops).toHaveLength(1);
  expect(sheet.valves.map(({ orderedMm, predicted }) => [orderedMm, predicted])).toEqual([
    [null, null],
    [null, null],
  ]);
});

test('nothing read, and no engine at all: a sheet all the same', () => {
  const empty = jobSheet(openedJob().state)!;
  expect(empty.valves).toHaveLength(16);
  expect(empty).toMatchObject({ counted: null, order: null });
  const bare = jobSheet(openedJob(v8SetUp({ engine: null, scope: [], adjuster: null })).state)!;
  expect(bare).toMatchObject({ valves: [], travel: null });
});
