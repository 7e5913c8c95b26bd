import { describe, expect, test } from 'vitest';
import {
  type Adjuster,
  preloadMm,
  threadById,
  travelByPitchAloneMm,
  travelPerQuarterMm,
  travelPerTurnMm,
  turn48,
} from '#valvetrain';

const INCH = 25.4;
const THOU = INCH / 1000;

function bolt(thread: string, rockerRatio: number, changes: Partial<Adjuster> = {}): Adjuster {
  const pitchMm = threadById(thread)?.pitchMm ?? Number.NaN;
  return { kind: 'pivot', pitchMm, rockerRatio, leanDeg: 0, ...changes };
}

describe('travel per turn, inches', () => {
  // Pitches: ISO 261 and ASME B1.1. The lever factor 1 + 1/R: derived. To the digits of the table.
  test.each([
    ['M6x1', '.03937', '.06562', '.06398', '.06253'],
    ['M8x1.25', '.04921', '.08202', '.07997', '.07816'],
    ['M10x1.5', '.05906', '.09843', '.09596', '.09379'],
    ['5/16-18', '.05556', '.09259', '.09028', '.08824'],
    ['5/16-24', '.04167', '.06944', '.06771', '.06618'],
    ['3/8-24', '.04167', '.06944', '.06771', '.06618'],
    ['3/8-16', '.06250', '.10417', '.10156', '.09926'],
    ['7/16-14', '.07143', '.11905', '.11607', '.11345'],
    ['7/16-20', '.05000', '.08333', '.08125', '.07941'],
  ])('%s: pitch %s, by a pivot %s at 1.5, %s at 1.6, %s at 1.7', (thread, ...printed) => {
    const inches = [
      travelPerTurnMm(bolt(thread, 1.5, { kind: 'pushrod-end screw' })),
      ...[1.5, 1.6, 1.7].map((ratio) => travelPerTurnMm(bolt(thread, ratio))),
    ].map((mm) => (mm / INCH).toFixed(5).replace(/^0/, ''));
    expect(inches).toEqual(printed);
  });

  // Derived: 1/24 × (1 + 2/3) = 5/72.
  test('3/8-24 at 1.5 is 5/72 in', () => {
    expect(travelPerTurnMm(bolt('3/8-24', 1.5)) / INCH).toBeCloseTo(5 / 72, 12);
  });

  // Derived: the screw at the valve end turns the rocker alone.
  test('a screw at the valve end gives p/R: 7/16-20 at 1.6 is .03125', () => {
    const screw = bolt('7/16-20', 1.6, { kind: 'valve-end screw' });
    expect(travelPerTurnMm(screw) / INCH).toBeCloseTo(0.03125, 12);
  });
});

/**
 * An exact rigid rocker, worked out apart from the code: the pivot goes straight down by `drop`,
 * the valve tip keeps its height, and the pushrod's cup goes down with the pivot and by the turn
 * of its arm. Arms are given by length and by how far they hang below level.
 */
function rigidCupDrop(rocker: {
  pushrodArm: number;
  valveArm: number;
  pushrodArmDownDeg: number;
  valveArmDownDeg: number;
  drop: number;
}): number {
  const valveDown = (rocker.valveArmDownDeg * Math.PI) / 180;
  const pushrodDown = (rocker.pushrodArmDownDeg * Math.PI) / 180;
  const valveDownAfter = Math.asin(Math.sin(valveDown) - rocker.drop / rocker.valveArm);
  const turned = valveDown - valveDownAfter;
  return rocker.drop + rocker.pushrodArm * (Math.sin(pushrodDown + turned) - Math.sin(pushrodDown));
}

// Derived: exact rigid lever, pushrod arm 1 in, pivot lowered .050 in.
describe('the lever factor against an exact rigid rocker', () => {
  const level = { pushrodArm: 1, pushrodArmDownDeg: 0, valveArmDownDeg: 0, drop: 0.05 };
  const at15 = { ...level, valveArm: 1.5 };

  test.each([
    [1.5, 0.08333],
    [1.6, 0.08125],
    [1.7, 0.07941],
  ])('both arms level, ratio %f: %f in, and the formula agrees exactly', (ratio, inches) => {
    const exact = rigidCupDrop({ ...level, valveArm: ratio });
    expect(exact).toBeCloseTo(inches, 5);
    expect(travelPerTurnMm(bolt('7/16-20', ratio)) / INCH).toBeCloseTo(exact, 12);
  });

  test('both arms 15° down: .08303, the formula .4 % more', () => {
    const exact = rigidCupDrop({ ...at15, pushrodArmDownDeg: 15, valveArmDownDeg: 15 });
    expect(exact.toFixed(5)).toBe('0.08303');
    expect(travelPerTurnMm(bolt('7/16-20', 1.5)) / INCH / exact).toBeCloseTo(1.0037, 4);
  });

  test('one arm alone 15° off level: .0821 to .0847, within 2 % of the formula', () => {
    const exact = [-15, 15].flatMap((deg) => [
      rigidCupDrop({ ...at15, pushrodArmDownDeg: deg }),
      rigidCupDrop({ ...at15, valveArmDownDeg: deg }),
    ]);
    expect(Math.min(...exact).toFixed(4)).toBe('0.0821');
    expect(Math.max(...exact).toFixed(4)).toBe('0.0847');
    const formula = travelPerTurnMm(bolt('7/16-20', 1.5)) / INCH;
    for (const each of exact) expect(Math.abs(formula / each - 1)).toBeLessThan(0.02);
  });
});

describe('preload', () => {
  // Derived; common practice, no source, puts this set-up between 18 and 20 thou a quarter.
  test('M8 × 1.25 at 1.7 gives 19.5 thou a quarter turn', () => {
    const thou = travelPerQuarterMm(bolt('M8x1.25', 1.7)) / THOU;
    expect(thou.toFixed(1)).toBe('19.5');
    expect(thou).toBeGreaterThan(18);
    expect(thou).toBeLessThan(20);
  });

  // Common practice, no source: 18.4 thou a quarter where it was measured.
  test.each([
    [66, 101.2],
    [60, 92.0],
  ])('%d 48ths at a measured 18.4 thou a quarter are %f thou', (count, thou) => {
    const measured = bolt('M8x1.25', 1.7, { measuredTravelPerQuarterMm: 18.4 * THOU });
    expect(preloadMm(turn48(count), measured) / THOU).toBeCloseTo(thou, 9);
  });

  // Derived: the conflict between trade texts that is shown to the builder.
  test('one turn of 3/8-24 at 1.5 is 42 thou by pitch alone and 69 by the lever', () => {
    const stud = bolt('3/8-24', 1.5);
    expect(((travelByPitchAloneMm(stud) * 4) / THOU).toFixed(0)).toBe('42');
    expect((preloadMm(turn48(48), stud) / THOU).toFixed(0)).toBe('69');
  });
});
