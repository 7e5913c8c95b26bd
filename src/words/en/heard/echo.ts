import { readBelowHundred } from '../numbers/hearWhole';
import { plainTokens } from './plainTokens';

/** Whether what was heard may be nothing but a piece of this line of the app's own. */
export function isEchoOf(text: string, line: string): boolean {
  const heard = runTogether(text);
  return heard !== '' && runTogether(line).includes(heard);
}

/** Figures for number words, and no spaces: '478' and 'four, seventy-eight' are one. */
function runTogether(text: string): string {
  const tokens = plainTokens(text);
  let joined = '';
  for (let i = 0; i < tokens.length; i += 1) {
    const [first = '', second] = tokens.slice(i, i + 2);
    const pair = second === undefined ? undefined : readBelowHundred([first, second]);
    joined += pair ?? readBelowHundred([first]) ?? first;
    if (pair !== undefined) i += 1;
  }
  return joined;
}
