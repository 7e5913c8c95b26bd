import { type Proof, sameValve, type ValveId } from '#valvetrain';
import type { CrankPosition } from './events';
import type { SetUp } from './setUp';
import { type JobState, setUpOf } from './state';
import { crankPlanOf, type PlannedPosition, sameAngle } from './walk/crankPlan';

/** The next place for the crank, with the way there. */
export interface CrankStop {
  readonly position: CrankPosition;
  /** How far to turn, crank degrees in the running direction; null while where it stands is not known. */
  readonly turnDeg: number | null;
  /** What shows that it has come there; null where only the firing order is known. */
  readonly proof: Proof | null;
  /** The cylinder whose valves cross at this position and prove it; null when there is none. */
  readonly companion: number | null;
  /** The place was overshot: two whole turns bring it back. */
  readonly again: boolean;
  /** A mark to bring the crank to first, and the turn from there on. Only while its place is not known. */
  readonly first: { readonly proof: Proof; readonly turnDeg: number } | null;
}

/** A cylinder with the valves the job counts, exhaust first. */
export interface CylinderValves {
  readonly cylinder: number;
  readonly valves: readonly ValveId[];
}

/** The cylinders with a valve in the job, in firing order. Empty without an engine. */
export function cylindersOf({ engine, scope }: SetUp): readonly CylinderValves[] {
  if (engine === null) return [];
  return engine.firingOrder
    .map((cylinder) => ({
      cylinder,
      valves: (['exhaust', 'intake'] as const)
        .map((valve) => ({ cylinder, valve }))
        .filter((id) => has(scope, id)),
    }))
    .filter(({ valves }) => valves.length > 0);
}

/** The positions of the walk the set-up asks for, in its order. Each valve is counted at one. */
export function walkOf(setUp: SetUp): readonly CrankPosition[] {
  return crankPlanOf(setUp).positions.map(({ position }) => position);
}

/** The position at which a valve may be counted; undefined when it is not in the job. */
export function positionFor(setUp: SetUp, valve: ValveId): CrankPosition | undefined {
  return walkOf(setUp).find((position) => has(position.valves, valve));
}

/** True when both are the same place of the crank. */
export function samePosition(a: CrankPosition | null, b: CrankPosition | null): boolean {
  return a !== null && b !== null && sameAngle(a.angleDeg, b.angleDeg);
}

/** Whether the crank stands at a position, and not just past it. */
export function standsAt({ crank }: JobState, position: CrankPosition | null): boolean {
  return !crank.overshot && samePosition(crank.at, position);
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
  const here = state.crank.overshot ? [] : (state.crank.at?.valves ?? []);
  const wanted = valvesWanted(state).filter((valve) => !except || !sameValve(valve, except));
  return here.find((valve) => has(wanted, valve));
}

/** Crank degrees from one position on to another, in the running direction: 0 up to 720. */
export function turnBetween(from: CrankPosition | null, to: CrankPosition): number | null {
  if (from === null) return null;
  return turnOn(from.angleDeg, to.angleDeg);
}

function turnOn(from: number | null, to: number | null): number | null {
  if (from === null || to === null) return null;
  return sameAngle(from, to) ? 0 : (to - from + 720) % 720;
}

/** The turn from where the crank stands; from just past a place that place is two turns away. */
function turnTo({ crank }: JobState, to: CrankPosition): number | null {
  const turn = turnBetween(crank.at, to);
  return crank.overshot && turn === 0 ? 720 : turn;
}

/** Where the crank goes next, or null when no valve is left or there is no engine to walk. */
export function nextStop(state: JobState): CrankStop | null {
  const setUp = setUpOf(state);
  if (setUp === null || setUp.engine === null) return null;
  const position = state.crank.heading ?? ahead(state, setUp);
  if (position === undefined) return null;
  const { positions, landmark } = crankPlanOf(setUp);
  const proof = positions.find((one) => samePosition(one.position, position))?.proof ?? null;
  const turnDeg = turnTo(state, position);
  const fromMark =
    landmark && turnDeg === null ? turnOn(landmark.angleDeg, position.angleDeg) : null;
  return {
    position,
    turnDeg,
    proof,
    companion: proof?.kind === 'crossing' ? proof.crossing : null,
    again: state.crank.overshot && samePosition(state.crank.at, position),
    first: landmark && fromMark !== null ? { proof: landmark.proof, turnDeg: fromMark } : null,
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
  return ahead(state, setUp, (position) => !standsAt(state, position));
}

/** The planned position a crank position is; undefined where the walk has none there. */
export function plannedAt(setUp: SetUp, position: CrankPosition): PlannedPosition | undefined {
  return crankPlanOf(setUp).positions.find((one) => samePosition(one.position, position));
}

function ahead(
  state: JobState,
  setUp: SetUp,
  among: (position: CrankPosition) => boolean = () => true,
): CrankPosition | undefined {
  const wanted = valvesWanted(state);
  const open = walkOf(setUp)
    .filter(among)
    .filter(({ valves }) => valves.some((valve) => has(wanted, valve)));
  if (state.crank.at === null) return open[0];
  return open.toSorted((a, b) => (turnTo(state, a) ?? 0) - (turnTo(state, b) ?? 0))[0];
}
