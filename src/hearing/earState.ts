import { type CommandBody, initial, type Utterance } from '#counting';
import {
  type EarNotice,
  type EarWhy,
  type Grammar,
  grammarFor,
  type Hearing,
  type Meaning,
  type MissedWhy,
} from '#words';
import type { EarSettings, Place } from './earInput';

/** Whether the app is listening. */
export type EarPhase = 'shut' | 'opening' | 'open' | 'dead';

/** What became of what was heard. */
export type CaptionKind =
  /** Taken: given to the bench, or obeyed by the ear itself. */
  | 'taken'
  /** Near a phrase, not taken. */
  | 'missed'
  /** No phrase. */
  | 'outside'
  /** Over the app's own voice: it may have held a count (C9). */
  | 'doubt'
  /** The app's own voice coming back. */
  | 'own voice'
  /** The service saying the same thing twice. */
  | 'repeat'
  /** What was taken from this utterance before it ended otherwise, withdrawn. */
  | 'withdrawn';

/** What was heard, as heard and as understood. */
export interface EarCaption {
  readonly utterance: string;
  readonly kind: CaptionKind;
  readonly heard: string;
  /** The phrase it was taken for, or what to say instead; null when there is neither. */
  readonly understood: string | null;
  /** Why it was missed; null when it was not. */
  readonly why: MissedWhy | null;
}

/** What an utterance said so far looks like; no more than a ghost on the screen. */
export interface Ghost {
  readonly heard: string;
  readonly understood: string | null;
}

/** One session of the recogniser, from its start to its end. */
export interface Session {
  readonly id: number;
  readonly startedAt: number;
  /** When sound was first taken; null before. */
  readonly audioAt: number | null;
  /** When speech was noticed that no text has come of yet; null otherwise. */
  readonly speechAt: number | null;
  /** Being stopped: no new sound is taken, the last text may still come until then. */
  readonly closeBy: number | null;
  /** An error came: the end is waited for until then, and is a failure. */
  readonly failed: { readonly why: EarWhy; readonly until: number } | null;
}

/** One utterance, as far as it has come. */
export interface Spoken {
  readonly id: string;
  readonly session: number;
  readonly index: number;
  readonly beganAt: number;
  readonly lastAt: number;
  readonly text: string;
  /** The grammar it began in: what it does itself changes nothing of what it means. */
  readonly grammar: Grammar;
  /** What it means as it stands, and since when it means that. */
  readonly hearing: Hearing;
  readonly since: number;
  readonly closed: boolean;
  /** It began while the app spoke: never a count. */
  readonly over: boolean;
  /** What has been given out of it. */
  readonly sent: readonly Meaning[];
  /** What it gave is in the job's log, and can be undone. */
  readonly kept: boolean;
  readonly doubted: boolean;
}

/** A line of the app's voice. `until` is null while it speaks. */
export interface VoiceSpan {
  readonly from: number;
  readonly until: number | null;
  readonly text: string;
}

/** Everything an ear knows. Plain data; a fold over its inputs. */
export interface EarState {
  readonly settings: EarSettings;
  readonly grammar: Grammar;
  readonly phase: EarPhase;
  readonly why: EarWhy;
  /** The builder wants it open. */
  readonly wanted: boolean;
  readonly held: boolean;
  /** After the listening key: open until then. */
  readonly tailUntil: number | null;
  readonly place: Place | 'nowhere' | 'not asked' | 'asking';
  /** When the answer to where is no longer waited for. */
  readonly askedUntil: number | null;
  /** The browser will ask the builder for the microphone. */
  readonly asksFirst: boolean;
  readonly hints: boolean;
  /** Which of the languages is tried. */
  readonly language: number;
  readonly session: Session | null;
  readonly sessions: number;
  readonly failures: number;
  readonly retryAt: number | null;
  /** The newest last; older ones are forgotten. */
  readonly spoken: readonly Spoken[];
  readonly voice: readonly VoiceSpan[];
  readonly ghost: Ghost | null;
  readonly level: number | null;
  readonly loudSince: number | null;
  /** What the builder was last told of the ear. */
  readonly told: 'open' | 'shut' | 'dead';
}

/** How a session is to be started. */
export interface SessionOptions {
  readonly language: string;
  readonly onDevice: boolean;
  /** Phrases that are likely now, where the service takes them. */
  readonly hints: readonly string[];
}

/** What is to be done, in order. */
export type EarEffect =
  | { readonly do: 'ask where' }
  | { readonly do: 'start'; readonly session: number; readonly options: SessionOptions }
  /** Take no more sound, but tell what was heard so far. */
  | { readonly do: 'finish'; readonly session: number }
  | { readonly do: 'abort'; readonly session: number }
  | { readonly do: 'submit'; readonly body: CommandBody; readonly utterance: Utterance }
  | { readonly do: 'hush' }
  | { readonly do: 'caption'; readonly caption: EarCaption }
  | { readonly do: 'notice'; readonly notice: EarNotice };

/** A state with what is to be done on coming to it. */
export interface Step {
  readonly state: EarState;
  readonly effects: readonly EarEffect[];
}

export const LANGUAGES: readonly string[] = ['en-GB', 'en-US', 'en'];

/** Shut, knowing nothing yet. */
export const shutEar: EarState = {
  settings: { headset: false, mayLeave: false, listens: 'open' },
  grammar: grammarFor(initial, { carrier: null }),
  phase: 'shut',
  why: 'asked',
  wanted: false,
  held: false,
  tailUntil: null,
  place: 'not asked',
  askedUntil: null,
  asksFirst: false,
  hints: true,
  language: 0,
  session: null,
  sessions: 0,
  failures: 0,
  retryAt: null,
  spoken: [],
  voice: [],
  ghost: null,
  level: null,
  loudSince: null,
  told: 'shut',
};

/** A step that only changes the state. */
export const just = (state: EarState): Step => ({ state, effects: [] });

/** One step after another, their effects in order. */
export function andThen(step: Step, next: (state: EarState) => Step): Step {
  const { state, effects } = next(step.state);
  return { state, effects: [...step.effects, ...effects] };
}
