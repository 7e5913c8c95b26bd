import { describe, expect, test } from 'vitest';
import { hotEstimate, lengthChange, type PartsChange, travelLeftMm } from '#valvetrain';

describe('length change', () => {
  test('term by term: what was entered, where it acts, and the sum', () => {
    const changes: readonly PartsChange[] = [
      { kind: 'head or deck milled', milledMm: 0.75 },
      { kind: 'base circle smaller', diameterMm: 2 },
    ];
    expect(lengthChange(changes, 1.6)).toEqual({
      terms: [
        { change: changes[0], actsAt: 'head face', figureMm: 0.75, factor: -1, longerMm: -0.75 },
        { change: changes[1], actsAt: 'cam base circle', figureMm: 2, factor: 0.5, longerMm: 1 },
      ],
      longerMm: 0.25,
    });
  });

  test('no change is no change', () => {
    expect(lengthChange([], 1.6)).toEqual({ terms: [], longerMm: 0 });
  });

  test('not without a ratio or a figure', () => {
    expect(() => lengthChange([], 0)).toThrow(RangeError);
    expect(() => lengthChange([{ kind: 'pivot shim', shimMm: Number.NaN }], 1.6)).toThrow(
      /pivot shim/,
    );
  });
});

describe('hot estimate', () => {
  const pushrod = { material: 'steel 4140', lengthMm: 200, riseK: 70 } as const;

  test('a stack in pieces is the sum of its pieces, and the assumptions come back with it', () => {
    const assumptions = {
      stack: [
        { material: 'grey iron', lengthMm: 120, riseK: 70 },
        { material: 'aluminium 356', lengthMm: 80, riseK: 90 },
      ],
      pushrod,
      rockerRatio: 1.6,
    } as const;
    const found = hotEstimate(assumptions);
    expect(found.byStackMm).toBeCloseTo(-(11.4e-6 * 120 * 70 + 21.5e-6 * 80 * 90), 12);
    expect(found.preloadChangeMm).toBeCloseTo(found.byStackMm + found.byPushrodMm, 12);
    expect(found.byStemMm).toBe(0);
    expect(found.assumptions).toBe(assumptions);
  });

  test('not without a ratio or a length', () => {
    expect(() => hotEstimate({ stack: [], pushrod, rockerRatio: 0 })).toThrow(RangeError);
    const stack = [{ material: 'grey iron', lengthMm: Number.NaN, riseK: 70 } as const];
    expect(() => hotEstimate({ stack, pushrod, rockerRatio: 1.6 })).toThrow(RangeError);
  });
});

test.each([
  [-1, 1.6],
  [Number.NaN, 1.6],
  [1, 0],
])('a tip gap of %d at %d leaves nothing to work out', (gap, ratio) => {
  expect(() => travelLeftMm(gap, ratio)).toThrow(RangeError);
});
