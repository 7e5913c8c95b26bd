import { type Grammar, type Hearing, hear, type Sayable, sayable } from '#words';
import { HANDICAP, type Tier, tierOf } from './expected';
import { spokenWords } from './spokenWords';

/** A phrase the decoder may find. */
export interface Branch {
  /** The words as the decoder gives them back. */
  readonly words: string;
  readonly tier: Tier;
  readonly hearing: Hearing;
}

/** Longer than fixed phrases and needed only where they are allowed. */
const ONLY_WHERE_ALLOWED: ReadonlySet<string> = new Set([
  'fitPushrod',
  'moveReading',
  'chooseValve',
  'clock',
  'positionInTurn',
]);

/** The phrases to listen for at this moment of the job, each with how likely it is. */
export function branchesFor(grammar: Grammar): readonly Branch[] {
  const branches = new Map<string, Branch>();
  for (const phrase of sayable(grammar)) {
    if (!isWanted(phrase, grammar)) continue;
    const words = spokenWords(phrase.text).join(' ');
    const hearing = hear(phrase.text, grammar);
    branches.set(words, { words, hearing, tier: tierOf(hearing, grammar) });
  }
  return [...branches.values()];
}

function isWanted({ commands }: Sayable, { allowed }: Grammar): boolean {
  const now = commands.length === 0 || commands.some((type) => allowed.includes(type));
  return now || !commands.some((type) => ONLY_WHERE_ALLOWED.has(type));
}

/** The phrases as a grammar the decoder reads (JSGF); each weighs e to the minus its handicap. */
export function jsgfOf(branches: readonly Branch[]): string {
  const lines = branches.map(({ words, tier }) => `/${weightOf(tier)}/ ${words}`);
  return `#JSGF V1.0;\ngrammar bench;\npublic <said> = ${lines.join(' | ')};\n`;
}

/** Written out in full: an exponent is not read, and a weight of nought would drop its phrase. */
function weightOf(tier: Tier): string {
  return Math.exp(-HANDICAP[tier]).toFixed(24);
}
