import type { Command } from '../commands';
import { openQuestion } from '../questions';
import type { JobState } from '../state';
import { askBack, type CommandOf, type Draft, happens, refuse } from './decision';

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
 * event, else it is asked (C11). `anew` decides the command as if that count had not been taken.
 * Null when the command is no such correction.
 */
export function replacesOwnCount(
  state: JobState,
  command: Command,
  anew: (before: JobState) => Draft,
): Draft | null {
  const { past, open } = state;
  if (command.type !== 'call' || command.utterance === undefined) return null;
  if (past === null || open === null || past.event.type !== 'counted') return null;
  if (past.event.utterance !== command.utterance.id || past.event.to48 === command.to48)
    return null;
  if (past.event.seq !== state.seq) {
    return askBack({
      about: 'count',
      why: 'grew',
      counted48: open.count48,
      options: [command.to48],
      by: 'number',
    });
  }
  const draft = anew(past.before);
  if (draft.kind === 'refused') return draft;
  const then = draft.kind === 'events' ? draft.bodies : [];
  return happens({ type: 'takenBack', undoes: past.event.seq }, ...then);
}
