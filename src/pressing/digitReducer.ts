import type { Press } from './press';
import { SECOND_DIGIT_MS } from './timings';

/** A first digit that may still get a second. */
export interface WaitingDigit {
  readonly digit: number;
  readonly at: number;
  /** True when it was already given as a count of its own. */
  readonly taken: boolean;
}

/** The number pad after one event. */
export interface DigitOutcome {
  readonly waiting: WaitingDigit | null;
  readonly presses: readonly Press[];
}

/** Numbers past this are never called, so two digits that make one are two counts. */
const LARGEST_CALLED = 40;

function numbered(value: number): readonly Press[] {
  return [{ kind: 'number', value }];
}

function firstDigit(
  digit: number,
  at: number,
  withinStep: (value: number) => boolean,
): DigitOutcome {
  const taken = withinStep(digit);
  return { waiting: { digit, at, taken }, presses: taken ? numbered(digit) : [] };
}

/**
 * A digit key goes down. Call {@link digitTime} first, so that `waiting` is a digit less than
 * 700 ms old.
 *
 * A digit that waits takes any second digit. One already taken as a count takes a nought (10, to be
 * asked back, is better than a zero nobody meant), but a digit that is itself the next count is a
 * count, and so is one that would make a number nobody calls: 9 then 1, 0 is nine, then ten.
 */
export function digitDown(
  waiting: WaitingDigit | null,
  digit: number,
  at: number,
  withinStep: (value: number) => boolean,
): DigitOutcome {
  if (waiting === null) {
    return digit === 0
      ? { waiting: null, presses: [{ kind: 'zero' }] }
      : firstDigit(digit, at, withinStep);
  }
  const both = waiting.digit * 10 + digit;
  const countOfItsOwn =
    waiting.taken && digit !== 0 && (withinStep(digit) || both > LARGEST_CALLED);
  return countOfItsOwn
    ? firstDigit(digit, at, withinStep)
    : { waiting: null, presses: numbered(both) };
}

/** Ends the wait: an untaken digit is given as it stands. */
export function settleDigit(waiting: WaitingDigit | null): DigitOutcome {
  return {
    waiting: null,
    presses: waiting === null || waiting.taken ? [] : numbered(waiting.digit),
  };
}

/** Time passes: after 700 ms a digit stands alone. */
export function digitTime(waiting: WaitingDigit | null, at: number): DigitOutcome {
  return waiting !== null && at - waiting.at >= SECOND_DIGIT_MS
    ? settleDigit(waiting)
    : { waiting, presses: [] };
}

/** When a waiting digit is given by itself; a taken one has nothing left to give. */
export function digitWakeAt(waiting: WaitingDigit | null): number | undefined {
  return waiting === null || waiting.taken ? undefined : waiting.at + SECOND_DIGIT_MS;
}
