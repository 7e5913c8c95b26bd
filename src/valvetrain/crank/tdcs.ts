import { companion, type Engine, firingAngleDeg } from '../engine';
import { CYCLE_DEG, onCycle, SAME_DEG, tidyAngleDeg, turnOnDeg } from './cycle';

/** A crank angle at which at least one piston is at TDC. */
export interface Tdc {
  readonly angleDeg: number;
  /** The cylinder at its firing TDC, both valves shut; null when none is. */
  readonly firing: number | null;
  /** The cylinder at the TDC between exhaust and intake, its valves crossing; null when none is. */
  readonly crossing: number | null;
}

/** Every TDC of the engine in two turns of the crank, rising from 0. */
export function tdcsOf(engine: Engine): readonly Tdc[] {
  const found: Tdc[] = [];
  for (const cylinder of engine.firingOrder) {
    const firing = firingAngleDeg(engine, cylinder);
    const crosses = companion(engine, cylinder) ?? null;
    found.push({ angleDeg: tidyAngleDeg(firing), firing: cylinder, crossing: crosses });
    if (crosses === null) {
      found.push({ angleDeg: tidyAngleDeg(firing + 360), firing: null, crossing: cylinder });
    }
  }
  return found.toSorted((a, b) => a.angleDeg - b.angleDeg);
}

/** The TDC at a crank angle, undefined when the angle is none. Of two at once, one with a crossing. */
export function tdcAt(engine: Engine, angleDeg: number): Tdc | undefined {
  return tdcsOf(engine)
    .toSorted((a, b) => Number(a.crossing === null) - Number(b.crossing === null))
    .find((tdc) => samePlace(tdc.angleDeg, angleDeg));
}

/** The TDC nearest a crank angle, and how far past it the angle lies: below 0 before it. */
export function nearestTdc(
  engine: Engine,
  angleDeg: number,
): { readonly tdc: Tdc; readonly pastDeg: number } | undefined {
  return tdcsOf(engine)
    .map((tdc) => {
      const onDeg = turnOnDeg(tdc.angleDeg, angleDeg);
      return { tdc, pastDeg: onDeg > CYCLE_DEG / 2 ? onDeg - CYCLE_DEG : onDeg };
    })
    .toSorted((a, b) => Math.abs(a.pastDeg) - Math.abs(b.pastDeg))[0];
}

function samePlace(a: number, b: number): boolean {
  const apart = onCycle(a - b);
  return Math.min(apart, CYCLE_DEG - apart) <= 2 * SAME_DEG;
}
