import {
  companion,
  type Engine,
  firingAngleDeg,
  openSpan,
  type PistonAt,
  pistonAt,
  type SeatTiming,
  type Tdc,
  tdcsOf,
  type ValveAt,
  type ValveKind,
  valveAt,
} from '#valvetrain';

/** Angles closer than this are one place in the picture, crank degrees. */
const SAME_DEG = 0.01;

/** A valve as the picture shows it. */
export interface ValveNow extends ValveAt {
  /** Shut on base circle with at least the wanted margin either way. */
  readonly countable: boolean;
  /** Crank degrees since it shut. */
  readonly sinceShutDeg: number;
  /** Crank degrees until it next opens. */
  readonly untilOpensDeg: number;
}

/** A cylinder as the picture shows it. */
export interface CylinderNow {
  readonly cylinder: number;
  readonly piston: PistonAt;
  readonly exhaust: ValveNow;
  readonly intake: ValveNow;
  /** At its firing TDC, or at the TDC where its own valves cross. */
  readonly at: 'firing TDC' | 'crossing' | null;
  readonly companion: number | null;
}

/** A TDC and how far on it lies from an angle, crank degrees, 0 up to 720. */
export interface TdcOn extends Tdc {
  readonly onDeg: number;
}

/** Every cylinder at a crank angle, in firing order. */
export function cylindersNow(
  engine: Engine,
  timing: SeatTiming,
  angleDeg: number,
  wantedDeg: number,
): readonly CylinderNow[] {
  return engine.firingOrder.map((cylinder) => {
    const piston = pistonAt(engine, cylinder, angleDeg);
    const valve = (kind: ValveKind) =>
      valveNow(engine, timing, { cylinder, valve: kind }, angleDeg, wantedDeg);
    const firing = piston.stroke === 'power' || piston.stroke === 'compression';
    return {
      cylinder,
      piston,
      exhaust: valve('exhaust'),
      intake: valve('intake'),
      at: piston.fromTdcDeg > SAME_DEG ? null : firing ? 'firing TDC' : 'crossing',
      companion: companion(engine, cylinder) ?? null,
    };
  });
}

/** The TDC the crank stands at or passed last, and how far it is past it. */
export function lastTdc(
  engine: Engine,
  angleDeg: number,
): { readonly tdc: Tdc; readonly pastDeg: number } | undefined {
  return tdcsOf(engine)
    .map((tdc) => ({ tdc, pastDeg: settled(forward(tdc.angleDeg, angleDeg)) }))
    .toSorted((a, b) => a.pastDeg - b.pastDeg)[0];
}

/** The TDCs that come within the next turn of the crank, nearest first. */
export function tdcsOn(engine: Engine, angleDeg: number): readonly TdcOn[] {
  return tdcsOf(engine)
    .map((tdc) => ({ ...tdc, onDeg: settled(forward(angleDeg, tdc.angleDeg)) }))
    .filter(({ onDeg }) => onDeg < 360 - SAME_DEG)
    .toSorted((a, b) => a.onDeg - b.onDeg);
}

/** An angle brought to 0 up to 720, crank degrees. */
export function onCycle(angleDeg: number): number {
  return settled(((angleDeg % 720) + 720) % 720);
}

/** Whether two crank angles are one place. */
export function samePlace(a: number, b: number): boolean {
  return settled(forward(a, b)) < SAME_DEG;
}

function valveNow(
  engine: Engine,
  timing: SeatTiming,
  valve: ValveAt['valve'],
  angleDeg: number,
  wantedDeg: number,
): ValveNow {
  const { opensDeg, closesDeg } = openSpan(timing.events, valve.valve);
  const firing = firingAngleDeg(engine, valve.cylinder);
  const now = valveAt(engine, timing.events, valve, angleDeg);
  return {
    ...now,
    countable: now.motion === 'shut' && now.marginDeg >= wantedDeg - SAME_DEG,
    sinceShutDeg: forward(firing + closesDeg, angleDeg),
    untilOpensDeg: forward(angleDeg, firing + opensDeg),
  };
}

function forward(fromDeg: number, toDeg: number): number {
  return (((toDeg - fromDeg) % 720) + 720) % 720;
}

/** A hair short of two turns is none: both are the same place. */
function settled(deg: number): number {
  return deg > 720 - SAME_DEG ? 0 : deg;
}
