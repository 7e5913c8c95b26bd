import { type EventType, type JobEvent, UNDOABLE } from '../events';
import { initial, type JobState } from '../state';
import { applyEvent } from './applyEvent';

/** What an answer to 'hands clear?' outlives: these neither pause the bench nor send the crank elsewhere. */
const LEAVES_HANDS_CLEAR: ReadonlySet<EventType> = new Set<EventType>([
  'handsClear',
  'cautionsHeard',
  'bledDown',
  'torqued',
  'pushrodFitted',
  'valveNamed',
  'readingMoved',
  'doubted',
  'askedBack',
  'noted',
]);

/**
 * The state after one more event. Pure, and never throws; an event that does not fit the state
 * changes nothing but seq.
 */
export function evolve(state: JobState, event: JobEvent): JobState {
  const { seq } = event;
  if (!fits(state, event)) return { ...state, seq };
  if (event.type === 'takenBack') return takeBack(state, event);
  const applied = applyEvent(state, event);
  if (applied === state) return { ...state, seq };
  return {
    ...applied,
    seq,
    asked: askedAfter(state, event),
    crank:
      LEAVES_HANDS_CLEAR.has(event.type) || !applied.crank.handsClear
        ? applied.crank
        : { ...applied.crank, handsClear: false },
    past: remembered(state, event),
  };
}

/** The state a whole log folds to. */
export function replay(events: readonly JobEvent[]): JobState {
  return events.reduce(evolve, initial);
}

function fits({ status }: JobState, { type }: JobEvent): boolean {
  switch (status) {
    case 'not opened':
      return type === 'jobOpened';
    case 'open':
      return type !== 'jobOpened' && type !== 'jobRestored';
    case 'discarded':
      return type === 'jobRestored';
    default: {
      const never: never = status;
      return never;
    }
  }
}

/** A question stays open through a doubt or a note: whatever else is done drops it (C5). */
function askedAfter(state: JobState, event: JobEvent): JobState['asked'] {
  switch (event.type) {
    case 'askedBack':
      return { seq: event.seq, at: event.at, question: event.question };
    case 'doubted':
    case 'noted':
      return state.asked;
    default:
      return null;
  }
}

/** One for all: every event that can be taken back remembers as much. */
const NOTHING: readonly JobEvent[] = [];

function remembered(state: JobState, event: JobEvent): JobState['past'] {
  if (UNDOABLE.has(event.type)) return { event, before: state, since: NOTHING };
  if (state.past === null) return null;
  return { ...state.past, since: [...state.past.since, event] };
}

/**
 * Undoes the event it names: the state before it, with what came after and can't be undone applied
 * again. A question's refusal drops just the question. The log can be taken back, a lifter can't:
 * one pressed in stays pressed in, and 'hands clear?' has to be answered afresh.
 */
function takeBack(state: JobState, event: JobEvent & { type: 'takenBack' }): JobState {
  const { past, asked } = state;
  const { seq, undoes } = event;
  if (asked !== null && asked.seq === undoes) return { ...state, seq, asked: null };
  if (past === null || past.event.seq !== undoes) return { ...state, seq };
  const undone = past.since.reduce(evolve, past.before);
  const loaded = state.crank.loaded || undone.crank.loaded;
  return { ...undone, seq, asked: null, crank: { ...undone.crank, handsClear: false, loaded } };
}
