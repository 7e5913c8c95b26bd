/** Number words by value, zero to nineteen. */
export const BELOW_TWENTY: readonly string[] = [
  'zero',
  'one',
  'two',
  'three',
  'four',
  'five',
  'six',
  'seven',
  'eight',
  'nine',
  'ten',
  'eleven',
  'twelve',
  'thirteen',
  'fourteen',
  'fifteen',
  'sixteen',
  'seventeen',
  'eighteen',
  'nineteen',
];

/** Words for the tens by their digit; there are none for 0 and 1. */
export const TENS: readonly string[] = [
  '',
  '',
  'twenty',
  'thirty',
  'forty',
  'fifty',
  'sixty',
  'seventy',
  'eighty',
  'ninety',
];

/** One part of a whole and several of them, by how many make the whole. */
export interface PartWords {
  readonly parts: number;
  readonly one: string;
  readonly many: string;
}

/** Every way a turn (48 parts) or a quarter turn (12 parts) divides, as it is said. */
export const PARTS: readonly PartWords[] = [
  { parts: 2, one: 'half', many: 'halves' },
  { parts: 3, one: 'third', many: 'thirds' },
  { parts: 4, one: 'quarter', many: 'quarters' },
  { parts: 6, one: 'sixth', many: 'sixths' },
  { parts: 8, one: 'eighth', many: 'eighths' },
  { parts: 12, one: 'twelfth', many: 'twelfths' },
  { parts: 16, one: 'sixteenth', many: 'sixteenths' },
  { parts: 24, one: 'twenty-fourth', many: 'twenty-fourths' },
  { parts: 48, one: 'forty-eighth', many: 'forty-eighths' },
];
