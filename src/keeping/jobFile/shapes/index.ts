import * as z from 'zod/mini';
import type { JobEvent } from '#counting';
import { eventShape } from './event';

/**
 * Whether a value has the whole shape of an event of the newest version, and nothing beside it.
 * Apart from the rest of the room because it brings the shape checker with it: loaded with import().
 */
export function isJobEvent(value: unknown): value is JobEvent {
  return z.safeParse(eventShape, value).success;
}
