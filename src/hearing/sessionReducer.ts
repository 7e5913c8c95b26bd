import type { EarWhy } from '#words';
import type { SessionEvent } from './earInput';
import { andThen, type EarState, just, LANGUAGES, type Session, type Step } from './earState';
import { answerTo } from './errorCodes';
import { again, die, ended, failed, shut, tell } from './lifeReducer';
import { reduceResult, reduceSpokenEnd, type SpokenStep } from './spokenReducer';
import { END_WATCH_MS, PERMISSION_WATCH_MS, RESULT_WATCH_MS, START_WATCH_MS } from './timings';

/** What a session tells. Of any session but the one that runs nothing is heard. */
export function reduceSession(
  state: EarState,
  sessionId: number,
  event: SessionEvent,
  at: number,
): Step {
  const { session } = state;
  if (session === null || session.id !== sessionId) return just(state);
  switch (event.type) {
    case 'started':
      return just(state);
    case 'audio started':
      return opened(state, session, at);
    case 'speech started':
      return just(withSession(state, { ...session, speechAt: at }));
    case 'speech ended':
      return just(state);
    case 'result':
      return andThen(opened(state, session, at), (open) => {
        const now = open.session ?? session;
        const heard = reduceResult(open, now, event, at);
        return afterSpeech(heard, (told) =>
          just({ ...withSession(told, { ...now, speechAt: null }), failures: 0 }),
        );
      });
    case 'error':
      return reduceError(state, session, event.code, at);
    case 'ended':
      return afterSpeech(reduceSpokenEnd(state, at), (told) => ended(told, session, at));
    default: {
      const never: never = event;
      return never;
    }
  }
}

/** After what was said: nothing else, when it told the ear to shut. */
export function afterSpeech(step: SpokenStep, next: (state: EarState) => Step): Step {
  return andThen(step, (state) => {
    const after = next(state);
    if (!step.shuts) return after;
    return andThen(after, (now) => shut(now, 'asked'));
  });
}

function withSession(state: EarState, session: Session): EarState {
  return { ...state, session };
}

function opened(state: EarState, session: Session, at: number): Step {
  if (session.audioAt !== null) return just(state);
  const taking: EarState = { ...withSession(state, { ...session, audioAt: at }) };
  if (session.closeBy !== null) return just(taking);
  const open: EarState = { ...taking, phase: 'open', why: 'asked' };
  return state.settings.listens === 'open' && state.wanted
    ? tell(open, 'open', 'asked')
    : just(open);
}

function reduceError(state: EarState, session: Session, code: string, at: number): Step {
  if (session.closeBy !== null) return just(state);
  const response = answerTo(code);
  switch (response.answer) {
    case 'go on':
      return just(withSession(state, { ...session, speechAt: null }));
    case 'retry':
      return just(
        withSession(state, {
          ...session,
          failed: { why: response.why, until: at + END_WATCH_MS },
        }),
      );
    case 'no hints':
      return state.hints
        ? again({ ...state, hints: false }, session, at)
        : failed({ ...state, session: null }, 'unknown', at);
    case 'next language':
      return nextLanguage(state, session, at);
    case 'elsewhere':
      return elsewhere(state, session, response.why, at);
    case 'dead':
      return die(state, response.why);
    default: {
      const never: never = response;
      return never;
    }
  }
}

function nextLanguage(state: EarState, session: Session, at: number): Step {
  const language = state.language + 1;
  return language < LANGUAGES.length
    ? again({ ...state, language }, session, at)
    : elsewhere({ ...state, language: 0 }, session, 'language', at);
}

/** What does not work on this device may work elsewhere, where the builder agrees to that. */
function elsewhere(state: EarState, session: Session, why: EarWhy, at: number): Step {
  if (state.place === 'on device') return again({ ...state, place: 'elsewhere' }, session, at);
  return die(state, why);
}

/** When a session that gives no sign is given up, and why. */
export function watchOf(
  state: EarState,
): { readonly until: number; readonly why: 'end' | 'no answer' | 'no results' | 'closed' } | null {
  const { session } = state;
  if (session === null) return null;
  if (session.closeBy !== null) return { until: session.closeBy, why: 'closed' };
  if (session.failed !== null) return { until: session.failed.until, why: 'end' };
  if (session.audioAt === null) {
    const watch = state.asksFirst ? PERMISSION_WATCH_MS : START_WATCH_MS;
    return { until: session.startedAt + watch, why: 'no answer' };
  }
  return session.speechAt === null
    ? null
    : { until: session.speechAt + RESULT_WATCH_MS, why: 'no results' };
}

/** A session whose watch has run out. */
export function reduceWatch(state: EarState, at: number): Step {
  const watch = watchOf(state);
  const { session } = state;
  if (watch === null || session === null || at < watch.until) return just(state);
  const abort: Step = { state, effects: [{ do: 'abort', session: session.id }] };
  switch (watch.why) {
    case 'no answer':
      return die(state, 'no answer');
    case 'closed':
      return andThen(abort, (now) =>
        afterSpeech(reduceSpokenEnd(now, at), (told) => just({ ...told, session: null })),
      );
    case 'end':
      return andThen(abort, (now) =>
        afterSpeech(reduceSpokenEnd(now, at), (told) => ended(told, session, at)),
      );
    case 'no results':
      return andThen(abort, (now) => failed({ ...now, session: null }, 'no results', at));
    default: {
      const never: never = watch.why;
      return never;
    }
  }
}
