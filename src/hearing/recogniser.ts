import type { Place, SessionEvent } from './earInput';
import type { SessionOptions } from './earState';

/** One session of a recogniser. */
export interface RecogniserSession {
  /** Takes no more sound; what was heard so far may still be told. */
  finish(): void;
  /** Ends at once. */
  abort(): void;
}

/** Whoever turns sound into text: the browser's own service, or a scripted one. */
export interface Recogniser {
  /**
   * Where speech would be understood, and whether the browser will first ask for the microphone.
   * May take for ever: whoever asks does not wait for it.
   */
  where(): Promise<{ readonly place: Place | 'nowhere'; readonly asksFirst: boolean }>;
  /** Starts a session. Never throws: what fails is told as an error and an end. */
  start(options: SessionOptions, tell: (event: SessionEvent) => void): RecogniserSession;
}
