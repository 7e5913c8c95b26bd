/** Older than this, an event's own time is not to be believed. */
const OLDEST_MS = 5000;

/**
 * Milliseconds since a browser event happened, so that a busy page does not lengthen a hold.
 * 0 where the event's own time makes no sense.
 */
export function eventAge(event: Event): number {
  const age = performance.now() - event.timeStamp;
  return age > 0 && age < OLDEST_MS ? age : 0;
}
