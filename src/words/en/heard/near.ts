import type { CommandType } from '#counting';
import { meansTheSame, SPELLINGS } from './exact';
import type { Grammar } from './grammar';
import { GROUPS } from './groups';
import type { Meaning, MissedWhy } from './hearing';
import { folded, soundsApart } from './nearness';
import type { FixedPhrase } from './phrase';

/** Up to here a phrase is taken for what was heard. */
export const DO_UP_TO = 0.1;
/** As above for what ends or restarts a count. */
export const DO_UP_TO_AT_ENDS = 0.05;
/** Up to here what was heard is missed, with the phrase it was near to. */
export const MISSED_UP_TO = 0.28;
/** Another phrase no further behind than this makes it a tie. */
export const TIE_WITHIN = 0.06;

/** Letters: shorter phrases are too easily hit by chance. */
const SHORTEST = 7;
/** Letters more or fewer than a phrase has: further off than any near miss. */
const MOST_MORE = 4;

const AT_ENDS: ReadonlySet<CommandType> = new Set<CommandType>(['seat', 'zero', 'restart']);

/** What a phrase near the heard words comes to. */
export type Near =
  | {
      readonly kind: 'meaning';
      readonly meaning: Meaning;
      readonly phrase: string;
      readonly cost: number;
    }
  | { readonly kind: 'missed'; readonly near: string; readonly why: MissedWhy };

/**
 * The phrase that makes sense now and sounds most like these words: taken, missed or neither, by
 * its distance. Two that are as near are a tie, never a guess. Numbers are never taken by likeness.
 */
export function nearest(tokens: readonly string[], grammar: Grammar): Near | null {
  const text = tokens.join('');
  if (text.length < SHORTEST - 2 || text.length > 40) return null;
  const found = candidates(text, grammar).sort((a, b) => a.cost - b.cost);
  const [best] = found;
  if (best === undefined) return null;
  const other = found.find(({ phrase }) => !meansTheSame(phrase, best.phrase, grammar));
  const tie = other !== undefined && other.cost - best.cost <= TIE_WITHIN;
  const { said, means } = best.phrase;
  if (!tie && best.cost <= limitFor(best.phrase)) {
    return { kind: 'meaning', meaning: means(grammar), phrase: said, cost: best.cost };
  }
  return { kind: 'missed', near: said, why: tie ? 'tie' : 'near' };
}

interface Candidate {
  readonly phrase: FixedPhrase;
  readonly cost: number;
}

function candidates(text: string, { allowed }: Grammar): Candidate[] {
  const best = new Map<FixedPhrase, number>();
  const sound = folded(text);
  for (const [spelling, phrase] of FOLDED) {
    const makesSense = phrase.commands.every((type) => allowed.includes(type));
    if (!makesSense || Math.abs(spelling.length - sound.length) > MOST_MORE) continue;
    const cost = soundsApart(spelling, sound);
    if (cost <= MISSED_UP_TO && cost < (best.get(phrase) ?? 1)) best.set(phrase, cost);
  }
  return [...best].map(([phrase, cost]) => ({ phrase, cost }));
}

/** Every spelling that is long enough, by its sound. */
const FOLDED: readonly (readonly [string, FixedPhrase])[] = [...SPELLINGS].flatMap(
  ([spelling, phrase]) => {
    const long = spelling.replace(/ /g, '').length >= SHORTEST;
    return long ? [[folded(spelling), phrase] as const] : [];
  },
);

function limitFor({ commands }: FixedPhrase): number {
  return commands.some((type) => AT_ENDS.has(type)) ? DO_UP_TO_AT_ENDS : DO_UP_TO;
}

/** The phrase that these words begin but leave without its number; null when there is none. */
export function unfinished(tokens: readonly string[]): string | null {
  for (const { numbers } of GROUPS) {
    for (const { heads, shape } of numbers) {
      const starts = heads.some((head) => head.every((word, i) => tokens[i] === word));
      if (starts) return shape;
    }
  }
  return null;
}
