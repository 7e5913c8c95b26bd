import { describe, expect, test } from 'vitest';
import { type Compared, distrusted, travelByDial, travelByLengths, valveLine } from '#counting';
import { outlierCauses } from '#valvetrain';
import { begun, bothKinds, counted, dial, fitRod } from '../counted';
import { given, type Job } from '../given';
import { eightCylinders, exhaust, intake, THOU } from '../samples';

const INCH = 25.4;
/** Thou a quarter turn, worked out here. */
const K = ((1.25 / 25.4) * 1000 * (1 + 1 / 1.7)) / 4;
const four = [exhaust(1), intake(1), exhaust(2), intake(2)];
const standing = (job: Job, valve = exhaust(1)) => valveLine(job.state, valve).standing;
const thou = (mm: number | undefined) => (mm ?? Number.NaN) / THOU;
const judged = (job: Job, what: Compared['with']) =>
  standing(job)?.compared.find((one) => one.with === what)?.agreement;

describe('repeats', () => {
  test('their mean stands, with an own share that falls by the root of their number', () => {
    const once = standing(counted(begun(), [exhaust(1), 4.5]));
    const four4 = counted(
      begun(),
      ...[4.5, 4.25, 4.75, 4.5].map((quarters) => [exhaust(1), quarters] as const),
    );
    expect(thou(standing(four4)?.preload?.preloadMm)).toBeCloseTo(4.5 * K, 6);
    expect(standing(four4)?.readings).toHaveLength(4);
    const own = standing(four4)?.preload?.ownMm ?? 0;
    expect(own).toBeCloseTo((once?.preload?.ownMm ?? 0) / 2, 9);
    expect(standing(four4)?.preload?.commonMm).toBeCloseTo(once?.preload?.commonMm ?? 0, 9);
  });

  test.each([
    [4.25, true],
    [5.5, false],
  ])('4½ and %d: whether they agree is %s', (second, agrees) => {
    const job = counted(begun(), [exhaust(1), 4.5], [exhaust(1), second]);
    // 1.96 u of the difference, each count good to r ½ and z .15; the travel cancels but for q's own.
    const own = K * Math.sqrt((0.5 ** 2 / 12 + 0.15 ** 2 / 3) * 2);
    const common = (Math.abs(second - 4.5) * K * 0.07) / Math.sqrt(3);
    const found = judged(job, 'repeat');
    expect(found?.agrees).toBe(agrees);
    expect(thou(found?.allowedMm)).toBeCloseTo(1.96 * Math.hypot(own, common), 6);
  });
});

describe('a dial beside a count', () => {
  test('stands by itself and is judged against the count', () => {
    const job = given(counted(begun(), [exhaust(1), 4.5]), [dial(1, 'exhaust', 86 * THOU)]);
    expect(standing(job)?.readings.map(({ kind }) => kind)).toEqual(['dial']);
    expect(thou(standing(job)?.preload?.preloadMm)).toBeCloseTo(86, 6);
    expect(judged(job, 'count')?.agrees).toBe(true);
  });

  test('contradicting it is plain, and neither reading is lost', () => {
    const job = given(counted(begun(), [exhaust(1), 4.5]), [dial(1, 'exhaust', 60 * THOU)]);
    expect(judged(job, 'count')?.agrees).toBe(false);
    expect(job.state.readings).toHaveLength(2);
  });

  test('counted after it, the dial is what it is held against', () => {
    const job = counted(given(begun(), [dial(1, 'exhaust', 86 * THOU)]), [exhaust(1), 4.5]);
    expect(judged(job, 'dial')?.agrees).toBe(true);
    expect(standing(job)?.readings.map(({ kind }) => kind)).toEqual(['counted']);
  });
});

test('on another test pushrod the count is judged with the lengths allowed for', () => {
  const first = counted(begun(), [exhaust(1), 3]);
  const longer = (quarters: number) =>
    counted(given(first, [fitRod(8.05 * INCH)]), [exhaust(1), quarters]);
  // 50 thou longer is 2.56 quarters more.
  expect(judged(longer(5.5), 'other pushrod')?.agrees).toBe(true);
  expect(judged(longer(4), 'other pushrod')?.agrees).toBe(false);
});

describe('readings far from their fellows', () => {
  const eight = Array.from({ length: 8 }, () => 4.5);

  test('one is distrusted, with the causes in order, and its fellows are not', () => {
    const job = counted(begun(), ...bothKinds(eight.with(5, 2), eight));
    expect(distrusted(job.state)).toEqual([
      { valve: exhaust(6), offMm: expect.any(Number), among: 8, causes: outlierCauses },
    ]);
    expect(thou(distrusted(job.state)[0]?.offMm)).toBeCloseTo(-2.5 * K, 6);
  });

  test('intakes are no fellows of exhausts', () => {
    const job = counted(
      begun(),
      ...bothKinds(
        eight,
        eight.map(() => 3),
      ),
    );
    expect(distrusted(job.state)).toEqual([]);
  });

  test('on a longer test pushrod a valve is brought to the length of the others', () => {
    const job = counted(begun(), ...bothKinds(eight.slice(0, 6), []));
    const on = (quarters: number) =>
      distrusted(counted(given(job, [fitRod(8.05 * INCH)]), [exhaust(7), quarters]).state);
    expect(on(7)).toEqual([]);
    expect(on(4.5).map(({ valve }) => valve)).toEqual([exhaust(7)]);
  });

  test('two readings have no fellows', () => {
    const job = counted(begun(), [exhaust(1), 4.5], [exhaust(2), 1]);
    expect(distrusted(job.state)).toEqual([]);
  });
});

describe('the travel measured', () => {
  const setUp = { ...eightCylinders, scope: four };
  const onCount = counted(
    begun(setUp),
    ...([4.5, 4, 5, 4.25] as const).map(
      (quarters, at) => [four[at] ?? exhaust(1), quarters] as const,
    ),
  );

  test('by dial over known counts, with its own uncertainty', () => {
    const job = given(onCount, [
      dial(1, 'exhaust', 4.5 * 18.4 * THOU),
      dial(1, 'intake', 4 * 18.4 * THOU),
      dial(2, 'exhaust', 5 * 18.4 * THOU),
    ]);
    const found = travelByDial(job.state);
    expect(thou(found?.travel.perQuarterMm)).toBeCloseTo(18.4, 6);
    expect(found?.travel.uMm ?? 0).toBeGreaterThan(0);
    expect(found?.travel.basis).toBe('dial readings');
    expect(found?.valves).toHaveLength(3);
    expect(found?.contradicting).toEqual([]);
  });

  test('a dial reading that contradicts the count is named', () => {
    const job = given(onCount, [
      dial(1, 'exhaust', 4.5 * 18.4 * THOU),
      dial(1, 'intake', 40 * THOU),
      dial(2, 'exhaust', 5 * 18.4 * THOU),
    ]);
    expect(travelByDial(job.state)?.contradicting).toContainEqual(intake(1));
  });

  test('no count, no travel', () => {
    expect(travelByDial(given(begun(setUp), [dial(1, 'exhaust', 2)]).state)).toBeNull();
    expect(travelByLengths(onCount.state)).toBeNull();
  });

  test('by the same valves on two test lengths', () => {
    const job = counted(
      given(onCount, [fitRod(8.05 * INCH)]),
      ...([7, 6.75, 7.5, 7] as const).map(
        (quarters, at) => [four[at] ?? exhaust(1), quarters] as const,
      ),
    );
    const found = travelByLengths(job.state);
    // Rises of 2½, 2¾, 2½ and 2¾ over 50 thou.
    expect(thou(found?.travel?.perQuarterMm)).toBeCloseTo(50 / 2.625, 6);
    expect(found).toMatchObject({ shorterMm: 8 * INCH, longerMm: 8.05 * INCH });
    expect(found?.valves).toHaveLength(4);
  });

  test('counts that fall with the length give none', () => {
    const job = counted(given(onCount, [fitRod(8.05 * INCH)]), [exhaust(1), 2]);
    expect(travelByLengths(job.state)).toMatchObject({ travel: null, valves: [exhaust(1)] });
  });
});
