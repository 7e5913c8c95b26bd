import type { Keymap, Meaning } from './keymap';
import { canMean, cannotMean, losses } from './keymapProblems';
import type { HeldStep, LearnState, LearnWord } from './learnState';
import { startLearning } from './learnState';
import type { PressInput } from './pressInput';
import { DEBOUNCE_MS, NEXT_STAGE_MS } from './timings';

/** One input's answer. */
export interface LearnOutcome {
  readonly state: LearnState;
  /** When to call again with `{ type: 'time' }`. */
  readonly wakeAt?: number;
  readonly consumed: boolean;
}

/** No foot lets go this soon: the device sends both edges at once, whatever the hold. */
const MOMENTARY_MS = 30;

/** Held this long, the builder is told to let go. */
const LONG_ENOUGH_MS = 1000;

/** With no sign of a held key for this long, it sends no key-up. */
const NO_KEY_UP_MS = 5000;

type KeyInput = Extract<PressInput, { type: 'down' | 'up' }>;
type Held = HeldStep & LearnState;

/**
 * Takes one key event, or time passing, towards learning a key by pressing it: once, then again and
 * held, which shows whether letting go is told. A pedal that sends two codes in turn is pressed a
 * third time, to tell it from a slip. Pure.
 */
export function learn(state: LearnState, input: PressInput, keymap: Keymap): LearnOutcome {
  // A key still held must not go on to reload or scroll the page.
  if (state.step === 'done') return { state, consumed: input.type === 'down' && input.repeat };
  const due = passTime(state, input.at, keymap, input.type === 'up');
  switch (input.type) {
    case 'time':
      return outcome(due, false);
    case 'blur':
      return outcome(startLearning(state.target), false);
    case 'up':
      return outcome(keyUp(due, input, keymap), true);
    case 'down':
      return canMean(input.code)
        ? outcome(keyDown(due, input, keymap), true)
        : outcome({ ...due, problem: cannotMean(input.code) }, false);
    default: {
      const never: never = input;
      return never;
    }
  }
}

function keyDown(state: LearnState, input: KeyInput, keymap: Keymap): LearnState {
  const { target } = state;
  const { code, at, repeat } = input;
  switch (state.step) {
    case 'waiting':
      if (repeat) return state;
      if (target !== 'pedal' && target !== 'listen') return done(state, [code], true, keymap);
      return seenStep(state, [code], at, null, 'learn: press and hold');
    case 'first press seen': {
      if (repeat || at - state.edgeAt < DEBOUNCE_MS) return state;
      const seen = [...state.seen, code];
      if (!inTurn(seen) || (target === 'listen' && code !== seen[0])) {
        return startLearning(target, 'learn: different keys, press once');
      }
      if (state.sendsKeyUp !== null && proven(seen)) {
        return state.sendsKeyUp
          ? seenStep(state, seen, at, true, state.word)
          : done(state, seen, false, keymap);
      }
      const word = 'learn: press and hold';
      return {
        target,
        step: 'held',
        word,
        problem: null,
        seen,
        code,
        downAt: at,
        seenAt: at,
        upAt: null,
      };
    }
    case 'held': {
      // A repeat or a bounce shows it is still down; a press of its own, that no key-up came.
      if (repeat || at - state.seenAt < DEBOUNCE_MS) {
        return code === state.code ? { ...state, seenAt: at, upAt: null } : state;
      }
      const judgedState = judged(state, false, state.downAt, keymap);
      return keyDown(judgedState, input, keymap);
    }
    case 'done':
      return state;
    default: {
      const never: never = state;
      return never;
    }
  }
}

function keyUp(state: LearnState, input: KeyInput, keymap: Keymap): LearnState {
  const { code, at } = input;
  if (state.step === 'first press seen') {
    if (code !== state.seen.at(-1)) return state;
    return state.sendsKeyUp === true && proven(state.seen)
      ? done(state, state.seen, true, keymap)
      : { ...state, edgeAt: at };
  }
  if (state.step !== 'held' || state.code !== code) return state;
  const heldMs = at - state.downAt;
  if (heldMs <= MOMENTARY_MS) return { ...state, upAt: at };
  if (heldMs >= NEXT_STAGE_MS) return judged(state, true, at, keymap);
  return seenStep(state, state.seen, at, null, 'learn: hold longer');
}

/** What fell due. A key coming up now is judged by its key-up, however late the timers ran. */
function passTime(state: LearnState, at: number, keymap: Keymap, comingUp: boolean): LearnState {
  if (state.step !== 'held') return state;
  if (state.upAt !== null) {
    return at - state.upAt >= DEBOUNCE_MS ? judged(state, false, state.upAt, keymap) : state;
  }
  if (!comingUp && at - state.seenAt >= NO_KEY_UP_MS) {
    return judged(state, false, state.downAt, keymap);
  }
  return at - state.downAt >= LONG_ENOUGH_MS ? { ...state, word: 'learn: let go' } : state;
}

/** A press was held, or told its end at once, or never: what that shows. */
function judged(state: Held, sendsKeyUp: boolean, edgeAt: number, keymap: Keymap): LearnState {
  if (state.target === 'listen' && !sendsKeyUp) {
    return startLearning(state.target, 'learn: cannot be held, press once');
  }
  return proven(state.seen)
    ? done(state, state.seen, sendsKeyUp, keymap)
    : seenStep(state, state.seen, edgeAt, sendsKeyUp, 'learn: press once more');
}

/** Whether the presses are all of one code, or of two strictly in turn. */
function inTurn(seen: readonly string[]): boolean {
  const [first, second] = seen;
  return seen.every((code, index) => code === (index % 2 === 0 ? first : second));
}

/** Two different codes may be a slip; a third press in turn is not. */
function proven(seen: readonly string[]): boolean {
  return seen[0] === seen[1] || seen.length > 2;
}

function seenStep(
  { target }: LearnState,
  seen: readonly string[],
  edgeAt: number,
  sendsKeyUp: boolean | null,
  word: LearnWord,
): LearnState {
  return { target, step: 'first press seen', word, problem: null, seen, edgeAt, sendsKeyUp };
}

function done(
  { target }: LearnState,
  seen: readonly string[],
  sendsKeyUp: boolean,
  keymap: Keymap,
): LearnState {
  const codes = [...new Set(seen)];
  const word = doneWord(target, sendsKeyUp);
  const learned = { codes, sendsKeyUp, problems: losses(keymap, codes, target) };
  return { target, step: 'done', word, problem: null, learned };
}

function doneWord(target: Meaning, sendsKeyUp: boolean): LearnWord {
  if (target === 'listen') return 'learn: done, listen';
  if (target !== 'pedal') return 'learn: done, a key';
  return sendsKeyUp ? 'learn: done' : 'learn: done, taps only';
}

function outcome(state: LearnState, consumed: boolean): LearnOutcome {
  const wakeAt = wakeAtOf(state);
  return wakeAt === undefined ? { state, consumed } : { state, consumed, wakeAt };
}

function wakeAtOf(state: LearnState): number | undefined {
  if (state.step !== 'held') return undefined;
  if (state.upAt !== null) return state.upAt + DEBOUNCE_MS;
  return state.word === 'learn: let go'
    ? state.seenAt + NO_KEY_UP_MS
    : Math.min(state.downAt + LONG_ENOUGH_MS, state.seenAt + NO_KEY_UP_MS);
}
