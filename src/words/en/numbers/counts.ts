import type { Turn48 } from '#valvetrain';
import { type Fraction, reduced } from './fractions';
import { requireWhole } from './range';
import { PARTS } from './vocabulary';
import { cardinal } from './whole';

/** 48ths of a turn in each unit a count is said in. */
export const TURN_48 = 48;
export const QUARTER_48 = 12;

/** Largest count said or written: 999 turns and a bit, far past any plunger's travel. */
export const LARGEST_COUNT_48 = 1000 * TURN_48 - 1;

/**
 * A count in quarter turns: 'four', 'four and a half', 'four and two thirds', and below one
 * 'half a quarter', 'a third of a quarter'. Every 48th of a turn has a form of its own (a 48th
 * is 'a twelfth' of a quarter), so nothing is rounded and `hearNumber` gives it back.
 * count48: whole 48ths of a turn, from 0, else RangeError.
 */
export function sayQuarters(count48: Turn48): string {
  const { whole, fraction } = countIn(count48, QUARTER_48);
  if (fraction.num === 0) {
    return cardinal(whole);
  }
  return whole === 0 ? partOf(fraction, 'quarter') : `${cardinal(whole)} and ${aPart(fraction)}`;
}

/**
 * A count in turns, with the word: 'half a turn', 'three quarters of a turn', 'one turn',
 * 'one and a quarter turns', 'zero turns'.
 * count48: whole 48ths of a turn, from 0, else RangeError.
 */
export function sayTurns(count48: Turn48): string {
  const { whole, fraction } = countIn(count48, TURN_48);
  if (fraction.num === 0) {
    return whole === 1 ? 'one turn' : `${cardinal(whole)} turns`;
  }
  return whole === 0 ? partOf(fraction, 'turn') : `${cardinal(whole)} and ${aPart(fraction)} turns`;
}

/**
 * A count as whole units and the fraction left over, in lowest terms.
 * count48: whole 48ths of a turn, from 0, else RangeError.
 */
export function countIn(
  count48: Turn48,
  unit48: typeof TURN_48 | typeof QUARTER_48,
): { readonly whole: number; readonly fraction: Fraction } {
  requireWhole(count48, 0, LARGEST_COUNT_48, 'count48');
  return { whole: Math.floor(count48 / unit48), fraction: reduced(count48 % unit48, unit48) };
}

function partOf(fraction: Fraction, unit: string): string {
  return fraction.den === 2 ? `half a ${unit}` : `${aPart(fraction)} of a ${unit}`;
}

function aPart({ num, den }: Fraction): string {
  const words = PARTS.find(({ parts }) => parts === den);
  if (words === undefined) {
    throw new RangeError('a count is whole 48ths of a turn');
  }
  if (num > 1) {
    return `${cardinal(num)} ${words.many}`;
  }
  return den === 8 ? `an ${words.one}` : `a ${words.one}`;
}
