import type { SetUp } from '#counting';
import { makeEngine, type ValveId, valvesOf, type Window } from '#valvetrain';

const THOU = 0.0254;

/** The long-travel window the trade notes give: usable 75 to 110 thou, preferred 80 to 100. */
export const longTravel: Window = {
  lifter: 'long-travel hydraulic roller',
  plungerTravelMm: 180 * THOU,
  keepOutTopMm: 20 * THOU,
  keepOutBottomMm: 20 * THOU,
  usableMinMm: 75 * THOU,
  usableMaxMm: 110 * THOU,
  preferredMinMm: 80 * THOU,
  preferredMaxMm: 100 * THOU,
};

const engine = makeEngine({
  layout: 'V',
  cylinders: 8,
  firingOrder: [1, 8, 4, 3, 6, 5, 7, 2],
  numbering: 'alternating',
  runningDirection: 'clockwise',
  seenFrom: 'front',
});

/** A V8 with M8 × 1.25 pivot bolts at 1.7: 19.5 thou a quarter. */
export function v8SetUp(changes: Partial<SetUp> = {}): SetUp {
  return {
    name: 'Pump 3',
    engine,
    scope: valvesOf(engine),
    adjuster: { kind: 'pivot', pitchMm: 1.25, rockerRatio: 1.7, leanDeg: 0 },
    rockers: 'bolt-down',
    groups: [{ id: 'all', name: 'All valves', window: longTravel, members: { kind: 'all' } }],
    calling: { way: 'quarters' },
    callsLastOnly: false,
    asksLanding: true,
    clock: 'mark',
    hands: 'alone',
    testPushrod: { mm: 8.15 * 25.4, convention: 'tip to tip' },
    ...changes,
  };
}

/** One cylinder, two valves of the same engine. */
export function oneCylinder(changes: Partial<SetUp> = {}): SetUp {
  const scope: ValveId[] = [
    { cylinder: 1, valve: 'exhaust' },
    { cylinder: 1, valve: 'intake' },
  ];
  return v8SetUp({ scope, ...changes });
}
