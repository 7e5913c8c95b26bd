import { sameValve, turn48, type ValveId } from '#valvetrain';
import type { Direction, JobEvent } from '../events';
import { type JobState, type OpenValve, setUpOf } from '../state';
import { withReading } from './changeReadings';
import { earlierReading } from './earlierReading';
import { ended } from './ended';

type ValveEvent = Extract<
  JobEvent,
  { type: 'zeroTouched' | 'counted' | 'doubted' | 'seated' | 'landed' | 'restarted' }
>;

/** The state with a valve taken up, not yet started. */
export function takenUp(state: JobState, valve: ValveId | null, direction: Direction): JobState {
  const repeatOf = earlierReading(state, valve);
  const skipped = valve === null ? state.skipped : without(state.skipped, valve);
  return { ...state, skipped, open: opened(valve, direction, repeatOf) };
}

/** What an event does to the valve being counted; one that does not fit its phase does nothing. */
export function onOpenValve(state: JobState, open: OpenValve, event: ValveEvent): JobState {
  const { phase, direction } = open;
  switch (event.type) {
    case 'zeroTouched':
      if (direction === 'on') return phase === 'to start' ? begun(state, open) : state;
      return phase === 'counting' ? ended(state, open, event, false) : state;
    case 'seated':
      if (direction === 'off') return phase === 'to start' ? begun(state, open) : state;
      return phase === 'counting' || (phase === 'to start' && event.loose)
        ? ended(state, open, event, event.loose)
        : state;
    case 'counted':
      return phase === 'counting' ? counted(state, open, event) : state;
    case 'doubted':
      return phase === 'counting' ? { ...state, open: { ...open, doubtful: true } } : state;
    case 'landed':
      return phase === 'landing' && open.reading !== null
        ? landed(state, open, open.reading, event)
        : state;
    case 'restarted': {
      if (phase !== 'counting') return state;
      const fresh = opened(open.valve, direction, open.repeatOf);
      return { ...state, open: event.atZero ? { ...fresh, phase: 'counting' } : fresh };
    }
    default: {
      const never: never = event;
      return never;
    }
  }
}

/** A list of valves without one of them. */
export function without(valves: readonly ValveId[], valve: ValveId): readonly ValveId[] {
  return valves.filter((id) => !sameValve(id, valve));
}

function opened(valve: ValveId | null, direction: Direction, repeatOf: number | null): OpenValve {
  return {
    valve,
    direction,
    phase: 'to start',
    count48: turn48(0),
    lastHow: null,
    doubtful: false,
    repeatOf,
    reading: null,
    endedAt: null,
  };
}

function begun(state: JobState, open: OpenValve): JobState {
  return { ...state, open: { ...open, phase: 'counting', count48: turn48(0) } };
}

/** Running a fastener down past zero presses its lifter in, seated or not. */
function counted(
  state: JobState,
  open: OpenValve,
  { to48, how }: JobEvent & { type: 'counted' },
): JobState {
  const presses = open.direction === 'on' && setUpOf(state)?.checking === undefined;
  const loaded = state.crank.loaded || (presses && to48 > 0);
  return {
    ...state,
    crank: { ...state.crank, loaded },
    open: { ...open, count48: to48, lastHow: how, doubtful: false },
  };
}

/** Taps at 'how far?' may be followed by more; any other answer closes it. */
function landed(
  state: JobState,
  open: OpenValve,
  id: number,
  { answer }: JobEvent & { type: 'landed' },
): JobState {
  const answered = withReading(state, id, (reading) =>
    reading.kind === 'counted' ? { ...reading, landing: answer } : reading,
  );
  return { ...answered, open: { ...open, phase: answer.told === 'tapped' ? 'landing' : 'read' } };
}
