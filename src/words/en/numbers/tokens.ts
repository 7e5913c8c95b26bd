/** Fraction characters as recognisers and keyboards write them. */
const FRACTION_CHARACTERS: ReadonlyMap<string, string> = new Map([
  ['½', '1/2'],
  ['⅓', '1/3'],
  ['⅔', '2/3'],
  ['¼', '1/4'],
  ['¾', '3/4'],
  ['⅙', '1/6'],
  ['⅚', '5/6'],
  ['⅛', '1/8'],
  ['⅜', '3/8'],
  ['⅝', '5/8'],
  ['⅞', '7/8'],
]);

/**
 * What a recogniser wrote, as lower-case words and figures one by one. Hyphens inside words
 * part them, commas, closing stops and colons go, '5½' is '5', '1/2', and "o'clock" is 'oclock'.
 * A decimal point, a clock's colon and a leading minus stay with their figures.
 */
export function tokensOf(text: string): readonly string[] {
  return text
    .toLowerCase()
    .replace(/[½⅓⅔¼¾⅙⅚⅛⅜⅝⅞]/g, (character) => ` ${FRACTION_CHARACTERS.get(character) ?? ''} `)
    .replace(/⁄/g, '/')
    .replace(/\s?(?<!\p{L})o\s?['’‘]?\s?clock\b/gu, ' oclock')
    .replace(/\b([ap])\.\s?m\b/g, '$1m')
    .replace(/(\d)\s?"/g, '$1 inches')
    .replace(/(\d),(?=\d{3}\b)/g, '$1 ')
    .replace(/(?<=[\p{L}\d])[-‐‑–](?=[\p{L}\d])/gu, ' ')
    .replace(/[,;!?]/g, ' ')
    .replace(/[.:…]+(?=\s|$)/g, ' ')
    .split(/\s+/)
    .filter((token) => token !== '');
}
