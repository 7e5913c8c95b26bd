import { companion, type Engine, firingAngleDeg } from '../engine';
import { type Problem, refused } from '../problems';
import { type ValveId, valvesOf } from '../valves';
import { onCycle, turnOnDeg } from './cycle';
import { fewestStops, type StopWish } from './fewestStops';
import { describeProof, type Proof } from './proof';
import type { SeatTiming } from './seatTiming';
import {
  DEFAULT_MARGIN_DEG,
  type PlannedStop,
  planByCylinder,
  planByValve,
  type StopPlan,
} from './stopPlan';
import { orderProblems, stopProblems } from './stopProblems';
import { walkByOwnValves } from './walkByOwnValves';
import { stepTo, type Walk, type WalkStep, withTurns } from './walkStep';

/** The ways to walk the crank, for the builder to pick from. */
export type WalkMethod =
  | 'firing order'
  | 'fewest stops'
  | 'timing dots'
  | 'watching the valves'
  | 'companion'
  | 'exhaust opening, intake closing';

export const walkMethods: readonly WalkMethod[] = [
  'firing order',
  'fewest stops',
  'timing dots',
  'watching the valves',
  'companion',
  'exhaust opening, intake closing',
];

/** What a walk is for. `at` and `prefer` bear on the fewest stops only. */
export interface WalkWish extends StopWish {
  /** Where the crank stands, from the firing TDC of the first in order; left out when not known. */
  readonly fromDeg?: number;
}

export type WalkFinding =
  | { readonly found: true; readonly walk: Walk }
  | { readonly found: false; readonly problem: Problem };

/**
 * The steps of a walk, always in the running direction and within two turns of the crank. It begins
 * with the stop nearest ahead of where the crank stands, or where that is not known with the first of
 * its plan, whose turn is then null. Refused with a sentence: no sound firing order (but watching the
 * valves and exhaust-opening/intake-closing do without), a margin no position gives, companions asked
 * of an engine that has none.
 */
export function walkFor(
  engine: Engine,
  cam: SeatTiming,
  method: WalkMethod,
  wish: WalkWish = {},
): WalkFinding {
  const wanted = wish.marginDeg ?? DEFAULT_MARGIN_DEG;
  const valves = wish.valves ?? valvesOf(engine);
  const ownValves =
    method === 'watching the valves' || method === 'exhaust opening, intake closing';
  if (ownValves && orderProblems(engine).length > 0) {
    return { found: true, walk: walkByOwnValves(engine, cam, method, wanted, valves) };
  }
  const [problem] = [
    ...stopProblems(engine, wanted, valves),
    ...(method === 'companion' ? companionProblems(engine, valves) : []),
  ];
  if (problem !== undefined) return { found: false, problem };
  const byCylinder = () => planByCylinder(engine, cam.events, wanted, valves);
  switch (method) {
    case 'firing order':
    case 'companion':
      return walked(byCylinder(), wish.fromDeg);
    case 'watching the valves':
      return walked(byCylinder(), wish.fromDeg, watchingProof);
    case 'exhaust opening, intake closing':
      return walked(planByValve(engine, cam.events, wanted, valves), wish.fromDeg);
    case 'timing dots':
      return byDots(engine, byCylinder(), wish.fromDeg);
    case 'fewest stops': {
      const finding = fewestStops(engine, cam, wish);
      return finding.found ? walked(finding.plan, wish.fromDeg) : finding;
    }
    default:
      return unknownMethod(method);
  }
}

function walked(
  plan: StopPlan,
  fromDeg: number | undefined,
  proofOf: (stop: PlannedStop) => Proof = ({ proof }) => proof,
): WalkFinding {
  const steps = ahead(plan.stops, fromDeg).map((stop) => stepTo(stop, null, proofOf(stop)));
  return {
    found: true,
    walk: { steps: withTurns(steps, fromDeg), shortfalls: plan.shortfalls },
  };
}

function watchingProof({ firing, proof }: PlannedStop): Proof {
  return firing === null ? proof : { kind: 'watching', firing };
}

/**
 * Dots together, the cam stands at cylinder 1's overlap: its companion is to fire. From there on in
 * firing order; one turn on, the cam's dot stands at twelve and cylinder 1 is to fire. Common practice,
 * no source: the engine's own manual is to be checked.
 */
function byDots(engine: Engine, plan: StopPlan, fromDeg: number | undefined): WalkFinding {
  const crossing = engine.firingOrder.includes(1) ? 1 : (engine.firingOrder[0] ?? 1);
  const dotsDeg = onCycle(firingAngleDeg(engine, crossing) + 360);
  const proof: Proof = {
    kind: 'timing dots together',
    crossing,
    firing: companion(engine, crossing) ?? null,
  };
  const onward = ahead(plan.stops, dotsDeg).map((stop) => {
    if (stop.firing === crossing)
      return stepTo(stop, null, { kind: 'cam dot at twelve', firing: crossing });
    return stepTo(stop, null, stop.firing === proof.firing ? proof : stop.proof);
  });
  const startsThere = proof.firing !== null && onward[0]?.firing === proof.firing;
  const steps = startsThere ? onward : [landmark(dotsDeg, proof), ...onward];
  return {
    found: true,
    walk: { steps: withTurns(steps, fromDeg), shortfalls: plan.shortfalls },
  };
}

function landmark(angleDeg: number, proof: Proof & { readonly firing: number | null }): WalkStep {
  return {
    turnDeg: null,
    angleDeg,
    firing: proof.firing,
    count: [],
    margins: [],
    roomShortDeg: 0,
    roomPastDeg: 0,
    proof,
    description: describeProof(proof),
  };
}

/** The stops in the order the crank comes to them; as planned when its place is not known. */
function ahead(stops: readonly PlannedStop[], fromDeg: number | undefined): readonly PlannedStop[] {
  if (fromDeg === undefined) return stops;
  return stops.toSorted((a, b) => turnOnDeg(fromDeg, a.angleDeg) - turnOnDeg(fromDeg, b.angleDeg));
}

function companionProblems(engine: Engine, valves: readonly ValveId[]): readonly Problem[] {
  const lone = engine.firingOrder.find(
    (cylinder) =>
      companion(engine, cylinder) === undefined &&
      valves.some((valve) => valve.cylinder === cylinder),
  );
  if (lone === undefined) return [];
  return [
    refused(
      'method',
      'no companion',
      `Cylinder ${lone} of ${engine.cylinders} has no companion 360° away whose valves would cross at its firing TDC. Watch its own valves instead.`,
    ),
  ];
}

function unknownMethod(method: never): never {
  throw new RangeError(`Unknown method: ${String(method)}.`);
}
