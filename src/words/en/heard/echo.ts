import { readBelowHundred } from '../numbers/hearWhole';
import { plainTokens } from './plainTokens';

/** Whether what was heard may be nothing but a piece of this line of the app's own. */
export function isEchoOf(text: string, line: string): boolean {
  const heard = runTogether(text);
  if (heard === '') return false;
  const said = runTogether(line);
  return said.includes(heard) || asWritten(said).includes(asWritten(heard));
}

/** Figures as services write them, for what is said in words between figures. */
const WRITTEN: readonly (readonly [RegExp, string])[] = [
  [/(\d)hundred(?:and)?(\d\d)/g, '$1$2'],
  [/(\d)hundred(?:and)?(\d)/g, '$10$2'],
  [/(\d)hundred/g, '$100'],
  [/andahalf/g, '1/2'],
  [/andaquarter/g, '1/4'],
  [/and3quarters/g, '3/4'],
  [/and(?=\d\/\d)/g, ''],
  [/(\d)point(?=\d)/g, '$1.'],
  [/°/g, 'degrees'],
];

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

const asWritten = (joined: string) =>
  WRITTEN.reduce((now, [said, written]) => now.replace(said, written), joined);
