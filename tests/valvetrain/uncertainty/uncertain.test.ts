import { describe, expect, test } from 'vitest';
import {
  countedPreload,
  countUncertaintyQuarters,
  DIAL_HALF_WIDTH_MM,
  dialPreload,
  guardMm,
  meanCountUncertaintyQuarters,
  rectangular,
  travelOf,
  uncertaintyMm,
  ZERO_FEEL_QUARTERS,
  zeroBias,
} from '#valvetrain';
import { adjuster } from '../samples';
import { asked, byHour, counted, travel, unasked } from './readings';

describe('a count', () => {
  test('u² = r²/12 + z²/3, in quarters', () => {
    expect(countUncertaintyQuarters(unasked) ** 2).toBeCloseTo(1 / 12 + 0.15 ** 2 / 3, 12);
    expect(countUncertaintyQuarters(asked) ** 2).toBeCloseTo(0.25 / 12 + 0.15 ** 2 / 3, 12);
    expect(countUncertaintyQuarters(byHour) ** 2).toBeCloseTo(1 / 9 / 12 + 0.15 ** 2 / 3, 12);
  });

  test('n like counts divide it by √n; unlike ones by their own', () => {
    const one = countUncertaintyQuarters(asked);
    expect(meanCountUncertaintyQuarters([asked, asked, asked, asked])).toBeCloseTo(one / 2, 12);
    const both = Math.hypot(one, countUncertaintyQuarters(byHour)) / 2;
    expect(meanCountUncertaintyQuarters([asked, byHour])).toBeCloseTo(both, 12);
  });

  test('spinning feels zero less finely than play', () => {
    expect(ZERO_FEEL_QUARTERS.spinning).toBeGreaterThan(ZERO_FEEL_QUARTERS['up-and-down play']);
  });

  test.each([[-1], [Number.NaN]])('a half-width of %d is none', (halfWidth) => {
    expect(() => rectangular(halfWidth)).toThrow(RangeError);
  });

  test('no counts have no mean', () => {
    expect(() => meanCountUncertaintyQuarters([])).toThrow(RangeError);
  });
});

describe('travel', () => {
  test('± 7 % by geometry, ± 2 % once measured, rectangular', () => {
    const geometry = travelOf(adjuster());
    expect(geometry.basis).toBe('geometry');
    expect(geometry.uMm / geometry.perQuarterMm).toBeCloseTo(0.07 / Math.sqrt(3), 12);
    const measured = travelOf(adjuster({ measuredTravelPerQuarterMm: 0.5 }));
    expect(measured).toMatchObject({ basis: 'measured', perQuarterMm: 0.5 });
    expect(measured.uMm).toBeCloseTo((0.5 * 0.02) / Math.sqrt(3), 12);
  });
});

describe('a preload', () => {
  test('keeps its own share and the common one apart; only its own shrinks', () => {
    const one = counted(4);
    const four = counted(4, 4);
    expect(four.preloadMm).toBe(one.preloadMm);
    expect(four.ownMm).toBeCloseTo(one.ownMm / 2, 12);
    expect(four.commonMm).toBe(one.commonMm);
    expect(one.commonMm).toBeCloseTo(4 * travel.uMm, 12);
    expect(uncertaintyMm(one)).toBeCloseTo(Math.hypot(one.ownMm, one.commonMm), 12);
    expect(guardMm(one)).toBeCloseTo(1.65 * uncertaintyMm(one), 12);
  });

  test('by a dial it has nothing in common with counts', () => {
    const p = dialPreload(2.2, 4);
    expect(p).toMatchObject({ preloadMm: 2.2, commonMm: 0 });
    expect(p.ownMm).toBeCloseTo(DIAL_HALF_WIDTH_MM / Math.sqrt(3) / 2, 12);
  });

  test.each([[-1], [Number.NaN], [Number.POSITIVE_INFINITY]])(
    'not from %d quarters',
    (quarters) => {
      expect(() => countedPreload(quarters, [asked], travel)).toThrow(RangeError);
    },
  );

  test.each([[0], [1.5]])('not from %d dial readings', (readings) => {
    expect(() => dialPreload(2, readings)).toThrow(RangeError);
  });
});

test('the bias at zero leans one way and is told once', () => {
  expect(zeroBias).toMatchObject({ truePreloadIs: 'a little more', say: 'once a job' });
});
