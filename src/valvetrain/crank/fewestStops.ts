import type { Engine } from '../engine';
import type { Problem } from '../problems';
import { type ValveId, valvesOf } from '../valves';
import type { SeatTiming } from './seatTiming';
import { settledCover } from './settledCover';
import { type Allowed, type Arc, fewestPoints } from './stabbing';
import { baseCircleArc, DEFAULT_MARGIN_DEG, planAtAngles, type StopPlan } from './stopPlan';
import { noPositionProblem, stopProblems } from './stopProblems';
import { tdcsOf } from './tdcs';
import { clearOfTdc, shrunk, widestClearanceDeg, widestMarginDeg } from './widest';

/** What is wanted of the crank positions. Everything left out has a default. */
export interface StopWish {
  /** Crank degrees off either ramp, 0 or more; 15 unless said. */
  readonly marginDeg?: number;
  /**
   * Where the crank may stop: at any angle, which needs a degree wheel; only at TDCs, which can be
   * found without one; or only at angles that are marked, from the first firing TDC. TDCs unless said.
   */
  readonly at?: 'any angle' | 'TDCs' | readonly number[];
  /**
   * Among plans of as few stops: the largest least margin, unless said; or every piston as far from
   * its TDC as can be, then the margin. The second bears on 'any angle' only.
   */
  readonly prefer?: 'most margin' | 'pistons away from TDC';
  /** The valves to be counted; all unless said. */
  readonly valves?: readonly ValveId[];
}

export type StopFinding =
  | { readonly found: true; readonly plan: StopPlan }
  | { readonly found: false; readonly problem: Problem };

/**
 * The fewest crank positions at which every wanted valve is, at one of them, at least the wanted
 * margin off its ramps. Exact in their number and in what is preferred. Of several plans alike in
 * both, one that no single stop can be moved in for more margin in all; then the one that begins
 * nearest the first firing TDC.
 */
export function fewestStops(engine: Engine, cam: SeatTiming, wish: StopWish = {}): StopFinding {
  const wanted = wish.marginDeg ?? DEFAULT_MARGIN_DEG;
  const valves = wish.valves ?? valvesOf(engine);
  const [problem] = stopProblems(engine, wanted, valves);
  if (problem !== undefined) return { found: false, problem };
  const arcs = valves.map((valve) => baseCircleArc(engine, cam.events, valve));
  const anywhere = wish.at === 'any angle';
  const allowed = anywhere ? 'anywhere' : placesAt(engine, wish.at ?? 'TDCs');
  const shortest = fewestPoints(shrunk(arcs, wanted), allowed)[0];
  if (shortest === undefined) {
    return { found: false, problem: noPositionProblem(valves, arcs, allowed, wanted) };
  }
  const room =
    anywhere && wish.prefer === 'pistons away from TDC'
      ? clearOf(engine, shrunk(arcs, wanted), shortest.length)
      : allowed;
  const margin = widestMarginDeg(arcs, room, shortest.length, wanted);
  const angles = settledCover(arcs, fewestPoints(shrunk(arcs, margin), room), room);
  return { found: true, plan: planAtAngles(engine, cam.events, angles, wanted, valves) };
}

function placesAt(engine: Engine, at: 'TDCs' | readonly number[]): Allowed {
  const angles = at === 'TDCs' ? tdcsOf(engine).map(({ angleDeg }) => angleDeg) : at;
  return angles.map((startDeg) => ({ startDeg, lengthDeg: 0 }));
}

function clearOf(engine: Engine, arcs: readonly Arc[], stops: number): Allowed {
  const tdcs = tdcsOf(engine).map(({ angleDeg }) => angleDeg);
  return clearOfTdc(tdcs, widestClearanceDeg(arcs, tdcs, stops));
}
