import type { CommandType } from '#counting';
import { meansTheSame, SPELLINGS } from './exact';
import type { Grammar } from './grammar';
import { GROUPS } from './groups';
import { isNumberWord } from './numberWords';

/** Whether these words begin a longer phrase that makes sense now: its end must be waited for. */
export function beginsLonger(tokens: readonly string[], grammar: Grammar): boolean {
  if (tokens.length === 0) return false;
  if (grammar.carrier !== null && tokens[0] === grammar.carrier) return true;
  return beginsFixed(tokens, grammar) || beginsNumbered(tokens, grammar) || mayGrow(tokens);
}

const makesSense = (commands: readonly CommandType[], { allowed }: Grammar) =>
  commands.length === 0 || commands.some((type) => allowed.includes(type));

function beginsFixed(tokens: readonly string[], grammar: Grammar): boolean {
  const text = tokens.join(' ');
  const now = SPELLINGS.get(text);
  for (const [spelling, phrase] of SPELLINGS) {
    const longer = spelling.startsWith(`${text} `) && makesSense(phrase.commands, grammar);
    if (longer && !(now !== undefined && meansTheSame(now, phrase, grammar))) return true;
  }
  return false;
}

function beginsNumbered(tokens: readonly string[], grammar: Grammar): boolean {
  return GROUPS.some(({ numbers }) =>
    numbers.some(
      ({ heads, commands }) =>
        makesSense(commands, grammar) &&
        heads.some((head) => head.slice(0, tokens.length).every((word, i) => tokens[i] === word)),
    ),
  );
}

/** Words of a number may go on as a longer number, an hour, turns or a landing. */
function mayGrow(tokens: readonly string[]): boolean {
  return tokens.every(isNumberWord);
}
