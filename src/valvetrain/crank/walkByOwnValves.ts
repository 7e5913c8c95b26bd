import { cylinderNumbers, type Engine, makeEngine } from '../engine';
import type { ValveId } from '../valves';
import type { SeatTiming } from './seatTiming';
import { planByCylinder, planByValve, type StopPlan } from './stopPlan';
import { stepTo, type Walk } from './walkStep';

/**
 * A walk when the firing order is not known: each cylinder's own valves tell where its piston is, so
 * no turn is named and the cylinders come by number.
 */
export function walkByOwnValves(
  engine: Engine,
  cam: SeatTiming,
  by: 'watching the valves' | 'exhaust opening, intake closing',
  wantedDeg: number,
  valves: readonly ValveId[],
): Walk {
  const plan = by === 'watching the valves' ? planByCylinder : planByValve;
  const plans: readonly StopPlan[] = cylinderNumbers(engine.cylinders).map((cylinder) =>
    plan(
      alone(engine, cylinder),
      cam.events,
      wantedDeg,
      valves.filter((valve) => valve.cylinder === cylinder),
    ),
  );
  return {
    steps: plans
      .flatMap(({ stops }) => stops)
      .map((stop) => ({ ...stepTo(stop, null), angleDeg: null })),
    shortfalls: plans.flatMap(({ shortfalls }) => shortfalls),
  };
}

/** One cylinder as an engine of its own: its valves' timing about its own firing TDC is the same. */
function alone(engine: Engine, cylinder: number): Engine {
  const { layout, runningDirection, seenFrom } = engine;
  return makeEngine({
    layout,
    cylinders: 1,
    firingOrder: [cylinder],
    numbering: 'typed',
    banks: [[cylinder]],
    runningDirection,
    seenFrom,
  });
}
