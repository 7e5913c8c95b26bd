import { hear } from '#words';
import { bestOf } from './alternatives';
import type { SessionEvent } from './earInput';
import type { EarEffect, EarState, Session, Spoken } from './earState';
import { give, understoodAs } from './give';
import { overVoice } from './ownVoice';
import { repeated } from './repeats';
import { RESULT_LAG_MS, STANDS_MS, WORD_MS } from './timings';

/** Utterances that are remembered. */
const REMEMBERED = 6;
/** Speech noticed longer ago than this was something else, ms. */
const SPEECH_NOTICED_MS = 3000;

/** A step of what was said; `shuts`: it told the ear to shut. */
export interface SpokenStep {
  readonly state: EarState;
  readonly effects: readonly EarEffect[];
  readonly shuts: boolean;
}

type Result = Extract<SessionEvent, { type: 'result' }>;

/** A text of an utterance has come, the first, a later or the last. */
export function reduceResult(
  state: EarState,
  session: Session,
  result: Result,
  at: number,
): SpokenStep {
  const text = bestOf(result.alternatives, state.grammar);
  const known = state.spoken.find((one) => isOf(one, session, result.index));
  if (text === '' || known?.closed) return { state, effects: [], shuts: false };
  const again = known === undefined ? repeated(state, session, text, at) : null;
  if (again?.how === 'same') {
    const { id } = again.spoken;
    if (!result.final) return { state, effects: [], shuts: false };
    const closed: Spoken = { ...again.spoken, session: session.id, index: result.index };
    return {
      state: withSpoken(state, closed),
      effects: [
        {
          do: 'caption',
          caption: { utterance: id, kind: 'repeat', heard: text, understood: null, why: null },
        },
      ],
      shuts: false,
    };
  }
  const before =
    known ??
    (again === null
      ? begun(state, session, result.index, text, at)
      : { ...again.spoken, session: session.id, index: result.index, closed: false });
  const spoken = withText(state, before, text, at);
  const ghosted: EarState = { ...state, ghost: ghostOf(state, text) };
  return result.final
    ? concluded(ghosted, spoken, at)
    : { state: withSpoken(ghosted, spoken), effects: [], shuts: false };
}

/** What has stood long enough by now is given without waiting for its end (C11). */
export function reduceStanding(state: EarState, at: number): SpokenStep {
  return each(state, (now, spoken) => {
    const due = dueAt(now, spoken);
    if (due === null || due > at) return null;
    return { ...give(now, spoken, at, false), closes: false };
  });
}

/** The session is over: what was said last is all there will be. */
export function reduceSpokenEnd(state: EarState, at: number): SpokenStep {
  const step = each(state, (now, spoken) =>
    spoken.closed ? null : { ...give(now, spoken, at, true), closes: true },
  );
  return { ...step, state: { ...step.state, ghost: null } };
}

/** When an utterance will have stood long enough to be given; null while its end is needed. */
export function dueAt(state: EarState, spoken: Spoken): number | null {
  if (spoken.closed || spoken.doubted) return null;
  const hearing = hear(spoken.text, state.grammar);
  if (hearing.kind !== 'meaning') return null;
  if (JSON.stringify(hearing.meanings) === JSON.stringify(spoken.sent)) return null;
  const counts = hearing.plainCount && state.grammar.stage === 'counting';
  return counts || !hearing.waits ? spoken.since + STANDS_MS : null;
}

function each(
  state: EarState,
  change: (
    now: EarState,
    spoken: Spoken,
  ) => { spoken: Spoken; effects: readonly EarEffect[]; shuts: boolean; closes: boolean } | null,
): SpokenStep {
  let now = state;
  const effects: EarEffect[] = [];
  let shuts = false;
  for (const one of state.spoken) {
    const given = change(now, one);
    if (given === null) continue;
    now = withSpoken(now, { ...given.spoken, closed: given.closes });
    effects.push(...given.effects);
    shuts ||= given.shuts;
  }
  return { state: now, effects, shuts };
}

function concluded(state: EarState, spoken: Spoken, at: number): SpokenStep {
  const given = give(state, spoken, at, true);
  return {
    state: { ...withSpoken(state, { ...given.spoken, closed: true }), ghost: null },
    effects: given.effects,
    shuts: given.shuts,
  };
}

function begun(state: EarState, session: Session, index: number, text: string, at: number): Spoken {
  const beganAt = beginOf(state, session, text, at);
  return {
    id: `${session.startedAt}.${index}`,
    session: session.id,
    index,
    beganAt,
    lastAt: at,
    text: '',
    key: '',
    since: at,
    closed: false,
    over: overVoice(state, beganAt, at),
    sent: [],
    counted: false,
    doubted: false,
  };
}

/**
 * When an utterance began: when speech was noticed, where the service says so, else as long before
 * its first text as that many words take. Never before the last one's end.
 */
function beginOf(state: EarState, session: Session, text: string, at: number): number {
  const noticed = session.speechAt;
  const words = text.split(/\s+/).length;
  const guessed = at - RESULT_LAG_MS - WORD_MS * (words - 1);
  const began = noticed !== null && at - noticed <= SPEECH_NOTICED_MS ? noticed : guessed;
  const earliest = state.spoken.at(-1)?.lastAt ?? 0;
  return Math.min(at, Math.max(began, earliest, session.audioAt ?? session.startedAt));
}

function withText(state: EarState, spoken: Spoken, text: string, at: number): Spoken {
  const hearing = hear(text, state.grammar);
  const key = hearing.kind === 'meaning' ? JSON.stringify(hearing.meanings) : hearing.kind;
  return { ...spoken, text, lastAt: at, key, since: key === spoken.key ? spoken.since : at };
}

function withSpoken(state: EarState, spoken: Spoken): EarState {
  const others = state.spoken.filter(
    (one) => one.session !== spoken.session || one.index !== spoken.index,
  );
  const known = others.length < state.spoken.length;
  const all = known
    ? state.spoken.map((one) => (others.includes(one) ? one : spoken))
    : [...state.spoken, spoken];
  return { ...state, spoken: all.slice(-REMEMBERED) };
}

function ghostOf(state: EarState, text: string) {
  return { heard: text, understood: understoodAs(hear(text, state.grammar)) };
}

const isOf = (spoken: Spoken, session: Session, index: number) =>
  spoken.session === session.id && spoken.index === index;
