import type { Units } from '#words';

/** What a length field is written in when the text names no unit. */
export type TextUnit = 'thou' | 'in' | 'mm';

/** What was typed: nothing, no number, or a value. */
export type Read =
  | { readonly kind: 'empty' }
  | { readonly kind: 'not a number' }
  | { readonly kind: 'value'; readonly value: number };

const MM: Readonly<Record<TextUnit, number>> = { mm: 1, in: 25.4, thou: 0.0254 };
/** Decimals shown: finer than any dial reads, so a shown figure is the figure. */
const DECIMALS: Readonly<Record<TextUnit, number>> = { mm: 4, in: 4, thou: 2 };
const FIGURES = /^([+\-−]?(?:\d+(?:[.,]\d*)?|[.,]\d+))\s*(mm|in|inch|inches|"|″|thou)?$/i;

/** Unit of short lengths: preload, windows, travel. */
export function shortUnit(units: Units): TextUnit {
  return units === 'inch' ? 'thou' : 'mm';
}

/** Unit of long lengths: pushrods. */
export function longUnit(units: Units): TextUnit {
  return units === 'inch' ? 'in' : 'mm';
}

/** A plain number, with a decimal point or comma. */
export function readNumber(text: string): Read {
  const trimmed = text.trim();
  if (trimmed === '') return { kind: 'empty' };
  const match = FIGURES.exec(trimmed);
  if (match === null || match[2] !== undefined) return { kind: 'not a number' };
  return { kind: 'value', value: numberOf(match[1] ?? '') };
}

/**
 * A length in millimetres. A unit written behind the figure ('7.4 in', '188 mm', '75 thou') goes
 * before the field's own. A text that was made from an exact figure gives that figure back.
 */
export function readLength(
  text: string,
  unit: TextUnit,
  remembered: Readonly<Record<string, number>>,
): Read {
  const trimmed = text.trim();
  if (trimmed === '') return { kind: 'empty' };
  const exact = remembered[memoryKey(trimmed, unit)];
  if (exact !== undefined) return { kind: 'value', value: exact };
  const match = FIGURES.exec(trimmed);
  if (match === null) return { kind: 'not a number' };
  return { kind: 'value', value: numberOf(match[1] ?? '') * MM[unitNamed(match[2]) ?? unit] };
}

/** A length as a field shows it, no trailing noughts but at least the thou of an inch: '7.400'. */
export function lengthText(mm: number, unit: TextUnit): string {
  const fixed = (mm / MM[unit]).toFixed(DECIMALS[unit]);
  if (unit === 'in') return fixed.replace(/0$/, '');
  return fixed.replace(/\.?0+$/, '') || '0';
}

/** Under which name an exact figure is remembered. */
export function memoryKey(text: string, unit: TextUnit): string {
  return `${text} ${unit}`;
}

/** Whole numbers in a text, whatever stands between them; NaN where a part is no number. */
export function numbersIn(text: string): readonly number[] {
  return text
    .split(/[\s,;–—-]+/)
    .filter((part) => part !== '')
    .map((part) => (/^\d+$/.test(part) ? Number(part) : Number.NaN));
}

function numberOf(figures: string): number {
  return Number(figures.replace(',', '.').replace('−', '-'));
}

function unitNamed(suffix: string | undefined): TextUnit | undefined {
  switch (suffix?.toLowerCase()) {
    case 'mm':
      return 'mm';
    case 'thou':
      return 'thou';
    case 'in':
    case 'inch':
    case 'inches':
    case '"':
    case '″':
      return 'in';
    default:
      return undefined;
  }
}
