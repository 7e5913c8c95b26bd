import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type Adjuster,
  travelByGeometryMm,
  travelByPitchAloneMm,
  travelPerQuarterMm,
  travelPerTurnMm,
} from '#valvetrain';
import { checkProperty } from './checkProperty';
import { adjuster } from './samples';

describe('travel', () => {
  test('a measured travel takes the place of the geometry, and geometry can still be asked', () => {
    const measured = adjuster({ measuredTravelPerQuarterMm: 0.47 });
    expect(travelPerQuarterMm(measured)).toBeCloseTo(0.47, 12);
    expect(travelPerTurnMm(measured)).toBeCloseTo(1.88, 12);
    expect(travelByGeometryMm(measured)).toBe(travelPerTurnMm(adjuster()));
  });

  test('a lean of 10° shortens the part along the pushrod only', () => {
    const cos10 = 0.984807753;
    const by = (kind: Adjuster['kind']) => travelPerTurnMm(adjuster({ kind, leanDeg: 10 }));
    expect(by('pivot')).toBeCloseTo(1.25 * (cos10 + 1 / 1.5), 9);
    expect(by('pushrod-end screw')).toBeCloseTo(1.25 * cos10, 9);
    expect(by('valve-end screw')).toBeCloseTo(1.25 / 1.5, 9);
  });

  test('the pitch alone is the same for every kind, measured or not', () => {
    expect(travelByPitchAloneMm(adjuster())).toBe(0.3125);
    expect(travelByPitchAloneMm(adjuster({ kind: 'valve-end screw' }))).toBe(0.3125);
    expect(travelByPitchAloneMm(adjuster({ measuredTravelPerQuarterMm: 9 }))).toBe(0.3125);
  });

  test('moving the pivot is turning both screws; a larger ratio gives less travel', () => {
    const met = { leaning: 0 };
    const figures = fc.record({
      pitchMm: hundredths(0.2, 3),
      rockerRatio: hundredths(1, 2.4),
      leanDeg: hundredths(0, 45),
    });
    checkProperty(
      'lever',
      fc.property(figures, (given) => {
        const by = (kind: Adjuster['kind']) => travelPerTurnMm({ kind, ...given });
        if (given.leanDeg > 1) met.leaning += 1;
        expect(by('pushrod-end screw') + by('valve-end screw')).toBeCloseTo(by('pivot'), 12);
        const longer = { ...given, rockerRatio: given.rockerRatio + 0.1 };
        expect(travelPerTurnMm({ kind: 'pivot', ...longer })).toBeLessThan(by('pivot'));
      }),
      met,
    );
  });
});

/** Figures spread evenly; doubles drawn as such crowd round nought. */
function hundredths(min: number, max: number) {
  return fc.integer({ min: min * 100, max: max * 100 }).map((n) => n / 100);
}
