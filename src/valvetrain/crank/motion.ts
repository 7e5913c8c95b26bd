import { type Engine, firingAngleDeg } from '../engine';
import { type ValveId, type ValveKind, valvesOf } from '../valves';
import type { ValveEvents } from './camCard';
import { CYCLE_DEG, forwardDeg } from './cycle';

/** 'opening' and 'closing' are the first and last third of the time off the base circle. */
export type ValveMotion = 'shut' | 'opening' | 'open' | 'closing';

/** One valve with the crank at some angle. */
export interface ValveAt {
  readonly valve: ValveId;
  readonly motion: ValveMotion;
  /**
   * Crank degrees from the nearer ramp while shut on base circle; nought or less while it is not:
   * then the degrees back or on to the nearer edge of the base circle.
   */
  readonly marginDeg: number;
  /** Share of full lift, 0 to 1, on a smooth lobe drawn for the eye. No figure to work with. */
  readonly liftShare: number;
}

/** When a valve is off its base circle, crank degrees after its own cylinder's firing TDC. */
export interface OpenSpan {
  readonly opensDeg: number;
  readonly closesDeg: number;
}

/**
 * The exhaust opens before the BDC at 180 and closes after the TDC at 360; the intake opens before
 * that TDC and closes after the BDC at 540. Derived from the four strokes.
 */
export function openSpan(events: ValveEvents, valve: ValveKind): OpenSpan {
  switch (valve) {
    case 'exhaust':
      return {
        opensDeg: 180 - events.exhaustOpensBeforeBdcDeg,
        closesDeg: 360 + events.exhaustClosesAfterTdcDeg,
      };
    case 'intake':
      return {
        opensDeg: 360 - events.intakeOpensBeforeTdcDeg,
        closesDeg: 540 + events.intakeClosesAfterBdcDeg,
      };
    default:
      return unknownValve(valve);
  }
}

/**
 * A valve with the crank at an angle counted from the firing TDC of the first cylinder in order.
 * @throws RangeError if its cylinder is not in the firing order.
 */
export function valveAt(
  engine: Engine,
  events: ValveEvents,
  valve: ValveId,
  angleDeg: number,
): ValveAt {
  const { opensDeg, closesDeg } = openSpan(events, valve.valve);
  const duration = closesDeg - opensDeg;
  const sinceOpening = forwardDeg(firingAngleDeg(engine, valve.cylinder) + opensDeg, angleDeg);
  if (sinceOpening > duration) {
    const marginDeg = Math.min(sinceOpening - duration, CYCLE_DEG - sinceOpening);
    return { valve, motion: 'shut', marginDeg, liftShare: 0 };
  }
  const through = sinceOpening / duration;
  return {
    valve,
    motion: through < 1 / 3 ? 'opening' : through > 2 / 3 ? 'closing' : 'open',
    marginDeg: -Math.min(sinceOpening, duration - sinceOpening),
    liftShare: Math.sin(Math.PI * through) ** 2,
  };
}

/** Every valve of the engine at a crank angle, by cylinder number, intake before exhaust. */
export function valvesAt(
  engine: Engine,
  events: ValveEvents,
  angleDeg: number,
): readonly ValveAt[] {
  return valvesOf(engine).map((valve) => valveAt(engine, events, valve, angleDeg));
}

function unknownValve(valve: never): never {
  throw new RangeError(`Unknown valve: ${String(valve)}.`);
}
