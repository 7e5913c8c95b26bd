import * as z from 'zod/mini';
import { listOf, numberFrom } from './basics';

/** Crank degrees on a cam card; what is possible among them is setUpProblems' matter. */
const deg = numberFrom(-720, 720);
const statedAt = z.enum(['seat', '0.050 in', 'not known']);

const lobes = {
  intakeDurationDeg: deg,
  exhaustDurationDeg: deg,
  lobeSeparationDeg: deg,
  intakeCentrelineDeg: deg,
};

export const camShape = z.discriminatedUnion('form', [
  z.strictObject({
    form: z.literal('events'),
    events: z.strictObject({
      intakeOpensBeforeTdcDeg: deg,
      intakeClosesAfterBdcDeg: deg,
      exhaustOpensBeforeBdcDeg: deg,
      exhaustClosesAfterTdcDeg: deg,
    }),
    statedAt,
    alsoPrinted: z.exactOptional(
      z.strictObject({
        intakeDurationDeg: z.exactOptional(deg),
        exhaustDurationDeg: z.exactOptional(deg),
        lobeSeparationDeg: z.exactOptional(deg),
        intakeCentrelineDeg: z.exactOptional(deg),
      }),
    ),
  }),
  z.strictObject({ form: z.literal('durations'), lobes: z.strictObject(lobes), statedAt }),
  z.strictObject({ form: z.literal('not known') }),
]);

export const walkShape = z.strictObject({
  method: z.enum([
    'firing order',
    'fewest stops',
    'timing dots',
    'watching the valves',
    'companion',
    'exhaust opening, intake closing',
  ]),
  marginDeg: numberFrom(0, 360),
  at: z.union([z.enum(['any angle', 'TDCs']), listOf(numberFrom(0, 720), 24)]),
  prefer: z.enum(['most margin', 'pistons away from TDC']),
});
