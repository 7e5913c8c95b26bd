import { readNumber } from './draftText';

/** Crank degrees as typed, with or without the sign; NaN where there is no figure. */
export function degreesOf(text: string): number {
  const read = readNumber(text.replace(/\s*°$/, ''));
  return read.kind === 'value' ? read.value : Number.NaN;
}

/** Whether something stands there that is no figure. */
export function isNoFigure(text: string): boolean {
  return text.trim() !== '' && Number.isNaN(degreesOf(text));
}

/** Crank degrees in a list, by spaces, commas or semicolons; NaN where a part is no figure. */
export function degreesIn(text: string): readonly number[] {
  return text
    .split(/[\s,;]+/)
    .filter((part) => part !== '')
    .map(degreesOf);
}
