/** A word recognisers write where another was said. */
export interface Homophone {
  readonly written: string;
  readonly said: string;
  readonly why: string;
}

/**
 * Read only where a number must stand, never as words in their own right: 'to' is two in
 * 'to and a half' and stays 'to' in 'quarter to one'.
 *
 * Left out on purpose: 'free' for three ('it's free' is said of a bolt), 'sex' for six (not
 * a word to act on), 'hate' for eight and 'then' for ten (everyday words of other sounds),
 * 'oh' by itself for zero (an exclamation; inside a number it is the digit).
 */
export const NUMBER_HOMOPHONES: readonly Homophone[] = [
  { written: 'won', said: 'one', why: 'same sound' },
  { written: 'wun', said: 'one', why: 'spelt as it sounds; radio spelling' },
  { written: 'to', said: 'two', why: 'same sound; the commonest slip' },
  { written: 'too', said: 'two', why: 'same sound' },
  { written: 'tree', said: 'three', why: 'th said as t; radio spelling' },
  { written: 'for', said: 'four', why: 'same sound; the commonest slip' },
  { written: 'fore', said: 'four', why: 'same sound' },
  { written: 'fife', said: 'five', why: 'v said as f; radio spelling' },
  { written: 'sics', said: 'six', why: 'same sound' },
  { written: 'sicks', said: 'six', why: 'same sound' },
  { written: 'ate', said: 'eight', why: 'same sound' },
  { written: 'nein', said: 'nine', why: 'same sound, taken for German' },
  { written: 'niner', said: 'nine', why: 'radio habit, to keep it from five' },
  { written: 'fourty', said: 'forty', why: 'a common misspelling' },
  { written: 'ninty', said: 'ninety', why: 'a common misspelling' },
];

/** Read only as the nought inside a number: 'one oh five', 'eight, oh five oh'. */
export const NOUGHT_HOMOPHONES: readonly Homophone[] = [
  { written: 'o', said: 'oh', why: 'the letter' },
  { written: 'owe', said: 'oh', why: 'same sound' },
  { written: 'nought', said: 'oh', why: 'British for the digit' },
  { written: 'naught', said: 'oh', why: 'American spelling of nought' },
];

/** Read only between a whole number and its fraction. */
export const AND_HOMOPHONES: readonly Homophone[] = [
  { written: 'an', said: 'and', why: 'the d is swallowed' },
  { written: 'n', said: 'and', why: 'spelt as it sounds' },
  { written: '&', said: 'and', why: 'the sign' },
];

/** Read only as the fraction or unit that ends a count. */
export const PART_HOMOPHONES: readonly Homophone[] = [
  { written: 'haf', said: 'half', why: 'spelt as it sounds' },
  { written: 'halve', said: 'half', why: 'nearly the same sound' },
  { written: 'quota', said: 'quarter', why: 'quarter with the r dropped' },
  { written: 'quotas', said: 'quarters', why: 'quarters with the r dropped' },
  { written: 'tern', said: 'turn', why: 'same sound' },
  { written: 'terns', said: 'turns', why: 'same sound' },
];

/** Read only between the half or the quarter and the hour of a clock. */
export const CLOCK_HOMOPHONES: readonly Homophone[] = [
  { written: 'passed', said: 'past', why: 'same sound' },
  { written: 'after', said: 'past', why: 'means the same' },
  { written: 'two', said: 'to', why: 'same sound' },
  { written: 'too', said: 'to', why: 'same sound' },
  { written: '2', said: 'to', why: 'same sound, written as a figure' },
  { written: 'till', said: 'to', why: 'means the same' },
];

/** What was said, by what was written. */
export function bySpelling(homophones: readonly Homophone[]): ReadonlyMap<string, string> {
  return new Map(homophones.map(({ written, said }) => [written, said]));
}
