import { digitDown, digitTime, digitWakeAt, settleDigit } from './digitReducer';
import { edgeDown, edgeUp, pressed, releaseAll } from './keyEdges';
import type { Keymap, Meaning } from './keymap';
import { digitOf, isDigit, meaningOf } from './keymap';
import { endListening, listenDown, listenTime, listenUp, listenWakeAt } from './listenKey';
import { dropHold, holdDown, holdTime, holdUp, holdWakeAt } from './onePedal';
import type { Press, PressCue } from './press';
import type { PressContext } from './pressContext';
import type { PressInput } from './pressInput';
import { pressOf } from './pressOf';
import type { PressOutcome, PressState } from './pressState';

/** Keys that would scroll or reload the bench away, prevented there whether they mean anything. */
const GUARDED = new Set([
  'F5',
  'Space',
  'PageUp',
  'PageDown',
  'ArrowUp',
  'ArrowDown',
  'ArrowLeft',
  'ArrowRight',
]);

interface Step {
  readonly state: PressState;
  readonly presses: readonly Press[];
  readonly cues: readonly PressCue[];
}

type KeyInput = Extract<PressInput, { type: 'down' | 'up' }>;

/**
 * Takes one key event, or time passing, and says what was pressed. Pure. Never throws: keys without
 * a meaning, key-ups without a key-down and late timers are all in order.
 */
export function reduce(state: PressState, input: PressInput, context: PressContext): PressOutcome {
  if (!context.active) return outcome(cancel(still(state)), false);
  const due = advance(state, input.at, input.type === 'up' ? input.code : null);
  switch (input.type) {
    case 'time':
      return outcome(due, false);
    case 'blur':
      return outcome(cancel(due), false);
    case 'down': {
      const meaning = meaningOf(context.keymap, input.code);
      const consumed = meaning !== null || GUARDED.has(input.code);
      if (meaning === null || input.repeat) return outcome(due, consumed);
      return outcome(keyDown(due, input, meaning, context), consumed);
    }
    case 'up': {
      const key = edgeKey(context.keymap, input.code);
      const { edges, wasDown } = edgeUp(due.state.edges, key, input.at);
      return outcome(keyUp({ ...due, state: { ...due.state, edges } }, input), wasDown);
    }
    default: {
      const never: never = input;
      return never;
    }
  }
}

/** Both codes of an alternating pedal are one key. */
function edgeKey(keymap: Keymap, code: string): string {
  return keymap.pedal.codes.includes(code) ? 'pedal' : code;
}

function still(state: PressState): Step {
  return { state, presses: [], cues: [] };
}

function then(step: Step, more: Partial<PressState>, presses: readonly Press[]): Step {
  return { ...step, state: { ...step.state, ...more }, presses: [...step.presses, ...presses] };
}

/** What fell due by `at`, for timers can be late. A pedal about to come up is judged by its key-up. */
function advance(state: PressState, at: number, comingUp: string | null): Step {
  const digit = digitTime(state.waiting, at);
  const listen = listenTime(state.listening, at);
  const endsNow = state.hold !== null && state.hold.upAt === null && state.hold.code === comingUp;
  const held = endsNow ? { hold: state.hold, presses: [], cues: [] } : holdTime(state.hold, at);
  return {
    state: {
      ...state,
      waiting: digit.waiting,
      listening: listen.listening,
      hold: held.hold,
    },
    presses: [...digit.presses, ...held.presses, ...listen.presses],
    cues: held.cues,
  };
}

function cancel(step: Step): Step {
  const held = dropHold(step.state.hold);
  const listen = endListening(step.state.listening);
  return {
    state: {
      hold: null,
      waiting: null,
      listening: null,
      edges: releaseAll(step.state.edges),
    },
    presses: [...step.presses, ...listen.presses],
    cues: [...step.cues, ...held.cues],
  };
}

function keyDown(due: Step, input: KeyInput, meaning: Meaning, context: PressContext): Step {
  const key = edgeKey(context.keymap, input.code);
  const { hold, listening, waiting } = due.state;
  const heldBefore =
    (meaning === 'pedal' && hold !== null) || (meaning === 'listen' && listening !== null);
  const edge = edgeDown(due.state.edges, key, input.at);
  if (edge.bounced && !heldBefore) return then(due, { edges: edge.edges }, []);
  const step = then(due, { edges: pressed(due.state.edges, key, input.at) }, []);
  if (isDigit(meaning)) {
    const typed = digitDown(waiting, digitOf(meaning), input.at, context.withinStep);
    return then(step, { waiting: typed.waiting }, typed.presses);
  }
  const digit = settleDigit(waiting);
  const settled = then(step, { waiting: digit.waiting }, digit.presses);
  if (meaning === 'listen') {
    const listen = listenDown(listening, input.code);
    return then(settled, { listening: listen.listening }, listen.presses);
  }
  if (meaning !== 'pedal') return then(settled, {}, [pressOf(meaning)]);
  if (!context.keymap.pedal.sendsKeyUp) return then(settled, {}, [pressOf('one more')]);
  const held = holdDown(hold, input.code, input.at);
  const holding = then(settled, { hold: held.hold }, held.presses);
  return { ...holding, cues: [...holding.cues, ...held.cues] };
}

function keyUp(step: Step, input: KeyInput): Step {
  const held = holdUp(step.state.hold, input.code, input.at);
  const listen = listenUp(step.state.listening, input.code, input.at);
  const up = then(step, { hold: held.hold, listening: listen.listening }, held.presses);
  return { ...up, cues: [...up.cues, ...held.cues] };
}

function outcome(step: Step, consumed: boolean): PressOutcome {
  const wakes = [
    holdWakeAt(step.state.hold),
    digitWakeAt(step.state.waiting),
    listenWakeAt(step.state.listening),
  ].filter((at) => at !== undefined);
  return wakes.length === 0
    ? { ...step, consumed }
    : { ...step, consumed, wakeAt: Math.min(...wakes) };
}
