import type { Announcement, JobEvent } from '#counting';

/**
 * Why a write did not hold: the disk is full, another window wrote first, a newer version of the app
 * has the logs, or anything else.
 */
export type KeepFailure = 'full' | 'conflict' | 'superseded' | 'failed';

/** What a keeper's rejection says of itself, in a property named `failure`. */
export function keepFailure(error: unknown): KeepFailure {
  const failure =
    typeof error === 'object' && error !== null && 'failure' in error ? error.failure : null;
  const known: readonly KeepFailure[] = ['full', 'conflict', 'superseded'];
  return known.find((one) => one === failure) ?? 'failed';
}

/** A job's log as read from the device. */
export interface ReadLog {
  /** In order of seq, lifted to the newest shapes; empty for an unknown job. */
  readonly events: readonly JobEvent[];
  /** The log holds events of a newer version: it may be looked at, not written. */
  readonly newer: boolean;
  /** On disk through this seq; left out, all of it is. */
  readonly keptThrough?: number;
}

/** The right to be a job's one writer. */
export interface WriterClaim {
  release(): void;
}

/** The logs on this device. */
export interface Keeper {
  /** Rejects when the device can't be read. */
  read(jobId: string): Promise<ReadLog>;
  /** Resolves once the events are on disk, strictly; all of them or none. Rejects with a `failure`. */
  append(events: readonly JobEvent[]): Promise<void>;
  /** Asks to be the job's one writer; null when another window is. `onLost`: another took over. */
  claim(jobId: string, onLost: () => void): Promise<WriterClaim | null>;
  /** Becomes the one writer whoever was. */
  takeOver(jobId: string, onLost: () => void): Promise<WriterClaim>;
  /** Calls back when another window has added to the job's log. Returns how to stop. */
  follow(jobId: string, onChange: () => void): () => void;
  /**
   * Calls back when the logs are gone from under the app ('emptied'), or a newer version of the app
   * has them and nothing more is written here ('superseded'). Returns how to stop.
   */
  watch(onTrouble: (what: 'emptied' | 'superseded') => void): () => void;
}

/** The mouth: ticks at once, words when they may be said, captions always. */
export interface Voice {
  /** A gesture of the builder's: sound may start. */
  unlock(): void;
  announce(announcements: readonly Announcement[]): void;
  /** The log is kept through this seq: words that waited for it may go. */
  kept(seq: number): void;
  /** A standing alarm: words no longer wait, and every result line says it is not kept. */
  alarm(on: boolean): void;
  /** A press or a fresh command: cuts off the line being said. */
  cut(): void;
  /** Drops everything waiting and being said. */
  hush(): void;
}
