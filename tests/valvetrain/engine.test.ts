import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  companion,
  cylinderPlaces,
  engineProblems,
  firingAngleDeg,
  firingOrderFrom,
  turnToNextDeg,
  withBanksSwapped,
} from '#valvetrain';
import { checkProperty } from './checkProperty';
import { engine } from './samples';

const v8 = engine([1, 8, 4, 3, 6, 5, 7, 2]);

describe('firing order', () => {
  test('angles run from the first in order', () => {
    expect(turnToNextDeg(v8)).toBe(90);
    expect(firingAngleDeg(v8, 1)).toBe(0);
    expect(firingAngleDeg(v8, 2)).toBe(630);
    expect(() => firingAngleDeg(v8, 9)).toThrow(RangeError);
  });

  test('can be begun anywhere', () => {
    expect(firingOrderFrom(v8, 6)).toEqual([6, 5, 7, 2, 1, 8, 4, 3]);
    expect(firingOrderFrom(v8, 1)).toEqual(v8.firingOrder);
    expect(() => firingOrderFrom(v8, 0)).toThrow(RangeError);
  });

  test('an odd number of cylinders has no companions, nor has a cylinder that is not there', () => {
    const three = engine([1, 3, 2], { layout: 'inline', numbering: 'in line' });
    expect(companion(three, 1)).toBeUndefined();
    expect(companion(v8, 9)).toBeUndefined();
  });

  test('in any order of any count, companions are each other’s and 360° apart', () => {
    const met = { even: 0, odd: 0 };
    const order = fc.integer({ min: 1, max: 12 }).chain((n) =>
      fc.shuffledSubarray(
        [...Array(n).keys()].map((k) => k + 1),
        { minLength: n },
      ),
    );
    checkProperty(
      'companions',
      fc.property(order, (firingOrder) => {
        const any = engine(firingOrder, { layout: 'other', numbering: 'in line' });
        const spread = firingOrder.map((cylinder) => firingAngleDeg(any, cylinder));
        expect(Math.max(...spread) + turnToNextDeg(any)).toBeCloseTo(720, 9);
        for (const cylinder of firingOrder) {
          const other = companion(any, cylinder);
          if (firingOrder.length % 2 === 1) {
            met.odd += 1;
            expect(other).toBeUndefined();
            continue;
          }
          met.even += 1;
          expect(companion(any, other!)).toBe(cylinder);
          const apart = Math.abs(firingAngleDeg(any, cylinder) - firingAngleDeg(any, other!));
          expect(apart).toBeCloseTo(360, 9);
        }
      }),
      met,
    );
  });
});

describe('banks', () => {
  test('follow from the numbering', () => {
    expect(v8.banks).toEqual([
      [1, 3, 5, 7],
      [2, 4, 6, 8],
    ]);
    expect(engine([1, 3, 7, 2, 6, 5, 4, 8], { numbering: 'by bank' }).banks).toEqual([
      [1, 2, 3, 4],
      [5, 6, 7, 8],
    ]);
    expect(engine([1, 3, 4, 2], { layout: 'inline', numbering: 'in line' }).banks).toEqual([
      [1, 2, 3, 4],
    ]);
    expect(engine([1, 2], { numbering: 'typed', banks: [[2], [1]] }).banks).toEqual([[2], [1]]);
  });

  test('give each cylinder its place from above', () => {
    expect(cylinderPlaces(v8)).toContainEqual({ cylinder: 6, bank: 1, fromFront: 2 });
    expect(cylinderPlaces(v8)).toHaveLength(8);
  });

  test('can change sides, and the engine stays sound', () => {
    const swapped = withBanksSwapped(v8);
    expect(swapped.banks).toEqual([
      [2, 4, 6, 8],
      [1, 3, 5, 7],
    ]);
    expect(engineProblems(swapped)).toEqual([]);
    expect(v8.banks[0]).toEqual([1, 3, 5, 7]);
  });
});
