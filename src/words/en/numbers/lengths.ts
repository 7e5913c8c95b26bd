import { requireBetween } from './range';
import { toSteps } from './rounding';
import { BELOW_TWENTY } from './vocabulary';
import { cardinal, type NumberStyle, sayWhole } from './whole';

/** How a length in inches is said; 'digits' is 'eight point one five oh'. */
export type LengthStyle = NumberStyle | 'digits';

/** Longest length said or written, either way from zero: a hundred inches, less the half thou that would carry. */
export const LONGEST_MM = 2539.98;

/**
 * A length as thou, without the unit's name: 'eighty-eight', 'minus twelve', or with one
 * decimal 'ninety-nine point six'. Rounded to the nearest, halves away from zero.
 * RangeError beyond a hundred inches either way.
 */
export function sayThou(mm: number, style: NumberStyle, decimals: 0 | 1 = 0): string {
  requireBetween(mm, -LONGEST_MM, LONGEST_MM, 'mm');
  return sayDecimal(toSteps(mm, 'thou', decimals), decimals, style);
}

/**
 * A length as millimetres, without the unit's name: 'one point nine eight'. Two decimals,
 * three when one extra is asked. RangeError beyond a hundred inches either way.
 */
export function sayMm(mm: number, extraDecimals: 0 | 1 = 0): string {
  requireBetween(mm, -LONGEST_MM, LONGEST_MM, 'mm');
  const decimals = 2 + extraDecimals;
  return sayDecimal(toSteps(mm, 'mm', decimals), decimals, 'cardinal');
}

/**
 * A length as inches and thousandths: 'eight, one fifty', 'eight, oh five oh', 'eight even';
 * cardinal 'eight, one hundred fifty', 'eight, zero five zero'; digits 'eight point one five oh'.
 * Below a hundred thousandths the zeros are spoken, so that 8.050 is never taken for 8.500.
 * From 0 to a hundred inches, else RangeError. Common practice, no source.
 */
export function sayLengthIn(mm: number, style: LengthStyle): string {
  requireBetween(mm, 0, LONGEST_MM, 'mm');
  const thou = toSteps(mm, 'thou', 0);
  const inches = cardinal(Math.floor(thou / 1000));
  const thousandths = thou % 1000;
  if (style === 'digits') {
    return `${inches} point ${digitByDigit(thousandths, 3, 'oh')}`;
  }
  if (thousandths === 0) {
    return `${inches} even`;
  }
  if (thousandths < 100) {
    return `${inches}, ${digitByDigit(thousandths, 3, style === 'shop' ? 'oh' : 'zero')}`;
  }
  return `${inches}, ${sayWhole(thousandths, style)}`;
}

function sayDecimal(steps: number, decimals: number, style: NumberStyle): string {
  const sign = steps < 0 ? 'minus ' : '';
  const scale = 10 ** decimals;
  const whole = sayWhole(Math.floor(Math.abs(steps) / scale), style);
  if (decimals === 0) {
    return `${sign}${whole}`;
  }
  return `${sign}${whole} point ${digitByDigit(Math.abs(steps) % scale, decimals, 'zero')}`;
}

function digitByDigit(n: number, digits: number, zero: 'oh' | 'zero'): string {
  return [...String(n).padStart(digits, '0')]
    .map((digit) => (digit === '0' ? zero : BELOW_TWENTY[Number(digit)]))
    .join(' ');
}
