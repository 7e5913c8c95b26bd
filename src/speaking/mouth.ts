import type { Announcement, FactKind } from '#counting';
import { noRhythm, type Rhythm } from './rhythm';

/** A line as it is offered to the mouth. The words themselves stay outside. */
export interface OfferedLine {
  readonly token: number;
  readonly kind: FactKind;
  readonly timing: Announcement['timing'];
  /** Waits until the log is kept through this seq; 0 waits for nothing. */
  readonly keptThrough: number;
  readonly perishable: boolean;
  /** Has no words at this talk level: a caption only. */
  readonly silent: boolean;
  /** The watchdog: after this long, ms, the line is over whatever the voice says. */
  readonly longestMs: number;
}

/** A line that waits or is being said. */
export interface Line extends OfferedLine {
  readonly offeredAt: number;
  /** Lines offered together, as the facts of one command are. */
  readonly batch: number;
}

/** The line being said. */
export interface Saying {
  readonly line: Line;
  readonly overAt: number;
}

/** Everything the mouth knows. Plain data. */
export interface MouthState {
  readonly waiting: readonly Line[];
  readonly saying: Saying | null;
  readonly keptThrough: number;
  readonly alarm: boolean;
  readonly rhythm: Rhythm;
  readonly batch: number;
  /** No line begins before this: the breath after the last one. */
  readonly freeAt: number;
  /** Lines offered before a press let what the press brings go first. */
  readonly cut: { readonly batch: number; readonly until: number };
}

/** What happens to the mouth; `at` is the clock's milliseconds. */
export type MouthInput = { readonly at: number } & (
  | { readonly type: 'offer'; readonly lines: readonly OfferedLine[] }
  | { readonly type: 'kept'; readonly through: number }
  | { readonly type: 'alarm'; readonly on: boolean }
  | { readonly type: 'cut' }
  | { readonly type: 'hush' }
  | { readonly type: 'started'; readonly token: number }
  | { readonly type: 'ended'; readonly token: number }
  | { readonly type: 'time' }
);

/** What is to be done, in order. */
export type MouthEffect =
  | { readonly do: 'say'; readonly line: Line }
  | { readonly do: 'stop'; readonly line: Line }
  /** A caption without a voice. */
  | { readonly do: 'show'; readonly line: Line }
  /** An instruction that is no longer fresh: never said, and its caption tells that it was not. */
  | { readonly do: 'lapse'; readonly line: Line };

/** The answer to one input. */
export interface MouthOutcome {
  readonly state: MouthState;
  readonly effects: readonly MouthEffect[];
  /** When to call again with `time`; absent when only news can change anything. */
  readonly wakeAt?: number;
}

/** Nothing said, nothing waiting, nothing kept. */
export const quietMouth: MouthState = {
  waiting: [],
  saying: null,
  keptThrough: 0,
  alarm: false,
  rhythm: noRhythm,
  batch: 0,
  freeAt: 0,
  cut: { batch: 0, until: 0 },
};
