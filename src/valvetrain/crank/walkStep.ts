import type { ValveId } from '../valves';
import { CYCLE_DEG, turnOnDeg } from './cycle';
import { describeProof, type Proof } from './proof';
import type { Shortfall, ValveMargin } from './shortfalls';
import type { PlannedStop } from './stopPlan';

/** One step of a walk: turn so far in the running direction, see the proof, count these valves. */
export interface WalkStep {
  /** Crank degrees, 0 to 720, never back; null when it is not known: turn on until the proof shows. */
  readonly turnDeg: number | null;
  /** From the firing TDC of the first cylinder in order; null when the order is not known. */
  readonly angleDeg: number | null;
  /** The cylinder at its firing TDC; null when none is. */
  readonly firing: number | null;
  /** By cylinder number, exhaust before intake; empty at a landmark to start from. */
  readonly count: readonly ValveId[];
  readonly margins: readonly ValveMargin[];
  /** How far short of its place the crank may stand before a valve counted here meets a ramp. */
  readonly roomShortDeg: number;
  /**
   * How far past it. Turned on by less than this, a pushrod that is counted here must not move: the
   * proof on the valve itself.
   */
  readonly roomPastDeg: number;
  readonly proof: Proof;
  readonly description: string;
}

/** The steps of a walk and the valves it does not keep far enough off their ramps. */
export interface Walk {
  readonly steps: readonly WalkStep[];
  /** Empty when the walk is safe for this cam. */
  readonly shortfalls: readonly Shortfall[];
}

/** A planned stop as a step, from wherever the crank stands. */
export function stepTo(stop: PlannedStop, turnDeg: number | null, proof?: Proof): WalkStep {
  const { angleDeg, firing, valves, margins, roomShortDeg, roomPastDeg } = stop;
  const shown = proof ?? stop.proof;
  return {
    turnDeg,
    angleDeg,
    firing,
    count: valves,
    margins,
    roomShortDeg,
    roomPastDeg,
    proof: shown,
    description: describeProof(shown),
  };
}

/** Each step with its turn from the one before; the first from `fromDeg`, null when not known. */
export function withTurns(
  steps: readonly WalkStep[],
  fromDeg: number | undefined,
): readonly WalkStep[] {
  return steps.map((step, place) => {
    const from = place === 0 ? fromDeg : steps[place - 1]?.angleDeg;
    const known = typeof from === 'number' && step.angleDeg !== null;
    return { ...step, turnDeg: known ? turnOnDeg(from, step.angleDeg) : null };
  });
}

/**
 * The same step after its place was overshot: the crank never goes back, so it goes round again, two
 * turns, until the same proof shows.
 */
export function goRoundAgain(step: WalkStep): WalkStep {
  return { ...step, turnDeg: CYCLE_DEG };
}
