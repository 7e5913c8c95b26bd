import type { EarInput } from './earInput';
import { reduceEar } from './earReducer';
import { type EarEffect, type EarState, shutEar } from './earState';

/** The ear's own log: where it started, and what happened since. Plain data. */
export interface EarLog {
  readonly from: EarState;
  readonly inputs: readonly EarInput[];
}

/** A log that forgets its oldest part, a part at a time. */
export interface RollingLog {
  readonly older: EarLog | null;
  readonly newest: EarLog;
}

/** Inputs in one part: between one and two parts are kept. */
export const PART_OF_LOG = 2000;

/** An empty log. */
export const noLog: RollingLog = { older: null, newest: { from: shutEar, inputs: [] } };

/** The log with one more input, which came to an ear in this state. */
export function logged(
  { older, newest }: RollingLog,
  before: EarState,
  input: EarInput,
): RollingLog {
  return newest.inputs.length < PART_OF_LOG
    ? { older, newest: { ...newest, inputs: [...newest.inputs, input] } }
    : { older: newest, newest: { from: before, inputs: [input] } };
}

/** All that is kept, as one log. */
export function wholeLog({ older, newest }: RollingLog): EarLog {
  if (older === null) return newest;
  return { from: older.from, inputs: [...older.inputs, ...newest.inputs] };
}

/** What the ear came to and all it did, from its log alone. */
export function replayEar({ from, inputs }: EarLog): {
  readonly state: EarState;
  readonly effects: readonly EarEffect[];
} {
  let state = from;
  const effects: EarEffect[] = [];
  for (const input of inputs) {
    const outcome = reduceEar(state, input);
    state = outcome.state;
    effects.push(...outcome.effects);
  }
  return { state, effects };
}
