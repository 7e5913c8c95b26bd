import { sameValve, type ValveId, type ValveKind } from '#valvetrain';
import type { SetUp } from '../setUp';
import { type JobState, setUpOf } from '../state';
import {
  nextStop,
  nextValveHere,
  positionFor,
  samePosition,
  valvesLeft,
  valvesWanted,
} from '../walk';
import type { CommandOf, Draft } from './decision';
import { happens, refuse } from './decision';

const other = (valve: ValveKind): ValveKind => (valve === 'intake' ? 'exhaust' : 'intake');

/** Refuses a valve that is not of this engine or not in this job. */
function outside(setUp: SetUp, valve: ValveId): Draft | null {
  const cylinders = setUp.engine?.cylinders ?? 0;
  if (setUp.engine !== null && !setUp.engine.firingOrder.includes(valve.cylinder)) {
    return refuse({ code: 'no such cylinder', cylinder: valve.cylinder, cylinders });
  }
  if (setUp.engine === null || setUp.scope.some((id) => sameValve(id, valve))) return null;
  return refuse({ code: 'not in this job', valve });
}

/** The valve a builder means by a cylinder, a kind, both or neither. */
function meant(state: JobState, command: CommandOf<'chooseValve'>): ValveId | undefined {
  const at = state.open?.valve?.cylinder ?? state.crank.at?.cylinder ?? undefined;
  const cylinder = command.cylinder ?? at;
  if (command.cylinder === undefined && command.valve === undefined) {
    return nextValveHere(state) ?? valvesLeft(state)[0];
  }
  if (cylinder === undefined) return undefined;
  if (command.valve !== undefined) return { cylinder, valve: command.valve };
  const left = valvesLeft(state).filter((id) => id.cylinder === cylinder);
  return left[0] ?? { cylinder, valve: 'exhaust' };
}

/** Takes up a valve: here, or by sending the crank to where it may be counted. */
export function decideChoose(
  state: JobState,
  setUp: SetUp,
  command: CommandOf<'chooseValve'>,
): Draft {
  if (setUp.engine === null && command.cylinder === undefined) {
    return happens({ type: 'valveChosen', valve: null, direction: 'on', heading: null });
  }
  const valve = meant(state, command);
  if (valve === undefined) return refuse({ code: 'say which valve' });
  const wrong = outside(setUp, valve);
  if (wrong !== null) return wrong;
  const position = positionFor(setUp, valve) ?? null;
  const heading = samePosition(position, state.crank.at) ? null : position;
  return happens({ type: 'valveChosen', valve, direction: 'on', heading });
}

/** The crank stands where it was sent: the first wanted valve there is taken up. */
export function decideArrive(state: JobState): Draft {
  const position = nextStop(state)?.position;
  const left = valvesWanted(state);
  const valve =
    position?.valves.find((id) => left.some((wanted) => sameValve(wanted, id))) ??
    position?.valves[0];
  if (position === undefined || valve === undefined) return refuse({ code: 'nothing left here' });
  return happens({ type: 'positionReached', position, valve: state.crank.headingValve ?? valve });
}

/** On to the next valve at this position, or off this position when there is none. */
export function decideNext(state: JobState, command: CommandOf<'next'>): Draft {
  if (state.open === null) return refuse({ code: 'nothing left here' });
  const next = command.cylinder
    ? null
    : (nextValveHere(state, state.open.valve ?? undefined) ?? null);
  return happens({ type: 'valveLeft', skipped: false, next });
}

/** Passes a valve over; it comes back at the end of the walk. */
export function decideSkip(state: JobState): Draft {
  const valve = state.open?.valve ?? nextValveHere(state);
  if (state.open === null || valve === undefined) return refuse({ code: 'nothing left here' });
  const next = nextValveHere({ ...state, skipped: [...state.skipped, valve] }, valve) ?? null;
  return happens({ type: 'valveLeft', skipped: true, next });
}

/** 'Wrong cylinder, it's five': moves the open valve, or the last reading, to the right name. */
export function decideMoveReading(
  state: JobState,
  setUp: SetUp,
  command: CommandOf<'moveReading'>,
): Draft {
  const open = state.open;
  const last = open === null ? state.readings.at(-1) : undefined;
  const from = open?.valve ?? last?.valve ?? null;
  if (open === null && last === undefined) return refuse({ code: 'no reading' });
  const cylinder = command.cylinder ?? from?.cylinder;
  const kind =
    command.valve === 'other' || command.valve === undefined ? from?.valve : command.valve;
  if (cylinder === undefined || kind === undefined) return refuse({ code: 'say which valve' });
  const to: ValveId = { cylinder, valve: command.valve === 'other' ? other(kind) : kind };
  if (from !== null && sameValve(from, to))
    return refuse({ code: 'already that valve', valve: to });
  return outside(setUp, to) ?? happens({ type: 'readingMoved', reading: last?.id ?? 'open', to });
}

/** Names a reading that was counted before its valve had a name. */
export function decideName(state: JobState, command: CommandOf<'nameReading'>): Draft {
  const setUp = setUpOf(state);
  const reading = state.readings.find(({ id }) => id === command.reading);
  if (setUp === null || reading === undefined) return refuse({ code: 'unknown reading' });
  if (reading.valve !== null && sameValve(reading.valve, command.valve)) {
    return refuse({ code: 'already that valve', valve: command.valve });
  }
  return (
    outside(setUp, command.valve) ??
    happens({ type: 'valveNamed', reading: reading.id, valve: command.valve })
  );
}

/** A repeat of the valve just read, from a fresh zero (C6). */
export function decideRepeat(state: JobState): Draft {
  const open = state.open;
  if (open !== null && open.reading === null) return refuse({ code: 'no reading' });
  const reading =
    open === null ? state.readings.at(-1) : state.readings.find(({ id }) => id === open.reading);
  if (reading === undefined) return refuse({ code: 'no reading' });
  return happens({ type: 'repeatStarted', valve: reading.valve });
}

/** Ticks off that the valve just read has been torqued; its reading does not change. */
export function decideTorqued(state: JobState): Draft {
  const reading = state.readings.at(-1);
  if (reading === undefined) return refuse({ code: 'no reading' });
  if (reading.torqued) return refuse({ code: 'already torqued', valve: reading.valve });
  return happens({ type: 'torqued', reading: reading.id });
}
