import { companion, firingAngleDeg, sameValve, type ValveId } from '#valvetrain';
import type { CrankPosition } from './events';
import type { SetUp } from './setUp';
import { type JobState, setUpOf } from './state';

/** The next place for the crank, with the way there. */
export interface CrankStop {
  readonly position: CrankPosition;
  /** How far to turn, crank degrees in the running direction; null while where it stands is not known. */
  readonly turnDeg: number | null;
  /** The cylinder whose valves cross at this position and prove it; null when there is none. */
  readonly companion: number | null;
}

/**
 * Every firing TDC in firing order, with the valves of that cylinder that the job counts, exhaust
 * first. Empty without an engine.
 */
export function stopsOf({ engine, scope }: SetUp): readonly CrankPosition[] {
  if (engine === null) return [];
  return engine.firingOrder.map((cylinder) => ({
    angleDeg: firingAngleDeg(engine, cylinder),
    cylinder,
    valves: (['exhaust', 'intake'] as const)
      .map((valve) => ({ cylinder, valve }))
      .filter((id) => scope.some((inScope) => sameValve(inScope, id))),
  }));
}

/** The walk: the stops of the cylinders with a valve in the job, in firing order. */
export function walkOf(setUp: SetUp): readonly CrankPosition[] {
  return stopsOf(setUp).filter((position) => position.valves.length > 0);
}

/** The position at which a valve may be counted; undefined when it is not in the job. */
export function positionFor(setUp: SetUp, valve: ValveId): CrankPosition | undefined {
  return walkOf(setUp).find((position) => position.valves.some((id) => sameValve(id, valve)));
}

/** True when both are the same place of the crank. */
export function samePosition(a: CrankPosition | null, b: CrankPosition | null): boolean {
  return a !== null && b !== null && a.angleDeg === b.angleDeg;
}

function has(valves: readonly ValveId[], valve: ValveId): boolean {
  return valves.some((id) => sameValve(id, valve));
}

/** Valves of this round without a reading, in the order of the walk. */
export function valvesLeft(state: JobState): readonly ValveId[] {
  const setUp = setUpOf(state);
  if (setUp === null) return [];
  const read = state.readings.flatMap((reading) =>
    reading.round === state.round.number && reading.valve !== null ? [reading.valve] : [],
  );
  return walkOf(setUp)
    .flatMap((position) => position.valves)
    .filter((valve) => !has(read, valve));
}

/**
 * Valves left that were not passed over. Once only those remain they come back, the one passed
 * over last after the others.
 */
export function valvesWanted(state: JobState): readonly ValveId[] {
  const left = valvesLeft(state);
  const fresh = left.filter((valve) => !has(state.skipped, valve));
  if (fresh.length > 0) return fresh;
  const last = state.skipped.at(-1);
  const others = left.filter((valve) => last === undefined || !sameValve(valve, last));
  return others.length > 0 ? others : left;
}

/** The next valve to take up without moving the crank; undefined when there is none here. */
export function nextValveHere(state: JobState, except?: ValveId): ValveId | undefined {
  const here = state.crank.at?.valves ?? [];
  const wanted = valvesWanted(state).filter((valve) => !except || !sameValve(valve, except));
  return here.find((valve) => has(wanted, valve));
}

/** Crank degrees from one position on to another, in the running direction: 0 to 719. */
export function turnBetween(from: CrankPosition | null, to: CrankPosition): number | null {
  if (from === null || from.angleDeg === null || to.angleDeg === null) return null;
  return (to.angleDeg - from.angleDeg + 720) % 720;
}

/** Where the crank goes next, or null when no valve is left or there is no engine to walk. */
export function nextStop(state: JobState): CrankStop | null {
  const setUp = setUpOf(state);
  if (setUp === null || setUp.engine === null) return null;
  const position = state.crank.heading ?? ahead(state, setUp);
  if (position === undefined) return null;
  return {
    position,
    turnDeg: turnBetween(state.crank.at, position),
    companion:
      position.cylinder === null ? null : (companion(setUp.engine, position.cylinder) ?? null),
  };
}

/** The first wanted valve of a position, or its first valve when none there is wanted. */
export function firstValveAt(state: JobState, position: CrankPosition): ValveId | undefined {
  const wanted = valvesWanted(state);
  return position.valves.find((valve) => has(wanted, valve)) ?? position.valves[0];
}

/** The next position with a wanted valve other than where the crank stands; undefined for none. */
export function nextPositionOn(state: JobState): CrankPosition | undefined {
  const setUp = setUpOf(state);
  if (setUp === null) return undefined;
  return ahead(state, setUp, (position) => !samePosition(position, state.crank.at));
}

function ahead(
  state: JobState,
  setUp: SetUp,
  among: (position: CrankPosition) => boolean = () => true,
): CrankPosition | undefined {
  const wanted = valvesWanted(state);
  const from = state.crank.at;
  const open = walkOf(setUp)
    .filter(among)
    .filter(({ valves }) => valves.some((valve) => has(wanted, valve)));
  if (from === null) return open[0];
  return open.toSorted((a, b) => (turnBetween(from, a) ?? 0) - (turnBetween(from, b) ?? 0))[0];
}
