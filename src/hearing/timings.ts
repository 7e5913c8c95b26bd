/** How long a phrase must stand before it is taken without waiting for its end, ms (C11). */
export const STANDS_MS = 300;
/** After the app's voice, how long the room still holds it, ms (C9). */
export const VOICE_TAIL_MS = 350;
/** From the first sound of a word to the first text of it, as services do it at best, ms. */
export const RESULT_LAG_MS = 300;
/** What each further word of a first text adds to that, ms. */
export const WORD_MS = 120;
/** After the listening key is let go, how long the ear stays open, ms. */
export const HOLD_TAIL_MS = 600;
/** After the ear has stopped taking sound, how long its last text is waited for, ms. */
export const CLOSING_MS = 2000;
/** From the start to the first sign of sound, ms: after that the service is dead. */
export const START_WATCH_MS = 4000;
/** The same while the browser asks the builder for the microphone, ms. */
export const PERMISSION_WATCH_MS = 60_000;
/** From speech noticed to the first text of it, ms. */
export const RESULT_WATCH_MS = 10_000;
/** After an error, how long the service's own end is waited for, ms. */
export const END_WATCH_MS = 1500;
/** How long the question where speech is understood may take, ms. */
export const PROBE_MS = 1500;
/** Pause before a session that ended by itself is started again, ms. */
export const RESTART_MS = 150;
/** First pause after a failure, ms; each further one is twice as long. */
export const BACK_OFF_MS = 250;
export const LONGEST_BACK_OFF_MS = 8000;
/** Failures one after another before the ear is given up. */
export const MOST_FAILURES = 5;
/** Within this of a final text the same text again is the service repeating itself, ms. */
export const REPEAT_MS = 600;
/** The same where a new session begins with what the last one ended with, ms. */
export const REPEAT_ACROSS_MS = 2000;
/** Level over which no word can be told apart, dB of full scale, and for how long, ms. */
export const LOUD_DB = -20;
export const LOUD_FOR_MS = 6000;
