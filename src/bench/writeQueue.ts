import type { Cancel, Clock } from '#clock';
import type { JobEvent } from '#counting';
import { type KeepFailure, keepFailure } from './ports';

/** How long a write may take before it is an alarm, ms (C10). */
export const ALARM_AFTER_MS = 1500;
/** Pause before a failed write is tried again, ms. */
export const RETRY_AFTER_MS = 2000;

export interface WriteQueueParts {
  readonly clock: Clock;
  append(events: readonly JobEvent[]): Promise<void>;
  /** The job's whole log as it is held in memory, what waits included. */
  whole(): readonly JobEvent[];
  /** The log is on disk through this seq. */
  onKept(seq: number): void;
  onAlarm(why: 'slow' | 'failed' | 'full'): void;
  /** Everything that waited is on disk again. */
  onRecovered(): void;
  /** Another window wrote first, or a newer version of the app has the logs: nothing more is written. */
  onConflict(): void;
  onSuperseded(): void;
}

export interface WriteQueue {
  add(events: readonly JobEvent[]): void;
  /** The disk lost the log: all of it is written again, now. */
  rewrite(): void;
  /** The job is closed: what waits is offered to the disk a last time, and no more is told of it. */
  handOver(): void;
  /** How many events wait for the disk. */
  waiting(): number;
  stop(): void;
}

/**
 * The one ordered queue of writes. What arrives while a write is under way goes together in the
 * next one. A failed write stays at the head and is tried again, so nothing overtakes it; after one
 * that failed for no stated reason the whole log is offered, since the log before it may be gone too.
 */
export function createWriteQueue(parts: WriteQueueParts): WriteQueue {
  let waiting: JobEvent[] = [];
  let writing = false;
  let stopped = false;
  let alarmed = false;
  let offerWhole = false;
  /** The disk lost the log while a write was under way, which may have come before or after. */
  let lostSince = false;
  let cancelAlarm: Cancel | null = null;
  let cancelRetry: Cancel | null = null;

  function alarm(why: 'slow' | 'failed' | 'full'): void {
    if (alarmed || stopped) return;
    alarmed = true;
    parts.onAlarm(why);
  }

  function watch(): void {
    cancelAlarm ??= parts.clock.after(ALARM_AFTER_MS, () => alarm('slow'));
  }

  function unwatch(): void {
    cancelAlarm?.();
    cancelAlarm = null;
  }

  async function write(): Promise<void> {
    if (writing || stopped || cancelRetry !== null) return;
    if (waiting.length === 0 && !offerWhole) return;
    writing = true;
    const batch = offerWhole ? [...parts.whole()] : waiting;
    lostSince = false;
    watch();
    try {
      await parts.append(batch);
      if (!lostSince) {
        const through = batch.at(-1)?.seq ?? 0;
        waiting = waiting.filter(({ seq }) => seq > through);
        offerWhole = false;
        kept(through);
      }
    } catch (error) {
      failed(keepFailure(error));
    } finally {
      writing = false;
    }
    await write();
  }

  function kept(through: number): void {
    if (stopped) return;
    unwatch();
    parts.onKept(through);
    if (waiting.length > 0 || offerWhole) watch();
    else if (alarmed) {
      alarmed = false;
      parts.onRecovered();
    }
  }

  function failed(why: KeepFailure): void {
    if (stopped) return;
    unwatch();
    if (why === 'conflict' || why === 'superseded') {
      stopped = true;
      if (why === 'conflict') parts.onConflict();
      else parts.onSuperseded();
      return;
    }
    alarm(why);
    offerWhole ||= why === 'failed';
    cancelRetry = parts.clock.after(RETRY_AFTER_MS, () => {
      cancelRetry = null;
      void write();
    });
  }

  return {
    add(events) {
      waiting = [...waiting, ...events];
      void write();
    },
    rewrite() {
      offerWhole = true;
      lostSince = true;
      alarm('failed');
      void write();
    },
    handOver() {
      if (stopped || waiting.length === 0) return;
      void parts.append(waiting).catch(() => undefined);
    },
    waiting: () => waiting.length,
    stop() {
      stopped = true;
      unwatch();
      cancelRetry?.();
    },
  };
}
