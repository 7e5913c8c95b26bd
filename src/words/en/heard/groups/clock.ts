import { turn48 } from '#valvetrain';
import { clockPosition48, hearClock, sayClock } from '../../numbers';
import type { PhraseGroup, Understood } from '../phrase';

/** An hour said as an hour; a bare number is a count, and 'five am' a time of the day. */
function readClock(tokens: readonly string[]): Understood | null {
  const heard = hearClock(tokens.join(' '));
  const ofTheDay = DAY_HALVES.has(tokens.at(-1) ?? '') && !tokens.some((t) => t.includes(':'));
  if (heard === undefined || !heard.explicit || ofTheDay) return null;
  const mark48 = turn48(clockPosition48(heard, 'on'));
  const hour = sayClock(mark48, 'on');
  return {
    meaning: { kind: 'command', command: { type: 'clock', mark48 } },
    phrase: heard.minutes === 0 ? `${hour} o'clock` : hour,
  };
}

/** Recognisers add these to an hour written '4:00'. */
const DAY_HALVES: ReadonlySet<string> = new Set(['am', 'pm']);

export const clock: PhraseGroup = {
  name: 'clock',
  when: 'counting, and at ‘how far?’, where the mark on the socket is read by the clock',
  fixed: [],
  numbers: [
    {
      shape: 'one … twelve o’clock, half past …, quarter past …, quarter to …',
      examples: ["four o'clock", 'half past one', 'quarter past twelve', 'quarter to one'],
      heads: [],
      commands: ['clock'],
      read: readClock,
    },
  ],
};
