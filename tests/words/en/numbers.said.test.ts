import { describe, expect, test } from 'vitest';
import type { Turn48 } from '#valvetrain';
import {
  cardinal,
  sayClock,
  sayLengthIn,
  sayMm,
  sayQuarters,
  sayThou,
  sayTurns,
  sayWhole,
  shop,
} from '../../../src/words/en/numbers';

const thou = (n: number) => n * 0.0254;
const inches = (n: number) => n * 25.4;

describe('numbers in the shop style', () => {
  // Common practice, no source: a stated table.
  test.each([
    [0, 'zero'],
    [1, 'one'],
    [5, 'five'],
    [9, 'nine'],
    [10, 'ten'],
    [11, 'eleven'],
    [13, 'thirteen'],
    [19, 'nineteen'],
    [20, 'twenty'],
    [21, 'twenty-one'],
    [35, 'thirty-five'],
    [40, 'forty'],
    [78, 'seventy-eight'],
    [88, 'eighty-eight'],
    [99, 'ninety-nine'],
    [100, 'one hundred'],
    [101, 'one oh one'],
    [105, 'one oh five'],
    [109, 'one oh nine'],
    [110, 'one ten'],
    [111, 'one eleven'],
    [112, 'one twelve'],
    [117, 'one seventeen'],
    [119, 'one nineteen'],
    [120, 'one twenty'],
    [121, 'one twenty-one'],
    [125, 'one twenty-five'],
    [150, 'one fifty'],
    [175, 'one seventy-five'],
    [199, 'one ninety-nine'],
    [200, 'two hundred'],
    [202, 'two oh two'],
    [210, 'two ten'],
    [375, 'three seventy-five'],
    [400, 'four hundred'],
    [500, 'five hundred'],
    [505, 'five oh five'],
    [812, 'eight twelve'],
    [900, 'nine hundred'],
    [999, 'nine ninety-nine'],
  ])('%i is said "%s"', (n, said) => {
    expect(shop(n)).toBe(said);
    expect(sayWhole(n, 'shop')).toBe(said);
  });

  test('past 999 the shop style says cardinals', () => {
    expect(sayWhole(1000, 'shop')).toBe('one thousand');
    expect(sayWhole(1000, 'cardinal')).toBe('one thousand');
  });

  test('no two numbers are said alike, in either style', () => {
    const numbers = Array.from({ length: 1000 }, (_, n) => n);
    expect(new Set(numbers.map(shop)).size).toBe(1000);
    expect(new Set(numbers.map(cardinal)).size).toBe(1000);
  });
});

describe('thou', () => {
  test.each([
    [thou(88), 'cardinal', 0, 'eighty-eight'],
    [thou(117), 'cardinal', 0, 'one hundred seventeen'],
    [thou(117), 'shop', 0, 'one seventeen'],
    [thou(99.6), 'cardinal', 0, 'one hundred'],
    [thou(99.6), 'cardinal', 1, 'ninety-nine point six'],
    [thou(110.3), 'shop', 1, 'one ten point three'],
    [thou(75.04), 'shop', 1, 'seventy-five point zero'],
    [thou(99.96), 'shop', 1, 'one hundred point zero'],
    [thou(-12), 'cardinal', 0, 'minus twelve'],
    [thou(-0.4), 'cardinal', 0, 'zero'],
    [thou(-0.04), 'cardinal', 1, 'zero point zero'],
    [thou(-0.5), 'cardinal', 0, 'minus one'],
    [thou(-0.5), 'cardinal', 1, 'minus zero point five'],
    [thou(88.5), 'cardinal', 0, 'eighty-nine'],
    [0, 'shop', 0, 'zero'],
    [-0, 'shop', 0, 'zero'],
    [thou(1500), 'shop', 0, 'one thousand five hundred'],
  ] as const)('%d mm, %s, %i decimals, is said "%s"', (mm, style, decimals, said) => {
    expect(sayThou(mm, style, decimals)).toBe(said);
  });

  test('every half thou to 200 rounds up, whatever its binary form', () => {
    for (let n = 0; n < 200; n += 1) {
      expect(sayThou(thou(n + 0.5), 'shop')).toBe(shop(n + 1));
    }
  });
});

describe('millimetres', () => {
  test.each([
    [1.98, 0, 'one point nine eight'],
    [1.9, 0, 'one point nine zero'],
    [2, 0, 'two point zero zero'],
    [0.05, 0, 'zero point zero five'],
    [1.005, 0, 'one point zero one'],
    [1.984, 1, 'one point nine eight four'],
    [207.645, 0, 'two hundred seven point six five'],
    [-0.31, 0, 'minus zero point three one'],
    [-0.004, 0, 'zero point zero zero'],
  ] as const)('%d mm with %i extra decimals is said "%s"', (mm, extra, said) => {
    expect(sayMm(mm, extra)).toBe(said);
  });
});

describe('lengths in inches', () => {
  test.each([
    [8.15, 'shop', 'eight, one fifty'],
    [8.05, 'shop', 'eight, oh five oh'],
    [8.075, 'shop', 'eight, oh seven five'],
    [8.005, 'shop', 'eight, oh oh five'],
    [8, 'shop', 'eight even'],
    [7.4, 'shop', 'seven, four hundred'],
    [7.375, 'shop', 'seven, three seventy-five'],
    [8.105, 'shop', 'eight, one oh five'],
    [8.15, 'cardinal', 'eight, one hundred fifty'],
    [8.05, 'cardinal', 'eight, zero five zero'],
    [8, 'cardinal', 'eight even'],
    [8.15, 'digits', 'eight point one five oh'],
    [8, 'digits', 'eight point oh oh oh'],
    [0.15, 'shop', 'zero, one fifty'],
    [7.9994, 'shop', 'seven, nine ninety-nine'],
    [7.9995, 'shop', 'eight even'],
    [7.9995, 'cardinal', 'eight even'],
    [7.9995, 'digits', 'eight point oh oh oh'],
    [9.9999, 'shop', 'ten even'],
    [21.25, 'shop', 'twenty-one, two fifty'],
  ] as const)('%d in, %s, is said "%s"', (length, style, said) => {
    expect(sayLengthIn(inches(length), style)).toBe(said);
  });
});

describe('counts', () => {
  test.each([
    [0, 'zero', 'zero turns'],
    [1, 'a twelfth of a quarter', 'a forty-eighth of a turn'],
    [2, 'a sixth of a quarter', 'a twenty-fourth of a turn'],
    [3, 'a quarter of a quarter', 'a sixteenth of a turn'],
    [4, 'a third of a quarter', 'a twelfth of a turn'],
    [5, 'five twelfths of a quarter', 'five forty-eighths of a turn'],
    [6, 'half a quarter', 'an eighth of a turn'],
    [8, 'two thirds of a quarter', 'a sixth of a turn'],
    [9, 'three quarters of a quarter', 'three sixteenths of a turn'],
    [10, 'five sixths of a quarter', 'five twenty-fourths of a turn'],
    [12, 'one', 'a quarter of a turn'],
    [16, 'one and a third', 'a third of a turn'],
    [18, 'one and a half', 'three eighths of a turn'],
    [24, 'two', 'half a turn'],
    [36, 'three', 'three quarters of a turn'],
    [48, 'four', 'one turn'],
    [49, 'four and a twelfth', 'one and a forty-eighth turns'],
    [51, 'four and a quarter', 'one and a sixteenth turns'],
    [52, 'four and a third', 'one and a twelfth turns'],
    [54, 'four and a half', 'one and an eighth turns'],
    [56, 'four and two thirds', 'one and a sixth turns'],
    [57, 'four and three quarters', 'one and three sixteenths turns'],
    [60, 'five', 'one and a quarter turns'],
    [72, 'six', 'one and a half turns'],
    [96, 'eight', 'two turns'],
    [480, 'forty', 'ten turns'],
  ])('%i 48ths of a turn is "%s", or "%s"', (count48, quarters, turns) => {
    expect(sayQuarters(count48 as Turn48)).toBe(quarters);
    expect(sayTurns(count48 as Turn48)).toBe(turns);
  });
});

describe('the mark as a clock', () => {
  test.each([
    [0, 'twelve', 'twelve'],
    [1, 'quarter past twelve', 'quarter to twelve'],
    [2, 'half past twelve', 'half past eleven'],
    [3, 'quarter to one', 'quarter past eleven'],
    [4, 'one', 'eleven'],
    [6, 'half past one', 'half past ten'],
    [12, 'three', 'nine'],
    [24, 'six', 'six'],
    [36, 'nine', 'three'],
    [45, 'quarter past eleven', 'quarter to one'],
    [47, 'quarter to twelve', 'quarter past twelve'],
    [48, 'twelve', 'twelve'],
    [54, 'half past one', 'half past ten'],
    [66, 'half past four', 'half past seven'],
  ])('after %i 48ths it stands at %s counting on, %s counting off', (count48, on, off) => {
    expect(sayClock(count48 as Turn48, 'on')).toBe(on);
    expect(sayClock(count48 as Turn48, 'off')).toBe(off);
  });

  test('the 48 positions have 48 names, either way', () => {
    const positions = Array.from({ length: 48 }, (_, n) => n);
    expect(new Set(positions.map((n) => sayClock(n as Turn48, 'on'))).size).toBe(48);
    expect(new Set(positions.map((n) => sayClock(n as Turn48, 'off'))).size).toBe(48);
  });
});
