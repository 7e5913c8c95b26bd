import type { Grammar, Hearing } from '#words';
import { bestOf, type Reading } from './alternatives';
import type { SessionEvent } from './earInput';
import type { EarEffect, EarState, Session, Spoken } from './earState';
import { give, mayBeWithdrawn, understoodAs } from './give';
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
  const known = state.spoken.find((one) => isOf(one, session, result.index));
  const first = result.alternatives[0]?.text.trim() ?? '';
  if (first === '' || known?.closed) return { state, effects: [], shuts: false };
  const again = known === undefined ? repeated(state, session, first, at) : null;
  if (again?.how === 'same') {
    const { id } = again.spoken;
    if (!result.final) return { state, effects: [], shuts: false };
    const closed: Spoken = { ...again.spoken, session: session.id, index: result.index };
    return {
      state: withSpoken(state, closed),
      effects: [
        {
          do: 'caption',
          caption: { utterance: id, kind: 'repeat', heard: first, understood: null, why: null },
        },
      ],
      shuts: false,
    };
  }
  const grammar = (known ?? again?.spoken)?.grammar ?? state.grammar;
  const reading = bestOf(result.alternatives, grammar);
  const { text } = reading;
  const before =
    known ??
    (again === null
      ? begun(state, session, result.index, text, at)
      : { ...again.spoken, session: session.id, index: result.index, closed: false });
  const spoken = withReading(before, reading, at);
  const ghost = { heard: text, understood: understoodAs(reading.hearing) };
  const ghosted: EarState = { ...state, ghost };
  return result.final
    ? concluded(ghosted, spoken, at)
    : { state: withSpoken(ghosted, spoken), effects: [], shuts: false };
}

/** The job moved on, it may be by what was said. */
export function reduceGrammar(state: EarState, grammar: Grammar): EarState {
  const spoken = state.spoken.map((one) =>
    grammar.undoable?.utterance === one.id ? { ...one, kept: true } : one,
  );
  return { ...state, grammar, spoken };
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
  const { hearing } = spoken;
  if (hearing.kind !== 'meaning') return null;
  if (JSON.stringify(hearing.meanings) === JSON.stringify(spoken.sent)) return null;
  const counts = hearing.plainCount && state.grammar.stage === 'counting';
  const stands = !hearing.waits && hearing.meanings.every(mayBeWithdrawn);
  return counts || stands ? spoken.since + STANDS_MS : null;
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
    grammar: state.grammar,
    hearing: { kind: 'outside', waits: false },
    since: at,
    closed: false,
    over: overVoice(state, beganAt, at),
    sent: [],
    kept: false,
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

function withReading(spoken: Spoken, { text, hearing }: Reading, at: number): Spoken {
  const since = sameMeaning(spoken.hearing, hearing) ? spoken.since : at;
  return { ...spoken, text, hearing, lastAt: at, since };
}

function sameMeaning(a: Hearing, b: Hearing): boolean {
  const keyOf = (hearing: Hearing) =>
    hearing.kind === 'meaning' ? JSON.stringify(hearing.meanings) : hearing.kind;
  return keyOf(a) === keyOf(b);
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

const isOf = (spoken: Spoken, session: Session, index: number) =>
  spoken.session === session.id && spoken.index === index;
