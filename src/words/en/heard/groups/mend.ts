import { cardinal } from '../../numbers';
import { afterHead, command, type PhraseGroup, type Understood } from '../phrase';
import { cylinderNamed } from './cylinderNamed';

const HEADS = [
  ['wrong', 'cylinder', 'its'],
  ['wrong', 'cylinder', 'it', 'is'],
  ['wrong', 'cylinder', 'is'],
  ['wrong', 'cylinder'],
  ['rong', 'cylinder', 'its'],
];

function readWrongCylinder(tokens: readonly string[]): Understood | null {
  const named = afterHead(tokens, HEADS);
  const cylinder = named && cylinderNamed(named);
  if (cylinder === null) return null;
  return {
    meaning: { kind: 'command', command: { type: 'moveReading', cylinder } },
    phrase: `wrong cylinder, it's ${cardinal(cylinder)}`,
  };
}

export const mend: PhraseGroup = {
  name: 'mend',
  when: 'counting, and after seating',
  fixed: [
    command('wrong valve', { type: 'moveReading', valve: 'other' }, 'rong valve', 'wrong vow'),
  ],
  numbers: [
    {
      shape: 'wrong cylinder, it’s …',
      examples: ["wrong cylinder, it's five"],
      heads: HEADS,
      commands: ['moveReading'],
      read: readWrongCylinder,
    },
  ],
};
