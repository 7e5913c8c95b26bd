import type { JobEvent } from '#counting';
import { isEventType } from './eventTypes';

/** An event as it lies on disk or in a file: its envelope is known, the rest is not yet. */
export interface StoredEvent {
  readonly jobId: string;
  readonly seq: number;
  readonly v: number;
  readonly type: string;
  readonly at: number;
  readonly by: string;
}

/** Turns an event of one version into the next version's shape. Written once, then left alone. */
export type Lifter = (old: StoredEvent) => StoredEvent;

/** Why an event can't be taken in by this version. */
export type Unliftable = 'newer event' | 'unknown event' | 'damaged event';

export type Lifted =
  | { readonly ok: true; readonly event: JobEvent }
  | { readonly ok: false; readonly why: Unliftable };

/** What takes version 1 to 2, 2 to 3 and so on. One fewer than EVENT_VERSION. */
export const lifters: readonly Lifter[] = [];

/**
 * Lifts one stored event to the newest shape. Checks the envelope only: what is on this device's
 * disk was written by `append`; what comes from a file is held to its whole shape afterwards.
 */
export function lift(stored: unknown, steps: readonly Lifter[] = lifters): Lifted {
  if (!isStoredEvent(stored)) return { ok: false, why: 'damaged event' };
  if (stored.v > steps.length + 1) return { ok: false, why: 'newer event' };
  const lifted = liftedBy(steps.slice(stored.v - 1), stored);
  if (lifted === null) return { ok: false, why: 'damaged event' };
  if (!isNewest(lifted, steps.length + 1)) return { ok: false, why: 'unknown event' };
  return { ok: true, event: lifted };
}

/** Null when a lifter stumbled over what it was given. */
function liftedBy(steps: readonly Lifter[], stored: StoredEvent): StoredEvent | null {
  try {
    return steps.reduce((event, step) => step(event), stored);
  } catch {
    return null;
  }
}

function isNewest(event: StoredEvent, newest: number): event is StoredEvent & JobEvent {
  return event.v === newest && isEventType(event.type);
}

/** Whether it has an event's envelope. */
export function isStoredEvent(value: unknown): value is StoredEvent {
  return (
    typeof value === 'object' &&
    value !== null &&
    hasText(value, 'jobId') &&
    hasText(value, 'type') &&
    hasText(value, 'by') &&
    hasWhole(value, 'seq') &&
    hasWhole(value, 'v') &&
    'at' in value &&
    Number.isFinite(value.at)
  );
}

function hasText(value: object, key: string): boolean {
  return typeof Reflect.get(value, key) === 'string';
}

/** A whole number from 1. */
function hasWhole(value: object, key: string): boolean {
  const number: unknown = Reflect.get(value, key);
  return Number.isSafeInteger(number) && Number(number) >= 1;
}
