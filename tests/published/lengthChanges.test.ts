import { describe, expect, test } from 'vitest';
import {
  ballFlatMm,
  checkingPushrodLengthMm,
  choosePushrods,
  countedPreload,
  exhaustStemStart,
  hotEstimate,
  inConvention,
  lengthChange,
  lengthNeededMm,
  type PartsChange,
  startingSets,
  travelLeftMm,
  turn48,
} from '#valvetrain';

const INCH = 25.4;
const THOU = INCH / 1000;

describe('what a parts change does to the length needed', () => {
  // Derived: the table, with R 1.6 and every figure 0.030 in.
  test.each<[PartsChange, number]>([
    [{ kind: 'head or deck milled', milledMm: 0.03 * INCH }, -0.03],
    [{ kind: 'gasket thicker', thickerMm: 0.03 * INCH }, 0.03],
    [{ kind: 'base circle smaller', diameterMm: 0.03 * INCH }, 0.015],
    [{ kind: 'lifter cup higher', higherMm: 0.03 * INCH }, -0.03],
    [{ kind: 'rocker cup higher', higherMm: 0.03 * INCH }, 0.03],
    [{ kind: 'pivot shim', shimMm: 0.03 * INCH }, 0.03 * (1 + 1 / 1.6)],
    [{ kind: 'valve tip higher, pivot fixed', higherMm: 0.03 * INCH }, -0.03 / 1.6],
    [{ kind: 'valve tip higher, pivot raised to match', higherMm: 0.03 * INCH }, 0.03],
  ])('%j: %f in', (change, inches) => {
    expect(lengthChange([change], 1.6).longerMm / INCH).toBeCloseTo(inches, 12);
  });

  // Derived: the table agrees with itself, since raising pivot and tip together lifts the rocker.
  test('a pivot shim and a tip higher by as much make the tip raised to match', () => {
    const apart: readonly PartsChange[] = [
      { kind: 'pivot shim', shimMm: 1 },
      { kind: 'valve tip higher, pivot fixed', higherMm: 1 },
    ];
    const together: PartsChange = { kind: 'valve tip higher, pivot raised to match', higherMm: 1 };
    for (const ratio of [1, 1.5, 1.7, 2.2]) {
      const one = lengthChange([together], ratio).longerMm;
      expect(lengthChange(apart, ratio).longerMm).toBeCloseTo(one, 12);
    }
  });

  // A published how-to, counting every change one to one.
  test('8.000 + 0.130 − 0.011 − 0.067 = 8.052 in', () => {
    const { longerMm, terms } = lengthChange(
      [
        { kind: 'rocker cup higher', higherMm: 0.13 * INCH },
        { kind: 'gasket thicker', thickerMm: -0.011 * INCH },
        { kind: 'head or deck milled', milledMm: 0.067 * INCH },
      ],
      1.6,
    );
    expect(8 + longerMm / INCH).toBeCloseTo(8.052, 9);
    expect(terms.map(({ actsAt }) => actsAt)).toEqual(['rocker cup', 'head gasket', 'head face']);
  });

  // Common practice, no source: milled 30 thou, the next 25 shorter.
  test('milled 30 thou: the nearest length every 25 thou is the next shorter', () => {
    const { longerMm } = lengthChange([{ kind: 'head or deck milled', milledMm: 30 * THOU }], 1.6);
    expect(Math.round(longerMm / (25 * THOU))).toBe(-1);
  });
});

describe('warm', () => {
  const stack = (material: 'aluminium 356' | 'grey iron') =>
    hotEstimate({
      stack: [{ material, lengthMm: 8 * INCH, riseK: 70 }],
      pushrod: { material: 'steel 4140', lengthMm: 8 * INCH, riseK: 70 },
      rockerRatio: 1.7,
    }).preloadChangeMm / INCH;

  // Expansion: a materials-science text, table B.6; the sums derived.
  test('an 8 in stack 70 K warmer against a 4140 pushrod: aluminium −0.00515 in, iron +0.0005', () => {
    expect(stack('aluminium 356')).toBeCloseTo(-0.00515, 5);
    expect(stack('grey iron')).toBeCloseTo(0.0005, 5);
  });

  // Derived; the stem's temperature and expansion from memory.
  test('an exhaust stem of 4.5 in, 225 K warmer, at 1.7 adds about 0.006 in', () => {
    const { byStemMm, preloadChangeMm } = hotEstimate({
      stack: [],
      pushrod: { material: 'steel 4140', lengthMm: 0, riseK: 0 },
      stem: { lengthMm: 4.5 * INCH, ...exhaustStemStart },
      rockerRatio: 1.7,
    });
    expect(byStemMm / INCH).toBeCloseTo(0.006, 4);
    expect(preloadChangeMm).toBe(byStemMm);
  });
});

// Service manual, maker withheld; derived.
test('a tip gap of 0.088 to 0.189 in at 1.61 leaves 0.0547 to 0.1174 in of travel', () => {
  expect(travelLeftMm(0.088 * INCH, 1.61) / INCH).toBeCloseTo(0.0547, 4);
  expect(travelLeftMm(0.189 * INCH, 1.61) / INCH).toBeCloseTo(0.1174, 4);
});

describe('ball flats', () => {
  // Plain geometry, derived; 'about .017' is a maker's FAQ, unnamed.
  test.each([
    [5 / 16, 0.1, 0.0164],
    [5 / 16, 0.14, 0.0331],
    [3 / 8, 0.1, 0.0136],
    [3 / 8, 0.14, 0.0271],
  ])('ball %f in, hole %f in: full ball is %f in longer', (ball, hole, inches) => {
    const end = { ballMm: ball * INCH, holeMm: hole * INCH };
    expect((2 * ballFlatMm(end)) / INCH).toBeCloseTo(inches, 4);
    const tips = { mm: 8 * INCH, convention: 'tip to tip' } as const;
    const full = inConvention(tips, 'full ball', [end, end]);
    expect(full.mm / INCH).toBeCloseTo(8 + inches, 4);
  });
});

// Common practice, no source.
describe('checking pushrod', () => {
  const rod = { closedMm: 6.8 * INCH, perTurnMm: 0.05 * INCH };

  test('6.800 in closed, ten turns: zero lash at 7.300; for 100 thou 7.400, for 75 7.375', () => {
    const zeroLashMm = checkingPushrodLengthMm(rod, turn48(480));
    expect(zeroLashMm / INCH).toBeCloseTo(7.3, 9);
    expect(lengthNeededMm(0, zeroLashMm, 100 * THOU) / INCH).toBeCloseTo(7.4, 9);
    expect(lengthNeededMm(0, zeroLashMm, 75 * THOU) / INCH).toBeCloseTo(7.375, 9);
  });

  test('half a turn is 25 thou', () => {
    const half = checkingPushrodLengthMm(rod, turn48(24)) - checkingPushrodLengthMm(rod, turn48(0));
    expect(half / THOU).toBeCloseTo(25, 9);
  });
});

// Common practice, no source: 7.400 in measured 101 thou, usable 75-110.
test('7.400 in measured 101 thou: 7.375 (76) fits too, 7.450 (151) does not', () => {
  const window = startingSets.find(({ id }) => id === 'long-travel-roller')!.window;
  const exact = { perQuarterMm: 20.2 * THOU, uMm: 0, basis: 'measured' } as const;
  const counts = [{ resolution48: 0, zeroFeelQuarters: 0 }];
  const valves = [1, 2].map((cylinder) => ({
    id: { cylinder, valve: 'intake' as const },
    preload: countedPreload(5, counts, exact),
    testLengthMm: 7.4 * INCH,
    window,
  }));
  const oneOf = (inches: readonly number[]) =>
    choosePushrods(
      valves,
      { kind: 'stock', lines: inches.map((each) => ({ lengthMm: each * INCH, quantity: 2 })) },
      { banks: [[1, 2]] },
    )?.answers[0];
  expect(oneOf([7.375])).toMatchObject({ usable: 2, fits: true });
  expect(oneOf([7.375])?.valves[0]?.preload?.preloadMm).toBeCloseTo(76 * THOU, 9);
  expect(oneOf([7.45])).toMatchObject({ usable: 0, fits: false });
  expect(oneOf([7.375, 7.4, 7.45])?.lengths[0]?.lengthMm).toBeCloseTo(7.4 * INCH, 9);
});
