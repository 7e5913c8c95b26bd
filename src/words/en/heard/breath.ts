import { isCount, readExact, SPELLINGS } from './exact';
import type { Grammar } from './grammar';
import { isNumberWord } from './numberWords';
import type { Understood } from './phrase';

/** Longer than any run of phrases worth telling apart. */
const MOST_TOKENS = 14;

const PHRASE_WORDS: ReadonlySet<string> = new Set([
  ...[...SPELLINGS.keys()].flatMap((spelling) => spelling.split(' ')),
  ...['turn', 'turns', 'oclock', 'to', 'of', 'cylinder', 'go', 'bit'],
]);

const isPhraseWord = (token: string) => PHRASE_WORDS.has(token) || isNumberWord(token);

/** A count followed by a seat in one breath: the only two phrases that are joined. */
export function readCountThenSeat(
  tokens: readonly string[],
  grammar: Grammar,
): readonly [Understood, Understood] | null {
  for (let cut = tokens.length - 1; cut > 0; cut -= 1) {
    const seat = readExact(tokens.slice(cut), grammar);
    if (seat?.meaning.kind !== 'command' || seat.meaning.command.type !== 'seat') continue;
    const count = seat.meaning.command.loose ? null : readExact(tokens.slice(0, cut), grammar);
    if (count !== null && isCount(count.meaning)) return [count, seat];
  }
  return null;
}

/** Whether the tokens are nothing but phrases, two or more of them, one after the other. */
export function isSeveral(tokens: readonly string[], grammar: Grammar): boolean {
  if (tokens.length > MOST_TOKENS || !tokens.every(isPhraseWord)) return false;
  const reaches: boolean[] = [true];
  for (let end = 1; end <= tokens.length; end += 1) {
    reaches[end] = false;
    for (let from = 0; from < end; from += 1) {
      const whole = from === 0 && end === tokens.length;
      if (reaches[from] && !whole && readExact(tokens.slice(from, end), grammar) !== null) {
        reaches[end] = true;
        break;
      }
    }
  }
  return reaches[tokens.length] === true;
}
