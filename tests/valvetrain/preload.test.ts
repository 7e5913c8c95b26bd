import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { preloadMm, QUARTER, travelPerQuarterMm, turn48 } from '#valvetrain';
import { checkProperty } from './checkProperty';
import { adjuster } from './samples';

describe('preload', () => {
  test('nothing counted is no preload; a quarter is the travel per quarter', () => {
    expect(preloadMm(turn48(0), adjuster())).toBe(0);
    expect(preloadMm(QUARTER, adjuster())).toBe(travelPerQuarterMm(adjuster()));
  });

  test('counts add up, and more turns are more preload', () => {
    const met = { 'between quarters': 0 };
    const count = fc.integer({ min: 1, max: 40 * 12 });
    checkProperty(
      'preload',
      fc.property(count, count, (a, b) => {
        if (a % 12 !== 0) met['between quarters'] += 1;
        const one = preloadMm(turn48(a), adjuster());
        const both = preloadMm(turn48(a + b), adjuster());
        expect(both).toBeGreaterThan(one);
        expect(both).toBeCloseTo(one + preloadMm(turn48(b), adjuster()), 9);
      }),
      met,
    );
  });
});
