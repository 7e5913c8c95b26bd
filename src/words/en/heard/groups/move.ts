import type { ValveKind } from '#valvetrain';
import { cardinal } from '../../numbers';
import { afterHead, command, type PhraseGroup, type Understood } from '../phrase';
import { cylinderNamed } from './cylinderNamed';

const HEADS = [
  ['go', 'to', 'cylinder'],
  ['go', 'two', 'cylinder'],
  ['go', '2', 'cylinder'],
  ['go', 'too', 'cylinder'],
  ['goto', 'cylinder'],
];

function readGoTo(tokens: readonly string[]): Understood | null {
  const named = afterHead(tokens, HEADS);
  if (named === null) return null;
  const last = named.at(-1);
  const valve: ValveKind | undefined = last === 'intake' || last === 'exhaust' ? last : undefined;
  const cylinder = cylinderNamed(valve === undefined ? named : named.slice(0, -1));
  if (cylinder === null) return null;
  return {
    meaning: {
      kind: 'command',
      command: { type: 'chooseValve', cylinder, ...(valve === undefined ? {} : { valve }) },
    },
    phrase: `go to cylinder ${cardinal(cylinder)}${valve === undefined ? '' : `, ${valve}`}`,
  };
}

export const move: PhraseGroup = {
  name: 'move',
  when: 'not while counting; skipping always',
  fixed: [
    command(
      'next valve',
      { type: 'next', cylinder: false },
      'next valves',
      'next vow',
      'next valv',
    ),
    command('next cylinder', { type: 'next', cylinder: true }, 'next cylinders', 'next cilinder'),
    command(
      'skip this valve',
      { type: 'skip' },
      'skip this vow',
      'skip the valve',
      'skip his valve',
    ),
    command(
      'intake',
      { type: 'chooseValve', valve: 'intake' },
      'in take',
      'intakes',
      'intake valve',
    ),
    command('exhaust', { type: 'chooseValve', valve: 'exhaust' }, 'exhausts', 'exhaust valve'),
  ],
  numbers: [
    {
      shape: 'go to cylinder …, with or without intake or exhaust',
      examples: ['go to cylinder five', 'go to cylinder five, intake'],
      heads: HEADS,
      commands: ['chooseValve'],
      read: readGoTo,
    },
  ],
};
