import {
  type Engine,
  engineProblems,
  hasRefusal,
  type Proof,
  planByCylinder,
  type SeatTiming,
  type ValveId,
  type WalkStep,
  walkFor,
} from '#valvetrain';
import type { CrankPosition } from '../events';
import type { SetUp } from '../setUp';
import { timingOf, type WalkChoice, walkChoiceOf } from './choice';

/** Crank angles closer than this are one place: no mark or degree wheel tells them apart. */
export const SAME_PLACE_DEG = 0.01;

/** A position of the walk with what shows that the crank has come to it. */
export interface PlannedPosition {
  readonly position: CrankPosition;
  readonly proof: Proof;
  /** Least degrees off a ramp, of the valves counted here. */
  readonly leastMarginDeg: number;
  /** How far short of its place the crank may stand before one of them meets a ramp. */
  readonly roomShortDeg: number;
  /** How far past it. */
  readonly roomPastDeg: number;
}

/** Where the crank stops for a set-up, in the order of its walk. */
export interface CrankPlan {
  readonly positions: readonly PlannedPosition[];
  /** Where the walk begins and nothing is counted: dots that meet at no position. Mostly null. */
  readonly landmark: { readonly angleDeg: number; readonly proof: Proof } | null;
  readonly timing: SeatTiming;
}

type Step = Pick<
  WalkStep,
  'angleDeg' | 'firing' | 'count' | 'proof' | 'margins' | 'roomShortDeg' | 'roomPastDeg'
>;

/** A set-up never changes, and neither does its plan. */
const known = new WeakMap<SetUp, CrankPlan>();

/** The plan of a set-up; no positions without an engine that can be walked. */
export function crankPlanOf(setUp: SetUp): CrankPlan {
  const found = known.get(setUp) ?? worked(setUp);
  known.set(setUp, found);
  return found;
}

function worked(setUp: SetUp): CrankPlan {
  const { engine } = setUp;
  const timing = timingOf(setUp);
  if (engine === null || setUp.scope.length === 0 || hasRefusal(engineProblems(engine)))
    return { positions: [], landmark: null, timing };
  const steps = stepsOf(engine, setUp, timing, walkChoiceOf(setUp));
  const first = steps[0];
  const begins = first !== undefined && first.count.length === 0 && first.angleDeg !== null;
  return {
    positions: merged(steps.filter(({ count }) => count.length > 0)).map(planned),
    landmark: begins ? { angleDeg: first.angleDeg, proof: first.proof } : null,
    timing,
  };
}

/** The steps of the walk asked for, or of the firing order where it can't be had. */
function stepsOf(
  engine: Engine,
  { scope }: SetUp,
  timing: SeatTiming,
  { method, marginDeg, at, prefer }: WalkChoice,
): readonly Step[] {
  const valves = scope.filter(({ cylinder }) => engine.firingOrder.includes(cylinder));
  const finding = walkFor(engine, timing, method, { marginDeg, at, prefer, valves });
  if (finding.found) return finding.walk.steps;
  return planByCylinder(engine, timing.events, undefined, valves).stops.map((stop) => ({
    ...stop,
    count: stop.valves,
  }));
}

/** Stops at the same crank angle are one position. */
function merged(steps: readonly Step[]): readonly Step[] {
  const found: Step[] = [];
  for (const step of steps) {
    const place = found.findIndex((other) => sameAngle(other.angleDeg, step.angleDeg));
    const same = found[place];
    if (same === undefined) {
      found.push(step);
      continue;
    }
    found[place] = {
      ...same,
      firing: same.firing ?? step.firing,
      count: inOrder([...same.count, ...step.count]),
      margins: [...same.margins, ...step.margins],
      roomShortDeg: Math.min(same.roomShortDeg, step.roomShortDeg),
      roomPastDeg: Math.min(same.roomPastDeg, step.roomPastDeg),
    };
  }
  return found;
}

/** By cylinder number, exhaust before intake. */
function inOrder(valves: readonly ValveId[]): readonly ValveId[] {
  return valves.toSorted((a, b) => a.cylinder - b.cylinder || a.valve.localeCompare(b.valve));
}

function planned(step: Step): PlannedPosition {
  const { angleDeg, firing, count, proof, margins, roomShortDeg, roomPastDeg } = step;
  return {
    position: { angleDeg, cylinder: firing, valves: count },
    proof,
    leastMarginDeg: Math.min(...margins.map(({ marginDeg }) => marginDeg)),
    roomShortDeg,
    roomPastDeg,
  };
}

/** Whether two crank angles are one place. Nothing is at an angle that is not known. */
export function sameAngle(a: number | null, b: number | null): boolean {
  if (a === null || b === null) return false;
  const apart = (((a - b) % 720) + 720) % 720;
  return Math.min(apart, 720 - apart) < SAME_PLACE_DEG;
}
