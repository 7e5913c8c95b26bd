import type { Announcement, JobEvent } from '#counting';

/** Why a write did not hold: the disk is full, another window wrote first, or anything else. */
export type KeepFailure = 'full' | 'conflict' | 'failed';

/** Thrown by a keeper whose write did not hold. */
export class KeepError extends Error {
  override readonly name = 'KeepError';
  constructor(
    readonly failure: KeepFailure,
    options?: ErrorOptions,
  ) {
    super(`The log was not kept: ${failure}.`, options);
  }
}

/** The log of one job on this device. */
export interface Keeper {
  /** Every event of the job in order; empty for an unknown job. Rejects when the device can't be read. */
  read(jobId: string): Promise<readonly JobEvent[]>;
  /** Resolves once the events are on disk, strictly; all of them or none. Rejects with KeepError. */
  append(events: readonly JobEvent[]): Promise<void>;
  /**
   * Asks to be the job's one writer. `onLost` is called when another window takes over.
   * Resolves to null when another window is writing.
   */
  claim(jobId: string, onLost: () => void): Promise<{ release(): void } | null>;
}

/** The mouth: ticks at once, words when they may be said, captions always. */
export interface Voice {
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
