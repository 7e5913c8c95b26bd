import type { Calling, SetUp } from '#counting';
import {
  type LengthConvention,
  type Offer,
  type PushrodEnds,
  type ValveGroup,
  valvesOf,
} from '#valvetrain';
import {
  allValves,
  countNow,
  eightCylinders,
  engineOf,
  exhaust,
  intake,
  longTravel,
} from '../samples';
import type { Random } from './random';

const eight = engineOf(1, 8, 4, 3, 6, 5, 7, 2);
const four = engineOf(1, 3, 4, 2);
const one = engineOf(1);

const perKind: readonly ValveGroup[] = [
  { id: 'in', name: 'intakes', window: longTravel, members: { kind: 'valve', valve: 'intake' } },
  { id: 'ex', name: 'exhausts', window: longTravel, members: { kind: 'valve', valve: 'exhaust' } },
];

/** A set-up that can be used: whole engines and parts of one, every way of calling. */
export function anySetUp(random: Random): SetUp {
  if (random.chance(0.08)) return { ...countNow, calling: anyCalling(random) };
  const engine = random.pick([eight, four, four, one]);
  const scope = random.pick([
    valvesOf(engine),
    valvesOf(engine),
    [intake(1), exhaust(1)],
    [exhaust(1)],
    valvesOf(engine).filter(({ valve }) => valve === 'intake'),
  ]);
  return {
    ...eightCylinders,
    name: `job ${random.whole(1000)}`,
    engine,
    scope,
    adjuster: random.chance(0.1)
      ? null
      : { kind: 'pivot', pitchMm: 1.25, rockerRatio: random.pick([1.5, 1.6, 1.7]), leanDeg: 0 },
    groups: random.pick([[allValves], perKind, []]),
    calling: anyCalling(random),
    callsLastOnly: random.chance(0.2),
    asksLanding: random.chance(0.75),
    clock: random.pick(['mark', 'mark', 'off']),
    hands: random.pick(['alone', 'with helper']),
    testPushrod: random.pick([eightCylinders.testPushrod, null]),
    ...anyMore(random),
  };
}

/** A set-up that must be refused. */
export function badSetUp(random: Random): SetUp {
  const good = anySetUp(random);
  return random.pick([
    { ...good, engine: four, scope: [] },
    { ...good, engine: four, scope: [exhaust(9)] },
    { ...good, adjuster: { kind: 'pivot', pitchMm: 0, rockerRatio: 1.7, leanDeg: 0 } },
    { ...good, checking: { closedMm: 0, perTurnMm: 1.27, convention: 'full ball' } },
    { ...good, testPushrod: { mm: Number.NaN, convention: 'tip to tip' } },
    { ...good, groups: [{ ...allValves, window: { ...longTravel, usableMinMm: 9 } }] },
  ]);
}

/** What a set-up may say besides, each now and then. */
function anyMore(random: Random): Partial<SetUp> {
  return {
    ...(random.chance(0.3) ? { zeroFeel: 'spinning' as const } : {}),
    ...(random.chance(0.2)
      ? {
          calling: { way: 'turns' as const },
          checking: { closedMm: 180, perTurnMm: 1.27, convention: 'full ball' as const },
        }
      : {}),
    ...(random.chance(0.3)
      ? {
          buying: {
            offer: random.pick<Offer>([
              { kind: 'grid', stepMm: 1.27, offsetMm: 0 },
              { kind: 'stock', lines: [{ lengthMm: 203.2, quantity: 3 }] },
            ]),
            convention: random.pick<LengthConvention>(['tip to tip', 'full ball']),
            spares: 1,
            ends: random.pick<PushrodEnds | null>([
              null,
              [
                { ballMm: 8, holeMm: 2.5 },
                { ballMm: 8, holeMm: 2.5 },
              ],
            ]),
          },
        }
      : {}),
  };
}

function anyCalling(random: Random): Calling {
  return random.pick<Calling>([
    { way: 'quarters' },
    { way: 'quarters' },
    { way: 'turns' },
    { way: 'strokes', degrees: random.pick([30, 45, 60, 90]) },
  ]);
}
