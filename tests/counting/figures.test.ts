import { describe, expect, test } from 'vitest';
import { callOf, figuresForCount, markOf, mostOf, stepOf, unitOf, windowFor } from '#counting';
import type { ValveGroup } from '#valvetrain';
import { allValves, countNow, eightCylinders, exhaust, intake, longTravel, THOU } from './samples';

const short = { ...longTravel, plungerTravelMm: 100 * THOU };
const intakes: ValveGroup = {
  id: 'in',
  name: 'intakes',
  window: short,
  members: { kind: 'valve', valve: 'intake' },
};

describe('figures', () => {
  test('a count is its quarters by the travel per quarter', () => {
    const figures = figuresForCount(eightCylinders, exhaust(1), 54);
    // TRADE check: M8 × 1.25 at 1.7 is 19.54 thou a quarter; 4½ are 87.9.
    expect((figures.preloadMm ?? 0) / THOU).toBeCloseTo(87.9, 1);
    expect(figures).toMatchObject({ verdict: 'fits', window: longTravel, pastTravel: false });
  });

  test('past the plunger’s travel is told', () => {
    expect(figuresForCount(eightCylinders, exhaust(1), 120).pastTravel).toBe(false);
    expect(figuresForCount(eightCylinders, exhaust(1), 124).pastTravel).toBe(true);
  });

  test('without an adjuster there is no preload and no verdict, with its window all the same', () => {
    const setUp = { ...eightCylinders, adjuster: null };
    expect(figuresForCount(setUp, exhaust(1), 54)).toEqual({
      preloadMm: null,
      verdict: null,
      window: longTravel,
      pastTravel: false,
      sure: null,
    });
    expect(figuresForCount(countNow, null, 54).window).toBeNull();
  });

  test('a window belongs to the valve’s group; without a name only one that all share', () => {
    const grouped = { ...eightCylinders, groups: [allValves, intakes] };
    expect(windowFor(grouped, intake(1))).toBe(short);
    expect(windowFor(grouped, exhaust(1))).toBe(longTravel);
    expect(windowFor(grouped, null)).toBeNull();
    expect(windowFor(eightCylinders, null)).toBe(longTravel);
  });
});

describe('ways of calling', () => {
  test.each([
    ['quarters', { way: 'quarters' }, 12, 12, 480],
    ['turns', { way: 'turns' }, 48, 12, 1920],
    ['strokes of 30°', { way: 'strokes', degrees: 30 }, 4, 4, 160],
    ['strokes of 45°', { way: 'strokes', degrees: 45 }, 6, 6, 240],
    ['strokes of 60°', { way: 'strokes', degrees: 60 }, 8, 8, 320],
    ['strokes of 90°', { way: 'strokes', degrees: 90 }, 12, 12, 480],
  ] as const)('%s: the unit, the step and the most', (_, calling, unit, step, most) => {
    expect(unitOf(calling)).toBe(unit);
    expect(stepOf(calling)).toBe(step);
    expect(markOf(calling)).toBe(step);
    expect(mostOf(calling)).toBe(most);
    expect(callOf(3, calling)).toBe(3 * unit);
  });
});
