import { sameValve, type ValveId } from '#valvetrain';
import type { JobEvent } from '../events';
import type { JobState } from '../state';
import { moved, named, withReading } from './changeReadings';
import { setUpChanged } from './changeSetUp';
import { dialRead } from './dialRead';
import { onOpenValve, takenUp, without } from './openValve';

/**
 * The state with one event applied, leaving seq, questions and the way back to evolve. The state
 * itself comes back when the event does not fit it.
 */
export function applyEvent(state: JobState, event: JobEvent): JobState {
  switch (event.type) {
    case 'jobOpened':
      return {
        ...state,
        jobId: event.jobId,
        status: 'open',
        setUps: [{ seq: event.seq, setUp: event.setUp }],
        pushrod: event.setUp.testPushrod,
      };
    case 'setupChanged':
      return setUpChanged(state, event);
    case 'roundStarted':
      return {
        ...state,
        round: { number: event.number, purpose: event.purpose },
        measured: event.purpose === 'measure' ? event.number : state.measured,
        open: null,
        skipped: [],
        crank: { ...state.crank, heading: null, headingValve: null },
      };
    case 'pushrodFitted':
      return pushrodFitted(state, event);
    case 'dialRead':
      return dialRead(state, event);
    case 'cautionsHeard':
      return { ...state, cautionsHeard: true };
    case 'handsClear':
      return { ...state, crank: { ...state.crank, handsClear: true } };
    case 'positionReached':
      return positionReached(state, event);
    case 'overshot':
      return overshot(state, event);
    case 'valveChosen':
      return valveChosen(state, event);
    case 'valveNamed':
      return named(state, event.reading, event.valve);
    case 'repeatStarted':
      return takenUp(state, event.valve, 'on');
    case 'readingMoved':
      return moved(state, event.reading, event.to);
    case 'torqued':
      return withReading(state, event.reading, (reading) => ({ ...reading, torqued: true }));
    case 'valveLeft':
      return valveLeft(state, event);
    case 'bledDown':
      return { ...state, crank: { ...state.crank, loaded: false } };
    case 'held':
      return { ...state, held: true };
    case 'resumed':
      return { ...state, held: false };
    case 'askedBack':
      return { ...state };
    case 'noted':
      return { ...state, notes: event.notes };
    case 'jobDiscarded':
      return { ...state, status: 'discarded' };
    case 'jobRestored':
      return { ...state, status: 'open' };
    case 'takenBack':
      return state;
    default:
      return state.open === null ? state : onOpenValve(state, state.open, event);
  }
}

/** For all valves, or for those it names. */
function pushrodFitted(
  state: JobState,
  { length, valves }: JobEvent & { type: 'pushrodFitted' },
): JobState {
  if (valves === undefined) return { ...state, pushrod: length, fitted: [] };
  const others = state.fitted.filter(({ valve }) => !valves.some((id) => sameValve(id, valve)));
  return { ...state, fitted: [...others, ...valves.map((valve) => ({ valve, length }))] };
}

function positionReached(
  state: JobState,
  { position, valve }: JobEvent & { type: 'positionReached' },
): JobState {
  const crank = {
    at: position,
    heading: null,
    headingValve: null,
    handsClear: false,
    loaded: false,
    overshot: false,
  };
  return takenUp({ ...state, crank }, valve, 'on');
}

/** Just past the position, and on its way round to it again. */
function overshot(state: JobState, { position, valve }: JobEvent & { type: 'overshot' }): JobState {
  const crank = { at: position, heading: position, headingValve: valve, handsClear: false };
  return { ...state, open: null, crank: { ...state.crank, ...crank, overshot: true } };
}

function valveChosen(
  state: JobState,
  { valve, direction, heading }: JobEvent & { type: 'valveChosen' },
): JobState {
  if (heading === null) {
    const crank = { ...state.crank, heading: null, headingValve: null };
    return takenUp({ ...state, crank }, valve, direction);
  }
  const crank = { ...state.crank, heading, headingValve: valve };
  return { ...state, open: null, crank };
}

function valveLeft(
  state: JobState,
  { valve, skipped, next }: JobEvent & { type: 'valveLeft' },
): JobState {
  const left = {
    ...state,
    open: null,
    skipped: skipped && valve ? [...without(state.skipped, valve), valve] : state.skipped,
    crank: skipped && valve ? notHeadingFor(state.crank, valve) : state.crank,
  };
  return next === null ? left : takenUp(left, next, 'on');
}

function notHeadingFor(crank: JobState['crank'], valve: ValveId): JobState['crank'] {
  const was = crank.headingValve;
  return was !== null && sameValve(was, valve)
    ? { ...crank, heading: null, headingValve: null }
    : crank;
}
