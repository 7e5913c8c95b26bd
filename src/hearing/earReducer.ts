import type { EarInput } from './earInput';
import { andThen, type EarEffect, type EarState, just, type Step } from './earState';
import { settleLife, shut } from './lifeReducer';
import { withVoice } from './ownVoice';
import { afterSpeech, reduceSession, reduceWatch, watchOf } from './sessionReducer';
import { dueAt, reduceGrammar, reduceStanding } from './spokenReducer';
import { HOLD_TAIL_MS, LOUD_DB, LOUD_FOR_MS } from './timings';

/** The answer to one input. */
export interface EarOutcome {
  readonly state: EarState;
  /** In the order they are to be done. */
  readonly effects: readonly EarEffect[];
  /** When to call again with `time`; absent while only news can change anything. */
  readonly wakeAt?: number;
}

/**
 * The ear: a fold over everything that happens to it. Pure; what it wants done is told as effects,
 * and a log of its inputs replayed gives the same ones.
 */
export function reduceEar(before: EarState, input: EarInput): EarOutcome {
  const { at } = input;
  const step = andThen(
    andThen(
      andThen(pass(before, at), (state) => take(state, input)),
      (state) => pass(state, at),
    ),
    (state) => settleLife(state, at),
  );
  const wakeAt = nextWake(step.state, at);
  return { ...step, ...(wakeAt === undefined ? {} : { wakeAt }) };
}

/** Everything that time alone brings by now. */
function pass(state: EarState, at: number): Step {
  return andThen(
    andThen(afterSpeech(reduceStanding(state, at), just), (now) => reduceWatch(now, at)),
    (now) => {
      const waited = now.askedUntil !== null && at >= now.askedUntil;
      return waited && now.place === 'asking'
        ? just({ ...now, place: 'elsewhere', askedUntil: null })
        : just(now);
    },
  );
}

function take(state: EarState, input: EarInput): Step {
  const { at } = input;
  switch (input.type) {
    case 'open':
      return just({ ...revived(state), wanted: true });
    case 'shut':
      return shut(state, 'asked');
    case 'hold':
      return just(
        input.on
          ? { ...revived(state), held: true, tailUntil: null }
          : { ...state, held: false, tailUntil: state.held ? at + HOLD_TAIL_MS : null },
      );
    case 'configure':
      return just(configured(state, input.settings));
    case 'grammar':
      return just(reduceGrammar(state, input.grammar));
    case 'mouth':
      return just({ ...state, voice: withVoice(state.voice, input.saying, at) });
    case 'place':
      return just({
        ...state,
        place: input.place,
        asksFirst: input.asksFirst,
        askedUntil: null,
      });
    case 'level':
      return level(state, input.db, at);
    case 'session':
      return reduceSession(state, input.session, input.event, at);
    case 'time':
      return just(state);
    default: {
      const never: never = input;
      return never;
    }
  }
}

/** The notice has done its work once it is agreed to, whether or not the ear opens now. */
function configured(state: EarState, settings: EarState['settings']): EarState {
  const agreed = state.why === 'notice' && settings.mayLeave;
  return { ...state, settings, why: agreed ? 'asked' : state.why };
}

/** Asked for again, a dead ear is tried afresh. */
function revived(state: EarState): EarState {
  return state.phase === 'dead' ? { ...state, phase: 'shut', failures: 0, retryAt: null } : state;
}

/** Noise that leaves no gaps shuts the ear rather than let it guess. */
function level(state: EarState, db: number, at: number): Step {
  const loudSince = db > LOUD_DB ? (state.loudSince ?? at) : null;
  const now: EarState = { ...state, level: db, loudSince };
  const tooLoud = loudSince !== null && at - loudSince >= LOUD_FOR_MS;
  return tooLoud && state.phase === 'open' ? shut(now, 'too loud') : just(now);
}

function nextWake(state: EarState, at: number): number | undefined {
  const times = [
    ...state.spoken.map((spoken) => dueAt(state, spoken)),
    watchOf(state)?.until ?? null,
    state.tailUntil,
    state.place === 'asking' ? state.askedUntil : null,
    state.retryAt,
  ].filter((time) => time !== null && time > at);
  return times.length === 0 ? undefined : Math.min(...times.map(Number));
}
