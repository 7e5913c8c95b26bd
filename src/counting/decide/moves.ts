import { sameValve, type ValveId } from '#valvetrain';
import type { SetUp } from '../setUp';
import { type JobState, type OpenValve, readingById } from '../state';
import {
  firstValveAt,
  nextPositionOn,
  nextStop,
  nextValveHere,
  positionFor,
  standsAt,
  valvesLeft,
} from '../walk';
import { choose, chooseNext } from './choose';
import { type CommandOf, type Draft, happens, notNow, refuse } from './decision';

/** The helper's hands are clear: the turn may be named. */
export function decideHandsClear(state: JobState): Draft {
  const stop = nextStop(state);
  return stop === null
    ? notNow(state, 'handsClear')
    : happens({ type: 'handsClear', position: stop.position });
}

/** The crank stands where it was sent: the valve asked for, or the first wanted there, is taken up. */
export function decideArrive(state: JobState): Draft {
  const position = nextStop(state)?.position;
  const valve = state.crank.headingValve ?? (position && firstValveAt(state, position));
  return position === undefined || valve === undefined
    ? notNow(state, 'crankThere')
    : happens({ type: 'positionReached', position, valve });
}

/**
 * The crank went past where it was sent, or past where it was said to stand while nothing is counted
 * yet. It is never turned back.
 */
export function decideOvershot(state: JobState): Draft {
  const { open, crank } = state;
  const position = open === null ? nextStop(state)?.position : crank.at;
  const valve =
    open === null
      ? (crank.headingValve ?? (position && firstValveAt(state, position)))
      : open.valve;
  return position == null || valve == null
    ? notNow(state, 'overshot')
    : happens({ type: 'overshot', position, valve });
}

/** On to the next valve at this position, or off this position when there is none. */
export function decideNext(state: JobState, setUp: SetUp, command: CommandOf<'next'>): Draft {
  const { open } = state;
  const onward = command.cylinder ? nextCylinder(state, setUp) : null;
  if (onward !== null) return onward;
  if (open === null || setUp.engine === null) return chooseNext(state, setUp, 'on');
  if (open.phase === 'to start') return decideSkip(state);
  const next = nextValveHere(state, open.valve ?? undefined) ?? null;
  return happens({ type: 'valveLeft', valve: open.valve, skipped: false, next });
}

/** Sends the crank on while a valve is left here; null when leaving this one does that anyway. */
function nextCylinder(state: JobState, setUp: SetUp): Draft | null {
  if (nextValveHere(state) === undefined) return null;
  const position = nextPositionOn(state);
  const valve = position && firstValveAt(state, position);
  return valve === undefined ? null : choose(state, setUp, valve, 'on');
}

/** Passes over the open valve, or the one that is to come; it comes back at the end of the walk. */
export function decideSkip(state: JobState): Draft {
  const { open } = state;
  const valve = open === null ? comingValve(state) : open.valve;
  if (open === null && valve === null) return refuse({ code: 'nothing left here' });
  const toCome = valve !== null && valvesLeft(state).some((id) => sameValve(id, valve));
  const rest = toCome ? { ...state, skipped: [...state.skipped, valve] } : state;
  const here = open !== null || nextValveHere(state) !== undefined;
  const next = here ? (nextValveHere(rest, valve ?? undefined) ?? null) : null;
  return happens({ type: 'valveLeft', valve, skipped: toCome, next });
}

function comingValve(state: JobState): ValveId | null {
  const position = nextStop(state)?.position;
  if (position === undefined) return null;
  return state.crank.headingValve ?? firstValveAt(state, position) ?? null;
}

/** A repeat of the valve just read, from a fresh zero (C6), where the crank has to be for it. */
export function decideRepeat(state: JobState, setUp: SetUp): Draft {
  const reading = lastReading(state, state.open);
  if (reading === undefined) return refuse({ code: 'no reading' });
  const { valve } = reading;
  const position = valve && positionFor(setUp, valve);
  if (valve && position && !standsAt(state, position)) return choose(state, setUp, valve, 'on');
  return happens({ type: 'repeatStarted', valve });
}

/** Ticks off that the valve just read has been torqued; its reading does not change. */
export function decideTorqued(state: JobState): Draft {
  const reading = state.readings.at(-1);
  if (reading === undefined) return refuse({ code: 'no reading' });
  if (reading.torqued) return refuse({ code: 'already torqued', valve: reading.valve });
  return happens({ type: 'torqued', reading: reading.id });
}

function lastReading(state: JobState, open: OpenValve | null) {
  if (open === null) return state.readings.at(-1);
  return open.reading === null ? undefined : readingById(state, open.reading);
}
