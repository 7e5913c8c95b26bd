import { describe, expect, test } from 'vitest';
import {
  CLOCK_HOUR,
  degrees,
  HALF_QUARTER,
  QUARTER,
  QUARTER_OF_QUARTER,
  quarters,
  TURN,
  turn48,
  turn48FromDegrees,
} from '#valvetrain';

describe('counts', () => {
  test('the parts of a turn', () => {
    expect([TURN, QUARTER, HALF_QUARTER, QUARTER_OF_QUARTER, CLOCK_HOUR]).toEqual([
      48, 12, 6, 3, 4,
    ]);
  });

  test.each([
    [0, 0],
    [54, 4.5],
    [8, 2 / 3],
    [51, 4.25],
  ])('%d 48ths are %f quarters', (count, expected) => {
    expect(quarters(turn48(count))).toBe(expected);
  });

  test.each([-1, 0.5, Number.NaN, Number.POSITIVE_INFINITY, 2 ** 60])('%d is no count', (n) => {
    expect(() => turn48(n)).toThrow(RangeError);
  });

  test.each([
    [30, 4],
    [45, 6],
    [60, 8],
    [90, 12],
  ])('a stroke of %d° is %d 48ths, and back', (angleDeg, count) => {
    expect(turn48FromDegrees(angleDeg)).toBe(count);
    expect(degrees(turn48(count))).toBe(angleDeg);
  });

  test.each([50, -30, Number.NaN])('a stroke of %d° is refused', (angleDeg) => {
    expect(() => turn48FromDegrees(angleDeg)).toThrow(RangeError);
  });
});
