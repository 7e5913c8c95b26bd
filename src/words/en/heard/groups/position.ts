import { unitOf } from '#counting';
import { QUARTER, TURN, turn48 } from '#valvetrain';
import { heardCount48, hearNumber, sayTurns } from '../../numbers';
import type { Grammar } from '../grammar';
import type { PhraseGroup, Understood } from '../phrase';

/** Words that give the turns as such; without one of them 'a turn' is the nearest full turn ahead. */
const FULL: ReadonlySet<string> = new Set(['full', 'a', 'turn', 'tern']);

/** A position within the turn, or a count by whole turns: it always carries 'turn'. */
function readPosition(tokens: readonly string[], grammar: Grammar): Understood | null {
  const heard = hearNumber(tokens.join(' '));
  if (heard?.unit !== 'turn') return null;
  const count48 = heardCount48(heard, unitOf(grammar.calling));
  if (count48 === undefined || count48 < QUARTER) return null;
  const within = count48 < TURN || tokens.every((token) => FULL.has(token));
  const at48 = turn48(count48);
  return {
    meaning: {
      kind: 'command',
      command: within
        ? { type: 'positionInTurn', within48: at48 }
        : { type: 'call', to48: at48, form: 'turns' },
    },
    phrase: within && at48 === TURN ? 'full turn' : sayTurns(at48),
  };
}

const shared = { heads: [], read: readPosition } as const;

export const position: PhraseGroup = {
  name: 'position',
  when: 'counting',
  fixed: [],
  numbers: [
    {
      ...shared,
      shape: 'a position within the turn, the nearest ahead',
      examples: [
        'quarter turn',
        'half turn',
        'half a turn',
        'three quarters of a turn',
        'full turn',
      ],
      commands: ['positionInTurn'],
    },
    {
      ...shared,
      shape: 'so many turns',
      examples: ['one turn', 'two turns', 'one and a half turns'],
      commands: ['call'],
    },
  ],
};
