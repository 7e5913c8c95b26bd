import * as z from 'zod/mini';
import {
  cylinder,
  listOf,
  numberFrom,
  pushrodLength,
  text,
  valveId,
  valveKind,
  wholeFrom,
} from './basics';
import { camShape, walkShape } from './cam';

/** Lengths, mm; what is possible among them is setUpProblems' matter. */
const mm = numberFrom(-1000, 1000);

const engine = z.strictObject({
  layout: z.enum(['inline', 'V', 'flat', 'other']),
  cylinders: wholeFrom(1, 12),
  firingOrder: listOf(cylinder, 12),
  firingAnglesDeg: z.exactOptional(listOf(numberFrom(0, 720), 12)),
  numbering: z.enum(['in line', 'by bank', 'alternating', 'typed']),
  banks: listOf(listOf(cylinder, 12), 12),
  runningDirection: z.enum(['clockwise', 'anticlockwise']),
  seenFrom: z.enum(['front', 'rear']),
});

const adjuster = z.strictObject({
  kind: z.enum(['pivot', 'pushrod-end screw', 'valve-end screw']),
  pitchMm: mm,
  rockerRatio: numberFrom(0, 100),
  leanDeg: numberFrom(-360, 360),
  measuredTravelPerQuarterMm: z.exactOptional(mm),
});

const valveWindow = z.strictObject({
  lifter: z.enum([
    'long-travel hydraulic roller',
    'standard-travel hydraulic roller',
    'short-travel hydraulic roller',
    'hydraulic flat tappet',
  ]),
  plungerTravelMm: mm,
  keepOutTopMm: mm,
  keepOutBottomMm: mm,
  usableMinMm: mm,
  usableMaxMm: mm,
  preferredMinMm: mm,
  preferredMaxMm: mm,
});

const valveGroup = z.strictObject({
  id: text(200),
  name: text(2000),
  window: valveWindow,
  members: z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('all') }),
    z.strictObject({ kind: z.literal('valve'), valve: valveKind }),
    z.strictObject({ kind: z.literal('bank'), bank: wholeFrom(0, 11) }),
    z.strictObject({ kind: z.literal('cylinders'), cylinders: listOf(cylinder, 12) }),
  ]),
});

const calling = z.discriminatedUnion('way', [
  z.strictObject({ way: z.literal('quarters') }),
  z.strictObject({ way: z.literal('turns') }),
  z.strictObject({ way: z.literal('strokes'), degrees: z.literal([30, 45, 60, 90]) }),
]);

const convention = z.enum(['tip to tip', 'full ball']);

const measuredTravel = z.strictObject({
  perQuarterMm: mm,
  uMm: mm,
  basis: z.enum(['geometry', 'measured', 'dial readings', 'two test lengths']),
});

const pushrodEnd = z.strictObject({ ballMm: mm, holeMm: mm });

const buying = z.strictObject({
  offer: z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('grid'), stepMm: mm, offsetMm: mm }),
    z.strictObject({
      kind: z.literal('stock'),
      lines: listOf(z.strictObject({ lengthMm: mm, quantity: wholeFrom(0, 10_000) }), 200),
    }),
  ]),
  convention,
  spares: wholeFrom(0, 100),
  ends: z.nullable(z.readonly(z.tuple([pushrodEnd, pushrodEnd]))),
});

export const setUpShape = z.strictObject({
  name: text(2000),
  engine: z.nullable(engine),
  scope: listOf(valveId, 24),
  adjuster: z.nullable(adjuster),
  rockers: z.enum(['bolt-down', 'adjustable']),
  groups: listOf(valveGroup, 50),
  calling,
  callsLastOnly: z.boolean(),
  asksLanding: z.boolean(),
  clock: z.enum(['mark', 'off']),
  hands: z.enum(['alone', 'with helper']),
  testPushrod: z.nullable(pushrodLength),
  zeroFeel: z.exactOptional(z.enum(['up-and-down play', 'spinning'])),
  measuredTravel: z.exactOptional(measuredTravel),
  checking: z.exactOptional(z.strictObject({ closedMm: mm, perTurnMm: mm, convention })),
  buying: z.exactOptional(buying),
  cam: z.exactOptional(camShape),
  walk: z.exactOptional(walkShape),
});
