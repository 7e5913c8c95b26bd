import type { Meaning } from './keymap';

/** Names what is to be said now; the words themselves are data elsewhere. */
export type LearnWord =
  | 'learn: press once'
  | 'learn: press and hold'
  | 'learn: hold longer'
  | 'learn: let go'
  | 'learn: press once more'
  | 'learn: different keys, press once'
  | 'learn: cannot be held, press once'
  | 'learn: done'
  | 'learn: done, a key'
  | 'learn: done, listen'
  | 'learn: done, taps only';

/** A learned key or pedal. */
export interface Learned {
  /** One code, or two that a pedal sends in turn. */
  readonly codes: readonly string[];
  /** False when letting go is never told, or told at once however long it is held. */
  readonly sendsKeyUp: boolean;
  /** Sentences: meanings the codes would lose. */
  readonly problems: readonly string[];
}

/** Between presses. */
export interface SeenStep {
  readonly step: 'first press seen';
  /** The code of each press so far, in order. */
  readonly seen: readonly string[];
  readonly edgeAt: number;
  /** What a held press has shown; null until one was held. */
  readonly sendsKeyUp: boolean | null;
}

/** Down for the press that is to be held. */
export interface HeldStep {
  readonly step: 'held';
  readonly seen: readonly string[];
  readonly code: string;
  readonly downAt: number;
  /** The last sign that the key is still down. */
  readonly seenAt: number;
  /** Set while a key-up that came at once waits to see whether the contact only bounced. */
  readonly upAt: number | null;
}

type Step =
  | { readonly step: 'waiting' }
  | SeenStep
  | HeldStep
  | { readonly step: 'done'; readonly learned: Learned };

/** How far the learning is. Plain data. */
export type LearnState = Step & {
  /** What the key is to mean. A pedal or a listening key is asked to be held once. */
  readonly target: Meaning;
  readonly word: LearnWord;
  /** A sentence about the key just pressed, when it can't be used. */
  readonly problem: string | null;
};

/** Starts learning: waits for the first press. */
export function startLearning(target: Meaning, word: LearnWord = 'learn: press once'): LearnState {
  return { target, step: 'waiting', word, problem: null };
}
