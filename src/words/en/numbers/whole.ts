import { requireWhole } from './range';
import { BELOW_TWENTY, TENS } from './vocabulary';

/**
 * How whole numbers are said: 'cardinal' is 'one hundred seventeen',
 * 'shop' is 'one seventeen', 'one oh five', 'one ten'.
 */
export type NumberStyle = 'cardinal' | 'shop';

/**
 * A whole number in words: 'twenty-one', 'one hundred five'.
 * From 0 to 999,999, else RangeError.
 * Source: Unicode CLDR, common/rbnf/en.xml, %spellout-cardinal.
 */
export function cardinal(n: number): string {
  requireWhole(n, 0, 999_999, 'n');
  if (n < 100) {
    return belowHundred(n);
  }
  const size = n < 1000 ? 100 : 1000;
  const lead = `${cardinal(Math.floor(n / size))} ${size === 100 ? 'hundred' : 'thousand'}`;
  const rest = n % size;
  return rest === 0 ? lead : `${lead} ${cardinal(rest)}`;
}

/**
 * A whole number as the shop says it: 'seventy-eight', 'one oh five', 'one seventeen',
 * 'two hundred'. From 0 to 999, else RangeError. Common practice, no source.
 */
export function shop(n: number): string {
  requireWhole(n, 0, 999, 'n');
  const rest = n % 100;
  if (n < 100 || rest === 0) {
    return cardinal(n);
  }
  const hundreds = belowHundred(Math.floor(n / 100));
  return rest < 10 ? `${hundreds} oh ${belowHundred(rest)}` : `${hundreds} ${belowHundred(rest)}`;
}

/**
 * A whole number in the builder's style, 0 to 999,999. The shop has no way of its own
 * past 999, so those are said as cardinals.
 */
export function sayWhole(n: number, style: NumberStyle): string {
  return style === 'shop' && n <= 999 ? shop(n) : cardinal(n);
}

function belowHundred(n: number): string {
  if (n < 20) {
    return BELOW_TWENTY[n] ?? '';
  }
  const tens = TENS[Math.floor(n / 10)] ?? '';
  return n % 10 === 0 ? tens : `${tens}-${BELOW_TWENTY[n % 10] ?? ''}`;
}
