import type { Turn48 } from '#valvetrain';
import { countIn, QUARTER_48 } from './counts';
import type { Fraction } from './fractions';
import { LONGEST_MM } from './lengths';
import { requireBetween } from './range';
import { type LengthUnit, toSteps } from './rounding';

/** A length in thou as a bare figure: '88', '99.6', '−12'. RangeError beyond a hundred inches. */
export function figureThou(mm: number, decimals: 0 | 1 = 0): string {
  return figure(mm, 'thou', decimals);
}

/** A length in millimetres as a bare figure: '1.98', with one extra decimal '1.984'. */
export function figureMm(mm: number, extraDecimals: 0 | 1 = 0): string {
  return figure(mm, 'mm', 2 + extraDecimals);
}

/** A length in inches as a bare figure, to the thou: '8.150'. RangeError beyond a hundred inches. */
export function figureInches(mm: number): string {
  requireBetween(mm, -LONGEST_MM, LONGEST_MM, 'mm');
  return fixed(toSteps(mm, 'thou', 0), 3);
}

/** As `figureThou`, with its unit: '88 thou'. */
export function writeThou(mm: number, decimals: 0 | 1 = 0): string {
  return `${figureThou(mm, decimals)} thou`;
}

/** As `figureMm`, with its unit: '1.98 mm'. */
export function writeMm(mm: number, extraDecimals: 0 | 1 = 0): string {
  return `${figureMm(mm, extraDecimals)} mm`;
}

/** As `figureInches`, with its unit: '8.150 in'. */
export function writeInches(mm: number): string {
  return `${figureInches(mm)} in`;
}

/**
 * A count in quarter turns: '4', '4½', '4⅓', '¼', '0'; twelfths that have no character of
 * their own as '4 5/12'. count48: whole 48ths of a turn, from 0, else RangeError.
 */
export function writeCount(count48: Turn48): string {
  const { whole, fraction } = countIn(count48, QUARTER_48);
  if (fraction.num === 0) {
    return String(whole);
  }
  const character = FRACTION_CHARACTERS.get(inFull(fraction));
  const part = character ?? inFull(fraction);
  if (whole === 0) {
    return part;
  }
  return character === undefined ? `${whole} ${part}` : `${whole}${part}`;
}

const FRACTION_CHARACTERS: ReadonlyMap<string, string> = new Map([
  ['1/2', '½'],
  ['1/3', '⅓'],
  ['2/3', '⅔'],
  ['1/4', '¼'],
  ['3/4', '¾'],
  ['1/6', '⅙'],
  ['5/6', '⅚'],
]);

function inFull({ num, den }: Fraction): string {
  return `${num}/${den}`;
}

function figure(mm: number, unit: LengthUnit, decimals: number): string {
  requireBetween(mm, -LONGEST_MM, LONGEST_MM, 'mm');
  return fixed(toSteps(mm, unit, decimals), decimals);
}

function fixed(steps: number, decimals: number): string {
  const figures = (Math.abs(steps) / 10 ** decimals).toFixed(decimals);
  return steps < 0 ? `−${figures}` : figures;
}
