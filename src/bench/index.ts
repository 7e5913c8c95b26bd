/**
 * The bench: one open job. A queue of commands; each is decided, shown and ticked at once, kept in
 * order, and said once it is kept. Knows counting; everything else (the log on disk, the mouth, the
 * clock) comes through ports declared here and handed in by main.
 */

export { type Bench, type BenchParts, createBench } from './bench';
export type { Access, BenchState } from './benchState';
export { benchFact } from './facts';
export {
  type Keeper,
  type KeepFailure,
  keepFailure,
  type ReadLog,
  type Voice,
  type WriterClaim,
} from './ports';
export { ALARM_AFTER_MS, createWriteQueue, RETRY_AFTER_MS, type WriteQueue } from './writeQueue';
