import type { Grammar } from '#words';

/** Where speech is turned into text. */
export type Place = 'on device' | 'elsewhere';

/** What this device has chosen for its ear. */
export interface EarSettings {
  /** A headset: the app's own voice does not reach the microphone. */
  readonly headset: boolean;
  /** The builder knows that speech leaves the device, and agrees. */
  readonly mayLeave: boolean;
  /** Open until shut, or only while a key is held. */
  readonly listens: 'open' | 'while held';
  /** How long after its end the app's own voice was still heard in a sound check, ms. */
  readonly tailMs?: number;
}

/** One reading of what was said. */
export interface Alternative {
  readonly text: string;
  /** 0 to 1, as the service gives it. */
  readonly confidence: number;
}

/** What a recogniser's session tells. `index` counts the utterances of a session. */
export type SessionEvent =
  | { readonly type: 'started' }
  | { readonly type: 'audio started' }
  | { readonly type: 'speech started' }
  | { readonly type: 'speech ended' }
  | {
      readonly type: 'result';
      readonly index: number;
      readonly final: boolean;
      readonly alternatives: readonly Alternative[];
    }
  | { readonly type: 'error'; readonly code: string }
  | { readonly type: 'ended' };

/** Everything that happens to an ear; `at` is the wall clock, ms. Plain data: it makes the log. */
export type EarInput = { readonly at: number } /** The builder opens or shuts it. */ & (
  | { readonly type: 'open' }
  | { readonly type: 'shut' }
  /** The listening key. */
  | { readonly type: 'hold'; readonly on: boolean }
  | { readonly type: 'configure'; readonly settings: EarSettings }
  /** The job moved on. */
  | { readonly type: 'grammar'; readonly grammar: Grammar }
  /** The app's voice begins a line, or has ended it. */
  | { readonly type: 'mouth'; readonly saying: string | null }
  /** Where speech would be understood, and whether the browser will ask for the microphone. */
  | { readonly type: 'place'; readonly place: Place | 'nowhere'; readonly asksFirst: boolean }
  /** Noise of the room, dB of full scale. */
  | { readonly type: 'level'; readonly db: number }
  | { readonly type: 'session'; readonly session: number; readonly event: SessionEvent }
  | { readonly type: 'time' }
);
