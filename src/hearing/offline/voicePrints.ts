import { wordDistance } from './wordDistance';
import { PRINT_SHAPE, type WordPrint } from './wordPrint';

/** The builder's own words, as they sounded in a sound check. Plain data, of a version. */
export interface VoicePrints {
  readonly v: 1;
  readonly words: readonly VoicePrint[];
  /** How loud they came in, dB of full scale. */
  readonly db: number;
  /** How long after its end the app's own voice was still heard, ms; absent where it never was. */
  readonly tailMs?: number;
}

export interface VoicePrint {
  readonly words: string;
  readonly print: WordPrint;
}

/** What the builder's own words say of an answer. */
export type Opinion = 'agrees' | 'disagrees' | 'none';

/** One word is nearer than another only by so many times. */
const CLEARLY = 1.05;
/** Prints that are kept, and the longest of them, frames: more was never said in a check. */
const MOST_WORDS = 40;
const LONGEST = 200;

/** Whether what was heard sounds like the builder's own saying of that word, beside all others. */
export function opinionOf(print: WordPrint, prints: VoicePrints, words: string): Opinion {
  let own = Number.POSITIVE_INFINITY;
  let other = Number.POSITIVE_INFINITY;
  for (const one of prints.words) {
    const apart = wordDistance(print, one.print);
    if (one.words === words) own = Math.min(own, apart);
    else other = Math.min(other, apart);
  }
  const known = prints.words.some((one) => one.words === words);
  if (!known || !Number.isFinite(Math.min(own, other))) return 'none';
  if (own * CLEARLY < other) return 'agrees';
  return other * CLEARLY < own ? 'disagrees' : 'none';
}

/** Prints from whatever was kept; null where it can't be any. */
export function readVoicePrints(kept: unknown): VoicePrints | null {
  if (!isFields(kept) || kept.v !== 1 || !Array.isArray(kept.words)) return null;
  const { db } = kept;
  if (typeof db !== 'number' || !Number.isFinite(db)) return null;
  const words = kept.words.flatMap((one) => readPrint(one) ?? []).slice(0, MOST_WORDS);
  if (words.length === 0) return null;
  const { tailMs } = kept;
  return { v: 1, words, db, ...(isFigure(tailMs) && tailMs >= 0 ? { tailMs } : {}) };
}

function readPrint(one: unknown): VoicePrint | null {
  if (!isFields(one) || typeof one.words !== 'string' || !isFields(one.print)) return null;
  const { shape } = one.print;
  if (!Array.isArray(shape) || shape.length === 0 || shape.length > LONGEST * PRINT_SHAPE) {
    return null;
  }
  if (shape.length % PRINT_SHAPE !== 0 || !shape.every(isFigure)) return null;
  return { words: one.words, print: { shape } };
}

const isFigure = (value: unknown): value is number =>
  typeof value === 'number' && Number.isFinite(value);

function isFields(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
