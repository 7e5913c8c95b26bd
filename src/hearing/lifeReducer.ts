import { type EarWhy, hintsFor } from '#words';
import {
  type EarEffect,
  type EarState,
  just,
  LANGUAGES,
  type Session,
  type Step,
} from './earState';
import {
  BACK_OFF_MS,
  CLOSING_MS,
  LONGEST_BACK_OFF_MS,
  MOST_FAILURES,
  PROBE_MS,
  RESTART_MS,
} from './timings';

/** Whether the ear is to take sound now. */
export function listens({ held, tailUntil, wanted, settings }: EarState, at: number): boolean {
  const byKey = held || (tailUntil !== null && at < tailUntil);
  return byKey || (wanted && settings.listens === 'open');
}

/** Begins a session, or ends one, as the builder wants it now. */
export function settleLife(state: EarState, at: number): Step {
  const { session } = state;
  if (!listens(state, at)) return quiet(state, at);
  if (session !== null && session.closeBy === null) {
    return mayHear(state) ? just(state) : shut(state, 'notice');
  }
  if (session !== null) {
    const left = { ...state, session: null };
    const { state: next, effects } = settleLife(left, at);
    return { state: next, effects: [{ do: 'abort', session: session.id }, ...effects] };
  }
  if (state.retryAt !== null && at < state.retryAt) return just({ ...state, phase: 'opening' });
  return begin({ ...state, retryAt: null }, at);
}

/** Speech stays on the device, or the builder still agrees that it leaves it. */
function mayHear({ place, settings }: EarState): boolean {
  return place !== 'elsewhere' || settings.mayLeave;
}

/** No more sound is taken: what was said before may still be told. */
function quiet(state: EarState, at: number): Step {
  const { session, phase } = state;
  const shut: EarState = {
    ...state,
    phase: phase === 'dead' ? 'dead' : 'shut',
    why: phase === 'opening' || phase === 'open' ? 'asked' : state.why,
    retryAt: null,
    tailUntil: null,
  };
  if (session === null || session.closeBy !== null) return just(shut);
  return {
    state: { ...shut, session: { ...session, closeBy: at + CLOSING_MS } },
    effects: [{ do: 'finish', session: session.id }],
  };
}

function begin(state: EarState, at: number): Step {
  switch (state.place) {
    case 'not asked':
      return {
        state: { ...state, phase: 'opening', place: 'asking', askedUntil: at + PROBE_MS },
        effects: [{ do: 'ask where' }],
      };
    case 'asking':
      return just({ ...state, phase: 'opening' });
    case 'nowhere':
      return die(state, 'not here');
    case 'elsewhere':
    case 'on device':
      return mayHear(state) ? start(state, at) : shut(state, 'notice');
    default: {
      const never: never = state.place;
      return never;
    }
  }
}

function start(state: EarState, at: number): Step {
  const session: Session = {
    id: state.sessions + 1,
    startedAt: at,
    audioAt: null,
    speechAt: null,
    closeBy: null,
    failed: null,
  };
  return {
    state: { ...state, phase: 'opening', session, sessions: session.id },
    effects: [
      {
        do: 'start',
        session: session.id,
        options: {
          language: LANGUAGES[state.language] ?? 'en',
          onDevice: state.place === 'on device',
          // Services elsewhere answer hints with an error.
          hints: state.hints && state.place === 'on device' ? hintsFor(state.grammar) : [],
        },
      },
    ],
  };
}

/** Shuts the ear: what it had not given is dropped, and whatever comes later is not heard. */
export function shut(state: EarState, why: EarWhy): Step {
  return away({ ...state, phase: 'shut' }, why, 'shut');
}

/** Gives the ear up until the builder opens it again. */
export function die(state: EarState, why: EarWhy): Step {
  return away({ ...state, phase: 'dead', failures: 0 }, why, 'dead');
}

function away(state: EarState, why: EarWhy, to: 'shut' | 'dead'): Step {
  const { session } = state;
  const gone: EarState = {
    ...state,
    why,
    wanted: false,
    held: false,
    tailUntil: null,
    session: null,
    retryAt: null,
    loudSince: null,
    ghost: null,
    spoken: state.spoken.map((one) => ({ ...one, closed: true })),
  };
  const aborts: readonly EarEffect[] =
    session === null ? [] : [{ do: 'abort', session: session.id }];
  const told = tell(gone, to, why);
  return { state: told.state, effects: [...aborts, ...told.effects] };
}

/** Tells the builder once what has become of the ear. A notice that stops it is told every time. */
export function tell(state: EarState, to: EarState['told'], why: EarWhy): Step {
  if (state.told === to && why !== 'notice' && to !== 'dead') return just(state);
  const { stage, count48 } = state.grammar;
  return {
    state: { ...state, told: to },
    effects: [
      {
        do: 'notice',
        notice: { state: to, why, count48: stage === 'counting' ? count48 : null },
      },
    ],
  };
}

/** The session ended by itself: another follows at once, later, or not at all. */
export function ended(state: EarState, session: Session, at: number): Step {
  const without: EarState = { ...state, session: null };
  if (session.closeBy !== null) return just(without);
  if (session.failed !== null) return failed(without, session.failed.why, at);
  const heard = session.audioAt !== null && at - session.audioAt >= 1000;
  if (!heard) return failed(without, 'keeps ending', at);
  return just({ ...without, phase: 'opening', failures: 0, retryAt: at + RESTART_MS });
}

/** One failure more: a longer pause, and in the end none. */
export function failed(state: EarState, why: EarWhy, at: number): Step {
  const failures = state.failures + 1;
  if (failures >= MOST_FAILURES) return die({ ...state, failures }, why);
  const pause = Math.min(LONGEST_BACK_OFF_MS, BACK_OFF_MS * 2 ** (failures - 1));
  return just({ ...state, phase: 'opening', failures, retryAt: at + pause });
}

/** Starts over at once in another way; the session there was is left. */
export function again(state: EarState, session: Session, at: number): Step {
  return {
    state: { ...state, session: null, phase: 'opening', retryAt: at + RESTART_MS },
    effects: [{ do: 'abort', session: session.id }],
  };
}
