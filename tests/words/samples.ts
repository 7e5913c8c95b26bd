import type { CrankPosition, SetUp } from '#counting';
import {
  type Engine,
  engineFromPreset,
  engines,
  type ValveId,
  type ValveKind,
  valvesOf,
  type Window,
} from '#valvetrain';
import type { SayingContext, TalkLevel, Units } from '#words';

export const thou = (n: number) => (n * 25.4) / 1000;

/** Usable 75 to 110 thou, preferred 80 to 100, travel 200: an example from common practice. */
export const window: Window = {
  lifter: 'long-travel hydraulic roller',
  plungerTravelMm: thou(200),
  keepOutTopMm: thou(20),
  keepOutBottomMm: thou(20),
  usableMinMm: thou(75),
  usableMaxMm: thou(110),
  preferredMinMm: thou(80),
  preferredMaxMm: thou(100),
};

export function v8(): Engine {
  const preset = engines.find(({ firingOrder }) => firingOrder.join('-') === '1-8-4-3-6-5-7-2');
  if (preset === undefined) throw new Error('No such engine.');
  return engineFromPreset(preset, { runningDirection: 'clockwise', seenFrom: 'front' });
}

/** A V8 of the Harrow Fen workshop, all sixteen valves: M8 x 1.25 at 1.7 is 19.5 thou a quarter. */
export function setUp(change: Partial<SetUp> = {}): SetUp {
  const engine = v8();
  return {
    name: 'Harrow Fen pump engine',
    engine,
    scope: valvesOf(engine),
    adjuster: { kind: 'pivot', pitchMm: 1.25, rockerRatio: 1.7, leanDeg: 0 },
    rockers: 'bolt-down',
    groups: [{ id: 'all', name: 'All valves', window, members: { kind: 'all' } }],
    calling: { way: 'quarters' },
    callsLastOnly: false,
    asksLanding: true,
    clock: 'mark',
    hands: 'alone',
    testPushrod: { mm: thou(8150), convention: 'tip to tip' },
    ...change,
  };
}

export function context(
  level: TalkLevel,
  units: Units = 'inch',
  change: Partial<SayingContext> = {},
): SayingContext {
  const numbers = { numbers: 'shop', lengths: 'shop' } as const;
  return { level, units, ...numbers, hands: 'with helper', unkept: false, ...change };
}

export const valve = (cylinder: number, kind: ValveKind): ValveId => ({ cylinder, valve: kind });

export const position = (cylinder: number | null, angleDeg: number | null = 90): CrankPosition => ({
  angleDeg,
  cylinder,
  valves: cylinder === null ? [] : [valve(cylinder, 'exhaust'), valve(cylinder, 'intake')],
});
