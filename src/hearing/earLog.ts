import type { EarInput } from './earInput';
import { reduceEar } from './earReducer';
import { type EarEffect, type EarState, shutEar } from './earState';

/** The ear's own log: where it started, and what happened since. Plain data. */
export interface EarLog {
  readonly from: EarState;
  readonly inputs: readonly EarInput[];
}

/** Inputs that are kept; older ones are folded into where the log starts. */
export const LONGEST_LOG = 4000;

/** An empty log. */
export const noLog: EarLog = { from: shutEar, inputs: [] };

/** The log with one more input. */
export function logged({ from, inputs }: EarLog, input: EarInput): EarLog {
  if (inputs.length < LONGEST_LOG) return { from, inputs: [...inputs, input] };
  const [oldest, ...rest] = inputs;
  if (oldest === undefined) return { from, inputs: [input] };
  return { from: reduceEar(from, oldest).state, inputs: [...rest, input] };
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
