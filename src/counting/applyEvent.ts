import { type PushrodLength, sameValve, type Turn48, turn48, type ValveId } from '#valvetrain';
import type { Direction, JobEvent } from './events';
import type { LandingAnswer } from './landing';
import type { Reading } from './readings';
import { markOf } from './setUp';
import { type JobState, type OpenValve, setUpOf } from './state';

const ZERO: Turn48 = turn48(0);

/** The state with one event applied, leaving seq, questions and the way back to evolve. */
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
        open: null,
        skipped: [],
        crank: { ...state.crank, heading: null, headingValve: null },
      };
    case 'pushrodFitted':
      return { ...state, pushrod: event.length };
    case 'cautionsHeard':
      return { ...state, cautionsHeard: true };
    case 'handsClear':
      return { ...state, crank: { ...state.crank, handsClear: true } };
    case 'positionReached':
      return {
        ...state,
        crank: {
          at: event.position,
          heading: null,
          headingValve: null,
          handsClear: false,
          loaded: false,
        },
        open: opened(event.valve, 'on', null),
      };
    case 'valveChosen':
      return event.heading === null
        ? {
            ...state,
            open: opened(event.valve, event.direction, null),
            skipped: without(state.skipped, event.valve),
          }
        : {
            ...state,
            open: null,
            crank: { ...state.crank, heading: event.heading, headingValve: event.valve },
          };
    case 'valveNamed':
      return withReading(state, event.reading, (reading) => ({ ...reading, valve: event.valve }));
    case 'repeatStarted':
      return { ...state, open: opened(event.valve, 'on', lastOf(state, event.valve)) };
    case 'readingMoved':
      return moved(state, event.reading, event.to);
    case 'torqued':
      return withReading(state, event.reading, (reading) => ({ ...reading, torqued: true }));
    case 'valveLeft':
      return {
        ...state,
        open: event.next === null ? null : opened(event.next, 'on', null),
        skipped:
          event.skipped && state.open?.valve ? [...state.skipped, state.open.valve] : state.skipped,
      };
    case 'bledDown':
      return { ...state, crank: { ...state.crank, loaded: false } };
    case 'held':
      return { ...state, held: true };
    case 'resumed':
      return { ...state, held: false };
    case 'askedBack':
      return { ...state, asked: { seq: event.seq, at: event.at, question: event.question } };
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

type ValveEvent = Extract<
  JobEvent,
  { type: 'zeroTouched' | 'counted' | 'doubted' | 'seated' | 'landed' | 'restarted' }
>;

function onOpenValve(state: JobState, open: OpenValve, event: ValveEvent): JobState {
  switch (event.type) {
    case 'zeroTouched':
      return open.direction === 'on' ? begun(state, open) : ended(state, open, event, false);
    case 'seated':
      return open.direction === 'off' ? begun(state, open) : ended(state, open, event, event.loose);
    case 'counted':
      return {
        ...state,
        open: {
          ...open,
          count48: event.to48,
          lastHow: event.how,
          doubtful: false,
          inCount: toldIn(state, event.to48, event.how),
        },
      };
    case 'doubted':
      return open.phase === 'counting' ? { ...state, open: { ...open, doubtful: true } } : state;
    case 'landed': {
      if (open.reading === null) return state;
      const landed = withReading(state, open.reading, (reading) =>
        reading.kind === 'counted' ? { ...reading, landing: event.answer } : reading,
      );
      return {
        ...landed,
        open: { ...open, phase: event.answer.told === 'tapped' ? 'landing' : 'read' },
      };
    }
    case 'restarted': {
      const fresh = opened(open.valve, open.direction, open.repeatOf);
      return { ...state, open: event.atZero ? { ...fresh, phase: 'counting' } : fresh };
    }
    default: {
      const never: never = event;
      return never;
    }
  }
}

/** A count between marks already tells where it landed: it is not asked again at the seat. */
function toldIn(state: JobState, to48: Turn48, how: OpenValve['lastHow']): LandingAnswer | null {
  const setUp = setUpOf(state);
  if (setUp === null) return null;
  const past48 = turn48(to48 % markOf(setUp.calling));
  if (how === 'clock') return { told: 'clock', past48 };
  return past48 === 0 ? null : { told: 'in the count', past48 };
}

function opened(valve: ValveId | null, direction: Direction, repeatOf: number | null): OpenValve {
  return {
    valve,
    direction,
    phase: 'to start',
    count48: ZERO,
    lastHow: null,
    doubtful: false,
    inCount: null,
    repeatOf,
    reading: null,
    endedAt: null,
  };
}

function begun(state: JobState, open: OpenValve): JobState {
  return { ...state, open: { ...open, phase: 'counting', count48: ZERO } };
}

function ended(state: JobState, open: OpenValve, event: JobEvent, loose: boolean): JobState {
  const setUp = setUpOf(state);
  if (setUp === null) return state;
  const common = {
    id: event.seq,
    valve: open.valve,
    round: state.round.number,
    pushrod: state.pushrod,
    position: state.crank.at,
    at: event.at,
    setUp: state.setUps.at(-1)?.seq ?? 0,
    takenOn: null,
    repeatOf: open.repeatOf,
    torqued: false,
  };
  const mark48 = markOf(setUp.calling);
  const past48 = open.inCount?.past48 ?? 0;
  const reading: Reading = loose
    ? { kind: 'seated loose', ...common }
    : {
        kind: 'counted',
        ...common,
        direction: open.direction,
        count48: turn48(open.count48 - past48),
        landing: open.inCount,
        mark48,
      };
  const asks = !loose && setUp.asksLanding && open.inCount === null;
  return {
    ...state,
    readings: [...state.readings, reading],
    crank: { ...state.crank, loaded: state.crank.loaded || (open.direction === 'on' && !loose) },
    open: { ...open, phase: asks ? 'landing' : 'read', reading: event.seq, endedAt: event.at },
  };
}

function setUpChanged(state: JobState, event: JobEvent & { type: 'setupChanged' }): JobState {
  const readings =
    event.appliesTo === 'all'
      ? state.readings.map((reading) => ({
          ...reading,
          setUp: event.seq,
          takenOn: reading.takenOn ?? reading.setUp,
        }))
      : state.readings;
  const fitted: PushrodLength | null = event.setUp.testPushrod;
  return {
    ...state,
    setUps: [...state.setUps, { seq: event.seq, setUp: event.setUp }],
    readings,
    pushrod: fitted ?? state.pushrod,
  };
}

function withReading(state: JobState, id: number, change: (reading: Reading) => Reading): JobState {
  return {
    ...state,
    readings: state.readings.map((reading) => (reading.id === id ? change(reading) : reading)),
  };
}

function moved(state: JobState, which: number | 'open', to: ValveId): JobState {
  const { open } = state;
  if (which !== 'open') return withReading(state, which, (reading) => ({ ...reading, valve: to }));
  if (open === null) return state;
  const renamed = { ...state, open: { ...open, valve: to } };
  return open.reading === null
    ? renamed
    : withReading(renamed, open.reading, (reading) => ({ ...reading, valve: to }));
}

function lastOf(state: JobState, valve: ValveId | null): number | null {
  const same = state.readings.filter((reading) =>
    valve === null || reading.valve === null
      ? reading.valve === valve
      : sameValve(reading.valve, valve),
  );
  return same.at(-1)?.id ?? null;
}

function without(valves: readonly ValveId[], valve: ValveId | null): readonly ValveId[] {
  return valve === null ? valves : valves.filter((id) => !sameValve(id, valve));
}
