import { type Engine, firingAngleDeg } from '../engine';
import { sameValve, type ValveId, type ValveKind, valvesOf } from '../valves';
import type { ValveEvents } from './camCard';
import { CYCLE_DEG, onCycle } from './cycle';
import { openSpan, valveAt } from './motion';
import { pistonsAt } from './piston';
import { describeProof, type Proof, proofOfAngle, proofOfFiring } from './proof';
import { type Shortfall, shortfallsOf, type ValveMargin } from './shortfalls';
import { type Arc, alongDeg } from './stabbing';
import { tdcAt } from './tdcs';

/** Wanted unless the builder says otherwise: crank degrees off either ramp. */
export const DEFAULT_MARGIN_DEG = 15;

/** One place for the crank, and what may be counted there. */
export interface PlannedStop {
  /** From the firing TDC of the first cylinder in order, 0 up to 720. */
  readonly angleDeg: number;
  /** The cylinder at its firing TDC here; null when none is. */
  readonly firing: number | null;
  /** By cylinder number, exhaust before intake. */
  readonly valves: readonly ValveId[];
  readonly margins: readonly ValveMargin[];
  readonly leastMarginDeg: number;
  /** How far short of the place the crank may stand before one of these valves meets a ramp. */
  readonly roomShortDeg: number;
  /** How far past it. */
  readonly roomPastDeg: number;
  /** Crank degrees of the piston nearest its TDC, of all pistons. */
  readonly nearestPistonDeg: number;
  readonly proof: Proof;
  readonly description: string;
}

export interface StopPlan {
  /** Rising from the first; no stop is without a valve. */
  readonly stops: readonly PlannedStop[];
  readonly wantedDeg: number;
  /** Null when there is no stop. */
  readonly leastMarginDeg: number | null;
  /** Empty when the plan is safe for this cam. */
  readonly shortfalls: readonly Shortfall[];
}

/** The arc of crank angles at which a valve is shut on its base circle. */
export function baseCircleArc(engine: Engine, events: ValveEvents, valve: ValveId): Arc {
  const { opensDeg, closesDeg } = openSpan(events, valve.valve);
  return {
    startDeg: onCycle(firingAngleDeg(engine, valve.cylinder) + closesDeg),
    lengthDeg: CYCLE_DEG - (closesDeg - opensDeg),
  };
}

/** Every valve at whichever of the angles gives it most margin; of two alike, the first. */
export function planAtAngles(
  engine: Engine,
  events: ValveEvents,
  anglesDeg: readonly number[],
  wantedDeg: number = DEFAULT_MARGIN_DEG,
  valves: readonly ValveId[] = valvesOf(engine),
): StopPlan {
  const atBest = valves.map((valve) => {
    const margins = anglesDeg.map((angle) => valveAt(engine, events, valve, angle).marginDeg);
    return { valve, place: margins.indexOf(Math.max(...margins)) };
  });
  const places = anglesDeg.map((angleDeg, place) => ({
    angleDeg,
    valves: atBest.filter((one) => one.place === place).map((one) => one.valve),
    proof: proofOfAngle(engine, angleDeg),
  }));
  return planOf(engine, events, places, wantedDeg);
}

/** One position a cylinder, in firing order, both valves counted at its firing TDC. */
export function planByCylinder(
  engine: Engine,
  events: ValveEvents,
  wantedDeg: number = DEFAULT_MARGIN_DEG,
  valves: readonly ValveId[] = valvesOf(engine),
): StopPlan {
  const places = engine.firingOrder.map((cylinder) => ({
    angleDeg: firingAngleDeg(engine, cylinder),
    valves: valves.filter((valve) => valve.cylinder === cylinder),
    proof: proofOfFiring(engine, cylinder),
  }));
  return planOf(engine, events, places, wantedDeg);
}

/**
 * One position a valve, for long cams: as a cylinder's exhaust starts to open its intake is counted,
 * and as its intake is nearly shut its exhaust. Published in study guides. In order of crank angle,
 * so that two turns take in the engine.
 */
export function planByValve(
  engine: Engine,
  events: ValveEvents,
  wantedDeg: number = DEFAULT_MARGIN_DEG,
  valves: readonly ValveId[] = valvesOf(engine),
): StopPlan {
  const places = engine.firingOrder.flatMap((cylinder): readonly Place[] => {
    const firing = firingAngleDeg(engine, cylinder);
    const counted = (kind: ValveKind) =>
      valves.filter((valve) => sameValve(valve, { cylinder, valve: kind }));
    return [
      {
        angleDeg: onCycle(firing + openSpan(events, 'exhaust').opensDeg),
        valves: counted('intake'),
        proof: { kind: 'exhaust starts to open', cylinder },
      },
      {
        angleDeg: onCycle(firing + openSpan(events, 'intake').closesDeg),
        valves: counted('exhaust'),
        proof: { kind: 'intake nearly shut', cylinder },
      },
    ];
  });
  const rising = places.toSorted((a, b) => a.angleDeg - b.angleDeg);
  return planOf(engine, events, rising, wantedDeg);
}

interface Place {
  readonly angleDeg: number;
  readonly valves: readonly ValveId[];
  readonly proof: Proof;
}

function planOf(
  engine: Engine,
  events: ValveEvents,
  places: readonly Place[],
  wantedDeg: number,
): StopPlan {
  const stops = places
    .filter(({ valves }) => valves.length > 0)
    .map((place) => stopAt(engine, events, place));
  const margins = stops.flatMap((stop) => stop.margins);
  return {
    stops,
    wantedDeg,
    leastMarginDeg: leastOf(margins.map(({ marginDeg }) => marginDeg)),
    shortfalls: shortfallsOf(margins, wantedDeg),
  };
}

function stopAt(engine: Engine, events: ValveEvents, place: Place): PlannedStop {
  const angleDeg = onCycle(place.angleDeg);
  const valves = place.valves.toSorted(
    (a, b) => a.cylinder - b.cylinder || a.valve.localeCompare(b.valve),
  );
  const margins = valves.map((valve) => ({
    valve,
    marginDeg: valveAt(engine, events, valve, angleDeg).marginDeg,
  }));
  const arcs = valves.map((valve) => baseCircleArc(engine, events, valve));
  const pistons = pistonsAt(engine, angleDeg).map(({ fromTdcDeg }) => fromTdcDeg);
  return {
    angleDeg,
    firing: tdcAt(engine, angleDeg)?.firing ?? null,
    valves,
    margins,
    leastMarginDeg: Math.min(...margins.map(({ marginDeg }) => marginDeg)),
    roomShortDeg: Math.min(...arcs.map((arc) => roomIn(arc, angleDeg).shortDeg)),
    roomPastDeg: Math.min(...arcs.map((arc) => roomIn(arc, angleDeg).pastDeg)),
    nearestPistonDeg: Math.min(...pistons),
    proof: place.proof,
    description: describeProof(place.proof),
  };
}

/** How far back and on an angle may move within an arc; both 0 outside it. */
function roomIn(
  arc: Arc,
  angleDeg: number,
): { readonly shortDeg: number; readonly pastDeg: number } {
  const along = alongDeg(arc, angleDeg);
  return along <= arc.lengthDeg
    ? { shortDeg: along, pastDeg: arc.lengthDeg - along }
    : { shortDeg: 0, pastDeg: 0 };
}

function leastOf(values: readonly number[]): number | null {
  return values.length === 0 ? null : Math.min(...values);
}
