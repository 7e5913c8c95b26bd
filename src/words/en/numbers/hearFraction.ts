import { type Fraction, reduced } from './fractions';
import { readBelowHundred } from './hearWhole';
import { bySpelling, PART_HOMOPHONES } from './homophones';
import { PARTS } from './vocabulary';

/**
 * A fraction on its own, from tokens: 'half', 'a third', 'three quarters', '5/12', 'a 12th'.
 * It may be a whole or more ('five quarters'), in lowest terms.
 */
export function readFraction(tokens: readonly string[]): Fraction | undefined {
  const bare = ARTICLES.has(tokens[0] ?? '') ? tokens.slice(1) : tokens;
  const [only, ...others] = bare;
  const written = others.length === 0 && only !== undefined ? writtenFraction(only) : undefined;
  if (written !== undefined) {
    return reduced(written.num, written.den);
  }
  const part = lastPart(tokens);
  if (part === undefined) {
    return undefined;
  }
  const num = readHowMany(tokens.slice(0, -part.length));
  return num === undefined || num === 0 ? undefined : reduced(num, part.parts);
}

/** A fraction written with a slash, as it stands: '2/4' stays two of four. */
export function writtenFraction(token: string): Fraction | undefined {
  const match = /^(\d{1,2})\/(\d{1,2})$/.exec(token);
  const num = Number(match?.[1]);
  const den = Number(match?.[2]);
  return num > 0 && PARTS.some(({ parts }) => parts === den) ? { num, den } : undefined;
}

/** The word with its homophone put right, where a fraction or unit must end a count. */
export function partWord(token: string): string {
  return PART_SPELLINGS.get(token) ?? token;
}

function readHowMany(tokens: readonly string[]): number | undefined {
  const [first, ...rest] = tokens;
  if (first === undefined || (rest.length === 0 && ARTICLES.has(first))) {
    return 1;
  }
  return readBelowHundred(tokens);
}

/** The part named at the end, and in how many tokens: hyphens have been parted by now. */
function lastPart(
  tokens: readonly string[],
): { readonly parts: number; readonly length: number } | undefined {
  for (const length of [2, 1]) {
    const parts = PART_NAMES.get(tokens.slice(-length).map(partWord).join(' '));
    if (parts !== undefined && tokens.length >= length) {
      return { parts, length };
    }
  }
  return undefined;
}

const ARTICLES: ReadonlySet<string> = new Set(['a', 'an']);

const PART_SPELLINGS = bySpelling(PART_HOMOPHONES);

const FIGURE_NAMES = [
  ['3rd', 3],
  ['6th', 6],
  ['8th', 8],
  ['12th', 12],
  ['16th', 16],
  ['24th', 24],
  ['48th', 48],
] as const;

const PART_NAMES: ReadonlyMap<string, number> = new Map([
  ...PARTS.flatMap(({ parts, one, many }) => [
    [one.replace('-', ' '), parts] as const,
    [many.replace('-', ' '), parts] as const,
  ]),
  ...FIGURE_NAMES.flatMap(([name, parts]) => [
    [name, parts] as const,
    [`${name}s`, parts] as const,
  ]),
]);
