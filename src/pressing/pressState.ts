import type { WaitingDigit } from './digitReducer';
import type { KeyEdges } from './keyEdges';
import type { ListenHold } from './listenKey';
import type { Hold } from './onePedal';
import type { Press, PressCue } from './press';

/** Everything that is held or waiting. Plain data. */
export interface PressState {
  readonly hold: Hold | null;
  readonly waiting: WaitingDigit | null;
  readonly listening: ListenHold | null;
  readonly edges: KeyEdges;
}

/** The answer to one input. */
export interface PressOutcome {
  readonly state: PressState;
  /** In the order they were meant. */
  readonly presses: readonly Press[];
  readonly cues: readonly PressCue[];
  /** When to call again with `{ type: 'time' }`; absent when nothing is pending. */
  readonly wakeAt?: number;
  /** Whether the browser's own action for this key is to be prevented. */
  readonly consumed: boolean;
}

/** Nothing held, nothing waiting. */
export const initialPressState: PressState = {
  hold: null,
  waiting: null,
  listening: null,
  edges: {},
};
