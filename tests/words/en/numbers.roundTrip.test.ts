import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Turn48 } from '#valvetrain';
import {
  cardinal,
  clockPosition48,
  figureInches,
  hearClock,
  heardCount48,
  hearLength,
  hearNumber,
  hearWhole,
  sayClock,
  sayLengthIn,
  sayMm,
  sayQuarters,
  sayThou,
  sayTurns,
  shop,
  writeCount,
  writeInches,
  writeMm,
  writeThou,
} from '../../../src/words/en/numbers';

function heard48(said: string, unit48: number): number | undefined {
  const heard = hearNumber(said);
  return heard === undefined ? undefined : heardCount48(heard, unit48 as Turn48);
}

describe('what is said is heard back', () => {
  test('every thou from 5.000 to 12.000 in, in all three ways and written', () => {
    let tried = 0;
    for (let thou = 5000; thou <= 12_000; thou += 1) {
      const mm = (thou * 254) / 10_000;
      for (const said of [
        sayLengthIn(mm, 'cardinal'),
        sayLengthIn(mm, 'shop'),
        sayLengthIn(mm, 'digits'),
        figureInches(mm),
        writeInches(mm),
        sayLengthIn(mm, 'shop').replaceAll(/[,-]/g, ' '),
      ]) {
        expect(hearLength(said), said).toBe(mm);
        tried += 1;
      }
    }
    console.log(`lengths said and heard back: ${tried}`);
    expect(tried).toBe(7001 * 6);
  });

  test('every 48th of a turn to 40 quarters, in quarters', () => {
    let tried = 0;
    const said = new Set<string>();
    for (let count48 = 0; count48 <= 480; count48 += 1) {
      const words = sayQuarters(count48 as Turn48);
      expect(heard48(words, 12), words).toBe(count48);
      expect(heard48(words.replaceAll('-', ' ').toUpperCase(), 12), words).toBe(count48);
      said.add(words);
      tried += 1;
    }
    console.log(`counts said in quarters and heard back: ${tried}`);
    expect(said.size).toBe(481);
  });

  test('every 48th of a turn to 40 turns, in turns, whatever unit is called', () => {
    let tried = 0;
    for (let count48 = 0; count48 <= 40 * 48; count48 += 1) {
      const words = sayTurns(count48 as Turn48);
      expect(heard48(words, 12), words).toBe(count48);
      expect(hearNumber(words)?.unit, words).toBe('turn');
      tried += 1;
    }
    console.log(`counts said in turns and heard back: ${tried}`);
    expect(tried).toBe(1921);
  });

  test('written counts of a quarter or more', () => {
    for (let count48 = 12; count48 <= 480; count48 += 1) {
      expect(heard48(writeCount(count48 as Turn48), 12), writeCount(count48 as Turn48)).toBe(
        count48,
      );
    }
  });

  test('all 48 positions of the mark, both ways', () => {
    let tried = 0;
    for (const direction of ['on', 'off'] as const) {
      for (let count48 = 0; count48 < 48; count48 += 1) {
        const heard = hearClock(sayClock(count48 as Turn48, direction));
        expect(heard && clockPosition48(heard, direction)).toBe(count48);
        tried += 1;
      }
    }
    console.log(`marks said and heard back: ${tried}`);
    expect(tried).toBe(96);
  });

  test('0 to 999 in both styles', () => {
    for (let n = 0; n <= 999; n += 1) {
      expect(hearWhole(shop(n))).toBe(n);
      expect(hearWhole(cardinal(n))).toBe(n);
      expect(hearWhole(String(n))).toBe(n);
    }
  });
});

describe('bad input', () => {
  const bad = [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, 1e12, -1e12];

  test.each(bad)('%d is refused by everything that says or writes', (value) => {
    const sayers: readonly (() => string)[] = [
      () => cardinal(value),
      () => shop(value),
      () => sayThou(value, 'shop'),
      () => sayMm(value),
      () => sayLengthIn(value, 'shop'),
      () => sayQuarters(value as Turn48),
      () => sayTurns(value as Turn48),
      () => sayClock(value as Turn48, 'on'),
      () => writeThou(value),
      () => writeMm(value),
      () => writeInches(value),
      () => writeCount(value as Turn48),
    ];
    for (const sayer of sayers) {
      expect(sayer).toThrow(RangeError);
      expect(sayer).not.toThrow(/NaN|Infinity|undefined/);
    }
  });

  test('counts and whole numbers are whole and not negative; lengths in inches are not negative', () => {
    for (const say of [
      cardinal,
      shop,
      (n: number) => sayQuarters(n as Turn48),
      (n: number) => sayTurns(n as Turn48),
      (n: number) => writeCount(n as Turn48),
      (n: number) => sayClock(n as Turn48, 'off'),
    ]) {
      expect(() => say(-1)).toThrow(RangeError);
      expect(() => say(0.5)).toThrow(RangeError);
    }
    expect(() => shop(1000)).toThrow(RangeError);
    expect(() => cardinal(1_000_000)).toThrow(RangeError);
    expect(() => sayLengthIn(-0.1, 'shop')).toThrow(RangeError);
    expect(() => clockPosition48({ hour: 13, minutes: 0 }, 'on')).toThrow(RangeError);
  });

  test('any length in range is said and written in plain words and figures', () => {
    const seed = 48;
    let tried = 0;
    fc.assert(
      fc.property(fc.double({ min: -2539, max: 2539, noNaN: true }), (mm) => {
        const decimals = tried % 2 === 0 ? 0 : 1;
        tried += 1;
        const words = [
          sayThou(mm, 'shop', decimals),
          sayThou(mm, 'cardinal', decimals),
          sayMm(mm, decimals),
          ...(['shop', 'cardinal', 'digits'] as const).map((style) =>
            sayLengthIn(Math.abs(mm), style),
          ),
        ];
        for (const said of words) {
          expect(said).toMatch(/^[a-z]+([-, ]+[a-z]+)*$/);
          expect(said).not.toMatch(/undefined|nan|infinity/);
        }
        expect(writeThou(mm, decimals)).toMatch(/^−?\d+(\.\d)? thou$/);
        expect(writeMm(mm, decimals)).toMatch(/^−?\d+\.\d{2,3} mm$/);
        expect(writeInches(mm)).toMatch(/^−?\d+\.\d{3} in$/);
      }),
      { seed, numRuns: 2000 },
    );
    console.log(`lengths said and written: ${tried}, seed ${seed}`);
    expect(tried).toBe(2000);
  });

  test('whatever text comes, hearing gives a number in range or nothing', () => {
    const seed = 1948;
    const words = fc.constantFrom(
      ...'one two for to and a half quarter quarters of turn turns point oh 8 1.5 1/2 ½ 75 4:30'.split(
        ' ',
      ),
      ...'hundred seventy five past clock oclock pm inches even , . - nuts pass the spanner'.split(
        ' ',
      ),
    );
    const text = fc.oneof(
      fc.array(words, { maxLength: 6 }).map((list) => list.join(' ')),
      fc.string({ maxLength: 20 }),
    );
    const heardOf = { number: 0, clock: 0, length: 0, whole: 0, nothing: 0 };
    fc.assert(
      fc.property(text, (said) => {
        const number = hearNumber(said);
        const clock = hearClock(said);
        const length = hearLength(said);
        const whole = hearWhole(said);
        if (number !== undefined) {
          heardOf.number += 1;
          const { num, den } = number.fraction;
          expect(num).toBeLessThan(den);
          expect(number.whole + num / den).toBeGreaterThanOrEqual(0);
          expect(number.whole + num / den).toBeLessThanOrEqual(40);
        }
        if (clock !== undefined) {
          heardOf.clock += 1;
          expect([0, 15, 30, 45]).toContain(clock.minutes);
          expect(clockPosition48(clock, 'on')).toBeLessThan(48);
        }
        if (length !== undefined) {
          heardOf.length += 1;
          expect(length).toBeGreaterThanOrEqual(25.4);
          expect(length).toBeLessThan(508);
        }
        if (whole !== undefined) {
          heardOf.whole += 1;
          expect(Number.isInteger(whole) && whole >= 0 && whole <= 999).toBe(true);
        }
        if (number === undefined && clock === undefined && length === undefined) {
          heardOf.nothing += 1;
        }
      }),
      { seed, numRuns: 20_000 },
    );
    console.log(`texts heard, seed ${seed}: ${JSON.stringify(heardOf)}`);
    expect(Math.min(heardOf.number, heardOf.clock, heardOf.length, heardOf.whole)).toBeGreaterThan(
      50,
    );
  });
});
