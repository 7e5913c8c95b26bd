import { NUMBER_HOMOPHONES, PART_HOMOPHONES } from '../numbers';
import { BELOW_TWENTY, PARTS, TENS } from '../numbers/vocabulary';

/** Whether a word stands in numbers: 'four', 'for', 'half', 'past', '5'. */
export function isNumberWord(token: string): boolean {
  return NUMBER_WORDS.has(token) || /^[\d/.:]+$/.test(token);
}

const NUMBER_WORDS: ReadonlySet<string> = new Set([
  ...BELOW_TWENTY,
  ...TENS.filter((word) => word !== ''),
  ...PARTS.flatMap(({ one, many }) => [one, many]),
  ...[...NUMBER_HOMOPHONES, ...PART_HOMOPHONES].map(({ written }) => written),
  'a',
  'and',
  'past',
  'of',
  'full',
]);
