import { hearLength, sayLengthIn } from '../../numbers';
import type { Grammar } from '../grammar';
import { afterHead, type PhraseGroup, type Understood } from '../phrase';

const HEADS = [
  ['test', 'rod'],
  ['test', 'road'],
  ['test', 'rob'],
  ['test', 'rot'],
];

function readTestRod(tokens: readonly string[], { convention }: Grammar): Understood | null {
  const named = afterHead(tokens, HEADS);
  const mm = named === null ? undefined : hearLength(named.join(' '));
  return mm === undefined
    ? null
    : {
        meaning: { kind: 'command', command: { type: 'fitPushrod', length: { mm, convention } } },
        phrase: `test rod ${sayLengthIn(mm, 'shop')}`,
      };
}

export const rod: PhraseGroup = {
  name: 'rod',
  when: 'not while counting',
  fixed: [],
  numbers: [
    {
      shape: 'test rod, and its length in inches and thousandths',
      examples: ['test rod eight one seventy-five', 'test rod eight even'],
      heads: HEADS,
      commands: ['fitPushrod'],
      read: readTestRod,
    },
  ],
};
