import { tokensOf } from '../numbers/tokens';

/** Sounds people make while thinking; no phrase has one. */
const FILLERS: ReadonlySet<string> = new Set(['um', 'uh', 'er', 'erm', 'hm', 'hmm']);

/** The words and figures of what was heard: lower case, no apostrophes, stops or fillers. */
export function plainTokens(text: string): readonly string[] {
  return tokensOf(text)
    .map((token) => token.replace(/['’‘]/g, ''))
    .filter((token) => token !== '' && !FILLERS.has(token));
}
