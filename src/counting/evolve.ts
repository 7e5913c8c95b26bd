import { applyEvent } from './applyEvent';
import { type JobEvent, UNDOABLE } from './events';
import { initial, type JobState } from './state';

/** The state after one more event. Pure; an event that does not fit the state changes nothing but seq. */
export function evolve(state: JobState, event: JobEvent): JobState {
  if (event.type === 'takenBack') return takeBack(state, event);
  const applied = applyEvent(state, event);
  return {
    ...applied,
    seq: event.seq,
    asked:
      event.type === 'doubted' ? state.asked : applied.asked === state.asked ? null : applied.asked,
    past: remembered(state, event),
  };
}

function remembered(state: JobState, event: JobEvent): JobState['past'] {
  if (UNDOABLE.has(event.type)) return { event, before: state, since: [] };
  if (state.past === null) return null;
  return { ...state.past, since: [...state.past.since, event] };
}

/**
 * Undoes the event it names: the state before it, with what came after and can't be undone applied
 * again. A question's refusal drops just the question.
 */
function takeBack(state: JobState, event: JobEvent & { type: 'takenBack' }): JobState {
  const { past, asked } = state;
  if (asked !== null && asked.seq === event.undoes) {
    return { ...state, seq: event.seq, asked: null };
  }
  if (past === null || past.event.seq !== event.undoes) return { ...state, seq: event.seq };
  const undone = past.since.reduce(evolve, past.before);
  return { ...undone, seq: event.seq, asked: null };
}

/** The state a whole log folds to. */
export function replay(events: readonly JobEvent[]): JobState {
  return events.reduce(evolve, initial);
}
