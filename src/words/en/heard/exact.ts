import type { Grammar } from './grammar';
import { GROUPS } from './groups';
import type { Meaning } from './hearing';
import { isNumberWord } from './numberWords';
import type { FixedPhrase, Understood } from './phrase';
import { plainTokens } from './plainTokens';

/** Every fixed phrase by each of its spellings. */
export const SPELLINGS: ReadonlyMap<string, FixedPhrase> = new Map(
  GROUPS.flatMap(({ fixed }) =>
    fixed.flatMap((phrase) =>
      [phrase.said, ...(phrase.written ?? [])].map(
        (text) => [plainTokens(text).join(' '), phrase] as const,
      ),
    ),
  ),
);

/** Whether two phrases come to the same thing now. */
export function meansTheSame(a: FixedPhrase, b: FixedPhrase, grammar: Grammar): boolean {
  return JSON.stringify(a.means(grammar)) === JSON.stringify(b.means(grammar));
}

/** What the whole of the tokens is, word for word; null for anything else. */
export function readExact(tokens: readonly string[], grammar: Grammar): Understood | null {
  const fixed = SPELLINGS.get(tokens.join(' '));
  if (fixed !== undefined) return { meaning: fixed.means(grammar), phrase: fixed.said };
  if (!tokens.some(isNumberWord)) return null;
  for (const { numbers } of GROUPS) {
    for (const phrase of numbers) {
      const understood = phrase.read(tokens, grammar);
      if (understood !== null) return understood;
    }
  }
  return null;
}

/** Whether a meaning moves the count of the valve that is open. */
export function isCount(meaning: Meaning): boolean {
  return meaning.kind === 'command' && COUNTS.has(meaning.command.type);
}

const COUNTS: ReadonlySet<string> = new Set(['call', 'step', 'positionInTurn', 'clock']);
