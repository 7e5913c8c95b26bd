import { type Engine, firingAngleDeg } from '../engine';
import { forwardDeg } from './cycle';

export type Stroke = 'power' | 'exhaust' | 'intake' | 'compression';

const strokes: readonly Stroke[] = ['power', 'exhaust', 'intake', 'compression'];

/** One piston with the crank at some angle. */
export interface PistonAt {
  readonly cylinder: number;
  readonly stroke: Stroke;
  /** Crank degrees from the nearer TDC, 0 to 180. */
  readonly fromTdcDeg: number;
  /** How far down the bore, 0 at TDC to 1 at BDC, with a rod of ordinary length: for drawing. */
  readonly downShare: number;
}

/** Rod length over crank throw, for the drawing only. From memory: most lie between 3 and 4. */
const ROD_TO_THROW = 3.5;

/**
 * A piston with the crank at an angle counted from the firing TDC of the first cylinder in order.
 * @throws RangeError if the cylinder is not in the firing order.
 */
export function pistonAt(engine: Engine, cylinder: number, angleDeg: number): PistonAt {
  const sinceFiring = forwardDeg(firingAngleDeg(engine, cylinder), angleDeg);
  const sinceTdc = sinceFiring % 360;
  return {
    cylinder,
    stroke: strokes[Math.floor(sinceFiring / 180)] ?? 'compression',
    fromTdcDeg: Math.min(sinceTdc, 360 - sinceTdc),
    downShare: downShare((sinceTdc * Math.PI) / 180),
  };
}

/** Every piston at a crank angle, by cylinder number. */
export function pistonsAt(engine: Engine, angleDeg: number): readonly PistonAt[] {
  return engine.firingOrder
    .toSorted((a, b) => a - b)
    .map((cylinder) => pistonAt(engine, cylinder, angleDeg));
}

/** Crank and rod: throw 1, so the stroke is 2. Textbook slider-crank. */
function downShare(radians: number): number {
  const rod = Math.sqrt(ROD_TO_THROW ** 2 - Math.sin(radians) ** 2);
  return (1 - Math.cos(radians) + ROD_TO_THROW - rod) / 2;
}
