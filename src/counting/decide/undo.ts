import type { Command } from '../commands';
import { openQuestion } from '../questions';
import type { JobState, Past } from '../state';
import { decideCount } from './count';
import {
  askBack,
  type CommandOf,
  type Draft,
  happens,
  isCount,
  refuse,
  unchanged,
} from './decision';
import { optionsOf } from './late';

/** Take-back: no to an open question, else the last event that can be undone (C5, C7). */
export function decideTakeBack(state: JobState, command: CommandOf<'takeBack'>): Draft {
  if (state.asked !== null && openQuestion(state, command.at) !== null) {
    return happens({ type: 'takenBack', undoes: state.asked.seq });
  }
  if (state.past === null) return refuse({ code: 'nothing to take back' });
  return happens({ type: 'takenBack', undoes: state.past.event.seq });
}

/**
 * An utterance that grew or ended differently replaces its own count while that is still the last
 * event, else it is asked (C11). Null when the command is no such correction.
 */
export function replacesOwnCount(state: JobState, command: Command): Draft | null {
  const { open } = state;
  if (open?.phase !== 'counting' || !isCount(command) || command.utterance === undefined)
    return null;
  const own = ownCount(state, command.utterance.id);
  if (own === null) return null;
  const anew = decideCount(own.before, command);
  if (anew.kind === 'refused' || anew.kind === 'answer') return anew;
  const bodies = anew.kind === 'events' ? anew.bodies : [];
  const heard = optionsOf(bodies[0]);
  if (own.event.type === 'counted' && heard?.options.includes(own.event.to48))
    return unchanged(open.count48);
  if (own.event.seq === state.seq)
    return happens({ type: 'takenBack', undoes: own.event.seq }, ...bodies);
  if (heard === null) return unchanged(open.count48);
  const { options, by } = heard;
  return askBack({ about: 'count', why: 'grew', counted48: open.count48, options, by });
}

/** The count this utterance has made on the valve being counted. */
function ownCount(state: JobState, utterance: string): Past | null {
  for (let past = state.past; past?.event.type === 'counted'; past = past.before.past) {
    if (past.event.utterance === utterance) return past;
  }
  return null;
}
