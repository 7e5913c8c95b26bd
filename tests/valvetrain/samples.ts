import type { Adjuster, Engine, EngineInput, Window } from '#valvetrain';
import { makeEngine } from '#valvetrain';

/** Millimetres in one thou, worked out here and not taken from the code under test. */
export const THOU = 25.4 / 1000;

/** An adjuster without a problem: M8 × 1.25 bolt, rocker 1.5, no lean. */
export function adjuster(changes: Partial<Adjuster> = {}): Adjuster {
  return { kind: 'pivot', pitchMm: 1.25, rockerRatio: 1.5, leanDeg: 0, ...changes };
}

/** A window without a problem, in thou: travel 200, keep-outs 20, usable 75-110, preferred 80-100. */
export function windowInThou(changes: Partial<Record<keyof typeof inThou, number>> = {}): Window {
  const thou = { ...inThou, ...changes };
  return {
    lifter: 'long-travel hydraulic roller',
    plungerTravelMm: thou.travel * THOU,
    keepOutTopMm: thou.top * THOU,
    keepOutBottomMm: thou.bottom * THOU,
    usableMinMm: thou.min * THOU,
    usableMaxMm: thou.max * THOU,
    preferredMinMm: thou.preferredMin * THOU,
    preferredMaxMm: thou.preferredMax * THOU,
  };
}

const inThou = {
  travel: 200,
  top: 20,
  bottom: 20,
  min: 75,
  max: 110,
  preferredMin: 80,
  preferredMax: 100,
};

/** An engine from its firing order, alternating V unless said otherwise. */
export function engine(firingOrder: readonly number[], changes: Partial<EngineInput> = {}): Engine {
  return makeEngine({
    layout: 'V',
    cylinders: firingOrder.length,
    firingOrder,
    numbering: 'alternating',
    runningDirection: 'clockwise',
    seenFrom: 'front',
    ...changes,
  });
}
