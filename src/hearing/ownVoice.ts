import { isEchoOf } from '#words';
import type { EarSettings } from './earInput';
import type { EarState, Spoken, VoiceSpan } from './earState';
import { RESULT_LAG_MS, VOICE_TAIL_MS } from './timings';

/** A measured tail is never quite the same again, ms. */
const TO_SPARE_MS = 100;
/** Lines older than this can no longer be heard, ms. */
const FORGOTTEN_MS = 15_000;

/** The lines of the app's voice after one begins (its text) or ends (null). */
export function withVoice(
  voice: readonly VoiceSpan[],
  saying: string | null,
  at: number,
): readonly VoiceSpan[] {
  const ended = voice
    .map((span) => ({ ...span, until: span.until ?? at }))
    .filter(({ until }) => at - until <= FORGOTTEN_MS);
  return saying === null ? ended : [...ended, { from: at, until: null, text: saying }];
}

/** The app's lines that sounded between two times, tails included. */
function linesBetween(state: EarState, from: number, to: number): readonly VoiceSpan[] {
  const tailMs = tailOf(state.settings);
  return state.voice.filter(
    (span) => span.from <= to && (span.until === null || span.until + tailMs >= from),
  );
}

/** How long the room holds the app's voice, ms: as measured, with something to spare, else as speakers lag. */
function tailOf({ tailMs }: EarSettings): number {
  return Math.max(VOICE_TAIL_MS, (tailMs ?? 0) + TO_SPARE_MS);
}

/** Whether speech that began then and has its first text now was said over the app's voice (C9). */
export function overVoice(state: EarState, beganAt: number, at: number): boolean {
  if (state.settings.headset) return false;
  return linesBetween(state, beganAt, Math.max(beganAt, at - RESULT_LAG_MS)).length > 0;
}

/** Whether what was added to an utterance by now may be the app's own voice. */
export function voiceSounds(state: EarState, at: number): boolean {
  return !state.settings.headset && linesBetween(state, at - RESULT_LAG_MS, at).length > 0;
}

/** Whether an utterance may be nothing but the app's own words coming back. */
export function isEcho(state: EarState, { text, beganAt, lastAt }: Spoken): boolean {
  const lines = linesBetween(state, beganAt, lastAt);
  return lines.some((line) => isEchoOf(text, line.text));
}
