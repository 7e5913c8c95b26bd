import type { VoiceInfo } from './voices';

/**
 * Whether words can be heard: 'locked' until a key or a touch has let the page make sound, 'waiting'
 * while the device may still bring its voices, 'none' when it has none or they fail.
 */
export type VoiceStatus = 'locked' | 'waiting' | 'ready' | 'none';

/** Which voice, by its URI (null: the best there is), and how fast, 1 being the voice's own rate. */
export interface VoiceChoice {
  readonly voiceUri: string | null;
  readonly rate: number;
}

/** Told of one line; exactly one of `onEnd` and `onError` comes, unless the line is cancelled. */
export interface SpeechListener {
  readonly onStart: () => void;
  readonly onEnd: () => void;
  /** 'late': it could not begin in time, and was not said. 'failed': no voice said it. */
  readonly onError: (why: 'late' | 'failed') => void;
}

/** A voice, one line at a time. */
export interface Synth {
  /** Says a line; `startBy` (ms by the clock) is when it must have begun, null when that is no matter. */
  speak(text: string, listener: SpeechListener, startBy: number | null): void;
  /** Ends the line being said; its listener hears nothing more. */
  cancel(): void;
  /** Call inside a key or touch handler: browsers let a page speak only after one. */
  unlock(): void;
  choose(choice: VoiceChoice): void;
  choice(): VoiceChoice;
  /** The voices to choose from, the best first. */
  voices(): readonly VoiceInfo[];
  status(): VoiceStatus;
  /** Calls back at every change of status or of the voices. Returns how to stop that. */
  subscribe(onChange: () => void): () => void;
}
