import type { SetUp } from '#counting';
import type { Engine, ValveGroup, ValveId, Window } from '#valvetrain';
import { makeEngine, valvesOf } from '#valvetrain';

/** Millimetres in one thou, worked out here and not taken from the code under test. */
export const THOU = 25.4 / 1000;

/** Plunger travel 200 thou, usable 75 to 110, preferred 80 to 100, keep-outs 20. */
export const longTravel: Window = {
  lifter: 'long-travel hydraulic roller',
  plungerTravelMm: 200 * THOU,
  keepOutTopMm: 20 * THOU,
  keepOutBottomMm: 20 * THOU,
  usableMinMm: 75 * THOU,
  usableMaxMm: 110 * THOU,
  preferredMinMm: 80 * THOU,
  preferredMaxMm: 100 * THOU,
};

export function engineOf(...firingOrder: readonly number[]): Engine {
  return makeEngine({
    layout: 'other',
    cylinders: firingOrder.length,
    firingOrder,
    numbering: 'typed',
    banks: [firingOrder.toSorted((a, b) => a - b)],
    runningDirection: 'clockwise',
    seenFrom: 'front',
  });
}

export const allValves: ValveGroup = {
  id: 'all',
  name: 'all valves',
  window: longTravel,
  members: { kind: 'all' },
};

const eight = engineOf(1, 8, 4, 3, 6, 5, 7, 2);

/** An eight-cylinder job, bolt-down rockers on M8 × 1.25 bolts, ratio 1.7, counted alone by quarters. */
export const eightCylinders: SetUp = {
  name: 'Pump engine two',
  engine: eight,
  scope: valvesOf(eight),
  adjuster: { kind: 'pivot', pitchMm: 1.25, rockerRatio: 1.7, leanDeg: 0 },
  rockers: 'bolt-down',
  groups: [allValves],
  calling: { way: 'quarters' },
  callsLastOnly: false,
  asksLanding: true,
  clock: 'mark',
  hands: 'alone',
  testPushrod: { mm: 203.2, convention: 'tip to tip' },
};

/** A job begun before anything was set up. */
export const countNow: SetUp = {
  ...eightCylinders,
  name: 'Count now',
  engine: null,
  scope: [],
  adjuster: null,
  groups: [],
  testPushrod: null,
};

export const exhaust = (cylinder: number): ValveId => ({ cylinder, valve: 'exhaust' });
export const intake = (cylinder: number): ValveId => ({ cylinder, valve: 'intake' });
