import type { Hearing, Meaning } from '#words';
import type { CaptionKind, EarEffect, EarState, Spoken } from './earState';
import { isEcho, voiceSounds } from './ownVoice';

/** What giving an utterance comes to; `shuts`: it told the ear to shut. */
export interface Given {
  readonly spoken: Spoken;
  readonly effects: readonly EarEffect[];
  readonly shuts: boolean;
}

/** What nothing undoes, and what is not harmless: taken only once the utterance has ended. */
const LASTING: ReadonlySet<string> = new Set([
  'takeBack',
  'carryOn',
  'cautionsHeard',
  'handsClear',
  'pushrodsLoose',
]);
/** What changes nothing that could be undone. */
const HARMLESS: ReadonlySet<string> = new Set(['ask', 'hold']);

/** Whether a meaning may be taken before the utterance has ended: it can be withdrawn, or harms nothing. */
export function mayBeWithdrawn(meaning: Meaning): boolean {
  return meaning.kind !== 'command' || !LASTING.has(meaning.command.type);
}

/** Whether what was given can be undone when the utterance ends otherwise. */
function isUndone(meaning: Meaning): boolean {
  if (meaning.kind !== 'command') return false;
  return !LASTING.has(meaning.command.type) && !HARMLESS.has(meaning.command.type);
}

const isCall = (meaning: Meaning | undefined) =>
  meaning?.kind === 'command' && meaning.command.type === 'call';
const same = (a: Meaning | undefined, b: Meaning) => JSON.stringify(a) === JSON.stringify(b);

/**
 * Gives out what an utterance means now. One utterance makes one change: what it already gave is
 * not given again, a count and its seat are two, and what grew or ended otherwise is replaced, or
 * withdrawn when it ended as nothing (C11). Over the app's voice nothing counts (C9).
 */
export function give(state: EarState, spoken: Spoken, at: number, final: boolean): Given {
  const { hearing } = spoken;
  if (spoken.over) return giveOverVoice(state, spoken, hearing, final);
  const meanings = hearing.kind === 'meaning' ? hearing.meanings : [];
  const { sent } = spoken;
  if (meanings.length > 0 && sent.every((meaning, i) => same(meanings[i], meaning))) {
    return sendOut(spoken, meanings.slice(sent.length), hearing);
  }
  if (sent.length === 0) return final ? told(spoken, missedKind(hearing), hearing) : none(spoken);
  if (meanings.length === 0 && !final) return none(spoken);
  if (voiceSounds(state, at)) return final ? told(spoken, 'own voice', hearing) : none(spoken);
  const [only] = sent;
  if (sent.length > 1 || only === undefined || !isUndone(only)) {
    return final ? told(spoken, missedKind(hearing), hearing) : none(spoken);
  }
  return instead(state, spoken, meanings, hearing);
}

/** Something else than what was given: it takes its place. */
function instead(
  state: EarState,
  spoken: Spoken,
  meanings: readonly Meaning[],
  hearing: Hearing,
): Given {
  const fresh: Spoken = { ...spoken, sent: [] };
  if (!spoken.kept) {
    if (meanings.length === 0) return told(fresh, missedKind(hearing), hearing);
    return sendOut(fresh, meanings, hearing);
  }
  if (isCall(spoken.sent[0]) && isCall(meanings[0])) return sendOut(fresh, meanings, hearing);
  const { undoable } = state.grammar;
  if (undoable?.utterance !== spoken.id || !undoable.last) return doubt(state, spoken, hearing);
  const back: EarEffect = { do: 'submit', body: { type: 'takeBack' }, utterance: of(spoken) };
  const then =
    meanings.length === 0
      ? told({ ...fresh, kept: false }, 'withdrawn', hearing)
      : sendOut({ ...fresh, kept: false }, meanings, hearing);
  return { ...then, effects: [back, ...then.effects] };
}

function giveOverVoice(state: EarState, spoken: Spoken, hearing: Hearing, final: boolean): Given {
  if (isEcho(state, spoken)) return final ? told(spoken, 'own voice', hearing) : none(spoken);
  if (spoken.sent.length > 0) return none(spoken);
  const meanings = hearing.kind === 'meaning' ? hearing.meanings : [];
  if (meanings.length === 1 && meanings.every(mayInterrupt)) {
    return sendOut(spoken, meanings, hearing);
  }
  if (/\bstop[.!]?$/i.test(spoken.text)) {
    return sendOut(spoken, [{ kind: 'talk', talk: 'stop' }], hearing);
  }
  return doubt(state, spoken, hearing);
}

/** What may be said over the app's voice: it moves no count, and is said because the app talks. */
function mayInterrupt(meaning: Meaning): boolean {
  return meaning.kind !== 'command' || meaning.command.type === 'hold';
}

function doubt(state: EarState, spoken: Spoken, hearing: Hearing): Given {
  if (spoken.doubted) return none(spoken);
  const captioned = told({ ...spoken, doubted: true }, 'doubt', hearing);
  if (state.grammar.stage !== 'counting') return captioned;
  const effect: EarEffect = { do: 'submit', body: { type: 'doubt' }, utterance: of(spoken) };
  return { ...captioned, effects: [effect, ...captioned.effects] };
}

function sendOut(spoken: Spoken, meanings: readonly Meaning[], hearing: Hearing): Given {
  if (meanings.length === 0) return none(spoken);
  const effects = meanings.flatMap((meaning): readonly EarEffect[] => {
    switch (meaning.kind) {
      case 'command':
        return [{ do: 'submit', body: meaning.command, utterance: of(spoken) }];
      case 'talk':
        return [{ do: 'hush' }];
      case 'ear':
        return [];
      default: {
        const never: never = meaning;
        return never;
      }
    }
  });
  const captioned = told({ ...spoken, sent: [...spoken.sent, ...meanings] }, 'taken', hearing);
  return {
    ...captioned,
    effects: [...captioned.effects, ...effects],
    shuts: meanings.some((meaning) => meaning.kind === 'ear' && meaning.ear === 'shut'),
  };
}

function told(spoken: Spoken, kind: CaptionKind, hearing: Hearing): Given {
  const caption: EarEffect = {
    do: 'caption',
    caption: {
      utterance: spoken.id,
      kind,
      heard: spoken.text,
      understood: understoodAs(hearing),
      why: hearing.kind === 'missed' ? hearing.why : null,
    },
  };
  return { spoken, effects: [caption], shuts: false };
}

/** What an utterance was taken for, or was near to. */
export function understoodAs(hearing: Hearing): string | null {
  switch (hearing.kind) {
    case 'meaning':
      return hearing.phrase;
    case 'missed':
      return hearing.near;
    case 'outside':
      return null;
    default: {
      const never: never = hearing;
      return never;
    }
  }
}

const missedKind = (hearing: Hearing): CaptionKind =>
  hearing.kind === 'outside' ? 'outside' : 'missed';
const of = ({ id, beganAt }: Spoken) => ({ id, beganAt });
const none = (spoken: Spoken): Given => ({ spoken, effects: [], shuts: false });
