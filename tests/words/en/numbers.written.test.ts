import { describe, expect, test } from 'vitest';
import type { Turn48 } from '#valvetrain';
import {
  decimalsNeeded,
  figureInches,
  figureMm,
  figureThou,
  sayThou,
  writeCount,
  writeInches,
  writeMm,
  writeThou,
} from '../../../src/words/en/numbers';

const thou = (n: number) => n * 0.0254;

describe('written figures', () => {
  test('thou, bare and with the unit', () => {
    expect(figureThou(thou(88.2))).toBe('88');
    expect(writeThou(thou(88.2))).toBe('88 thou');
    expect(writeThou(thou(99.6), 1)).toBe('99.6 thou');
    expect(writeThou(thou(-12))).toBe('−12 thou');
    expect(writeThou(thou(-0.2))).toBe('0 thou');
  });

  test('millimetres, bare and with the unit', () => {
    expect(figureMm(1.98)).toBe('1.98');
    expect(writeMm(1.9)).toBe('1.90 mm');
    expect(writeMm(1.005)).toBe('1.01 mm');
    expect(writeMm(1.9844, 1)).toBe('1.984 mm');
    expect(writeMm(-0.001)).toBe('0.00 mm');
  });

  test('inches carry at the half thou', () => {
    expect(figureInches(8.15 * 25.4)).toBe('8.150');
    expect(writeInches(8.15 * 25.4)).toBe('8.150 in');
    expect(writeInches(7.9995 * 25.4)).toBe('8.000 in');
    expect(writeInches(7.9994 * 25.4)).toBe('7.999 in');
  });

  test.each([
    [0, '0'],
    [3, '¼'],
    [4, '⅓'],
    [6, '½'],
    [9, '¾'],
    [5, '5/12'],
    [48, '4'],
    [49, '4 1/12'],
    [50, '4⅙'],
    [51, '4¼'],
    [52, '4⅓'],
    [54, '4½'],
    [56, '4⅔'],
    [58, '4⅚'],
    [57, '4¾'],
    [59, '4 11/12'],
  ])('a count of %i 48ths is written %s', (count48, written) => {
    expect(writeCount(count48 as Turn48)).toBe(written);
  });
});

describe('a decimal where rounding would carry a figure across an edge', () => {
  const edges = [thou(75), thou(110)];

  test.each([
    [74.6, 1],
    [74.4, 0],
    [75, 0],
    [75.4, 1],
    [75.6, 0],
    [88.3, 0],
    [109.7, 1],
    [110, 0],
    [110.3, 1],
    [110.6, 0],
    [0.2, 0],
  ] as const)('%d thou at edges of 75 and 110 needs %i', (value, needed) => {
    expect(decimalsNeeded(thou(value), edges, 'thou')).toBe(needed);
  });

  test('an edge between two figures', () => {
    expect(decimalsNeeded(thou(74.6), [thou(74.7)], 'thou')).toBe(1);
    expect(decimalsNeeded(thou(74.8), [thou(74.7)], 'thou')).toBe(0);
    expect(decimalsNeeded(thou(74.7), [thou(74.7)], 'thou')).toBe(1);
  });

  test('an edge has a millionth of a millimetre of slack', () => {
    expect(decimalsNeeded(thou(75) + 5e-7, edges, 'thou')).toBe(0);
    expect(decimalsNeeded(thou(75) - 5e-7, edges, 'thou')).toBe(0);
    expect(decimalsNeeded(thou(75) - 5e-6, edges, 'thou')).toBe(1);
  });

  test('millimetres go from two decimals to three', () => {
    expect(decimalsNeeded(1.904, [1.905], 'mm')).toBe(0);
    expect(decimalsNeeded(1.906, [1.905], 'mm')).toBe(0);
    expect(decimalsNeeded(1.905, [1.905], 'mm')).toBe(1);
    expect(decimalsNeeded(1.906, [1.907], 'mm')).toBe(1);
    expect(decimalsNeeded(2.5, [], 'mm')).toBe(0);
  });

  test('lash: a hair under zero is not said as zero', () => {
    const needed = decimalsNeeded(thou(-0.3), [0], 'thou');
    expect(sayThou(thou(-0.3), 'shop', needed)).toBe('minus zero point three');
  });

  test('with the decimal, a figure a tenth or more from a whole edge keeps to its side of it', () => {
    let needingOne = 0;
    for (let tenths = 700; tenths <= 1200; tenths += 1) {
      const value = thou(tenths / 10);
      const needed = decimalsNeeded(value, edges, 'thou');
      const said = Number(figureThou(value, needed));
      for (const edge of [75, 110]) {
        expect(Math.sign(said - edge)).toBe(Math.sign(tenths - edge * 10));
      }
      needingOne += needed;
    }
    expect(needingOne).toBe(18);
  });
});
