import * as z from 'zod/mini';
import type { JobEvent } from '#counting';

/** A count, as counting brands it. */
export type Count48 = (JobEvent & { type: 'counted' })['to48'];

/** Forty whole turns, the most that can be counted, and one more that a question may offer, in 48ths. */
const MOST_48 = 41 * 48;

export const count48 = z.custom<Count48>(
  (value) => Number.isSafeInteger(value) && Number(value) >= 0 && Number(value) <= MOST_48,
);

export const text = (most: number) => z.string().check(z.maxLength(most));
export const wholeFrom = (least: number, most: number) => z.int().check(z.gte(least), z.lte(most));
export const numberFrom = (least: number, most: number) =>
  z.number().check(z.gte(least), z.lte(most));
export const listOf = <T extends z.core.$ZodType>(item: T, most: number) =>
  z.readonly(z.array(item).check(z.maxLength(most)));

export const seq = wholeFrom(1, Number.MAX_SAFE_INTEGER);
/** To the end of the year 9999, ms since 1970. */
export const wallClock = numberFrom(0, 253_402_300_799_999);
export const cylinder = wholeFrom(1, 12);
export const valveKind = z.enum(['intake', 'exhaust']);
export const valveId = z.strictObject({ cylinder, valve: valveKind });

export const pushrodLength = z.strictObject({
  mm: numberFrom(0, 10_000),
  convention: z.enum(['tip to tip', 'full ball']),
});
