import { type Calling, type SetUp, usualWalk, type WalkChoice } from '#counting';
import {
  type CamCard,
  companion,
  type Engine,
  eventsFromLobes,
  type LengthConvention,
  type Offer,
  type PushrodEnds,
  type ValveGroup,
  valvesOf,
  walkMethods,
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
/** A V6 whose cranks are shared by pairs 90° apart. */
const odd: Engine = {
  ...engineOf(1, 6, 5, 4, 3, 2),
  firingAnglesDeg: [0, 90, 240, 330, 480, 570],
};

const perKind: readonly ValveGroup[] = [
  { id: 'in', name: 'intakes', window: longTravel, members: { kind: 'valve', valve: 'intake' } },
  { id: 'ex', name: 'exhausts', window: longTravel, members: { kind: 'valve', valve: 'exhaust' } },
];

/** A set-up that can be used: whole engines and parts of one, every way of calling. */
export function anySetUp(random: Random): SetUp {
  if (random.chance(0.08)) return { ...countNow, calling: anyCalling(random) };
  const engine = random.pick([eight, four, four, one, odd]);
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
    ...anyWalk(random, engine),
  };
}

/** A set-up that must be refused. */
export function badSetUp(random: Random): SetUp {
  const good = anySetUp(random);
  return random.pick([
    { ...good, engine: four, scope: [] },
    { ...good, engine: four, scope: [exhaust(9)] },
    { ...good, engine: four, scope: [exhaust(1)], walk: { ...usualWalk, marginDeg: 300 } },
    {
      ...good,
      cam: { form: 'durations', lobes: { ...known, intakeDurationDeg: 420 }, statedAt: 'seat' },
    },
    { ...good, adjuster: { kind: 'pivot', pitchMm: 0, rockerRatio: 1.7, leanDeg: 0 } },
    { ...good, checking: { closedMm: 0, perTurnMm: 1.27, convention: 'full ball' } },
    { ...good, testPushrod: { mm: Number.NaN, convention: 'tip to tip' } },
    { ...good, groups: [{ ...allValves, window: { ...longTravel, usableMinMm: 9 } }] },
  ]);
}

const known = {
  intakeDurationDeg: 280,
  exhaustDurationDeg: 284,
  lobeSeparationDeg: 110,
  intakeCentrelineDeg: 106,
};

/** A cam card and a way to walk the crank; half the time neither is said. */
function anyWalk(random: Random, engine: Engine): Partial<SetUp> {
  if (random.chance(0.5)) return {};
  const paired = companion(engine, 1) !== undefined;
  const method = walkMethods[random.whole(walkMethods.length)] ?? 'firing order';
  return {
    cam: random.pick<CamCard>([
      { form: 'not known' },
      { form: 'durations', lobes: known, statedAt: 'seat' },
      { form: 'durations', lobes: { ...known, intakeDurationDeg: 230 }, statedAt: '0.050 in' },
      { form: 'events', events: eventsFromLobes(known), statedAt: 'seat' },
    ]),
    walk: {
      method: method === 'companion' && !paired ? 'firing order' : method,
      marginDeg: random.pick([15, 5, 40]),
      at: random.pick<WalkChoice['at']>(['TDCs', 'any angle']),
      prefer: random.pick<WalkChoice['prefer']>(['most margin', 'pistons away from TDC']),
    },
  };
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
