import type { JobEvent } from '#counting';
import { lift, type Unliftable } from './lift';

/** Why a log may be looked at but not written, and from which event on it can't be read. */
export interface ReadOnly {
  readonly why: Unliftable | 'missing event';
  readonly seq: number;
}

/** A job's log as read. */
export interface KeptLog {
  /** In order of seq, lifted to the newest shapes, up to the first that can't be read. */
  readonly events: readonly JobEvent[];
  /** The log goes on in a way this version can't read: it must not be written. */
  readonly newer: boolean;
  readonly readOnly: ReadOnly | null;
}

/** Reads stored rows, given in order of seq, as a log. */
export function keptLogOf(rows: readonly unknown[]): KeptLog {
  const events: JobEvent[] = [];
  for (const row of rows) {
    const seq = events.length + 1;
    const lifted = lift(row);
    if (!lifted.ok) return stopped(events, { why: lifted.why, seq });
    if (lifted.event.seq !== seq) return stopped(events, { why: 'missing event', seq });
    events.push(lifted.event);
  }
  return { events, newer: false, readOnly: null };
}

function stopped(events: readonly JobEvent[], readOnly: ReadOnly): KeptLog {
  return { events, newer: true, readOnly };
}
