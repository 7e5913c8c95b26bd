import type { Announcement, JobState } from '#counting';

/** Whether this window may write the job's log, and if not, why. */
export type Access =
  | 'closed'
  | 'opening'
  | 'writer'
  | 'other window'
  | 'newer log'
  | 'newer app'
  | 'unreadable'
  | 'unknown';

/** What the screens see of the one open job. */
export interface BenchState {
  readonly jobId: string | null;
  readonly access: Access;
  readonly job: JobState;
  /** The log is on disk through this seq (C10). */
  readonly keptThrough: number;
  /** After opening or reloading: the next press wakes the bench and does not count (C13). */
  readonly resting: boolean;
  /** When it was woken, ms since 1970; what was said before that is of another sitting, or another job. */
  readonly awakeSince: number | null;
  /** A standing alarm: what was counted since is held in memory and not yet on disk. */
  readonly alarm: 'slow' | 'failed' | 'full' | null;
  /** What the last command had to tell, for the screens. */
  readonly told: readonly Announcement[];
}
