import { isEchoOf } from '#words';
import type { EarState, Spoken, VoiceSpan } from './earState';
import { RESULT_LAG_MS, VOICE_TAIL_MS } from './timings';

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
function linesBetween(voice: readonly VoiceSpan[], from: number, to: number): readonly VoiceSpan[] {
  return voice.filter(
    (span) => span.from <= to && (span.until === null || span.until + VOICE_TAIL_MS >= from),
  );
}

/** Whether speech that began then and has its first text now was said over the app's voice (C9). */
export function overVoice(state: EarState, beganAt: number, at: number): boolean {
  if (state.settings.headset) return false;
  return linesBetween(state.voice, beganAt, Math.max(beganAt, at - RESULT_LAG_MS)).length > 0;
}

/** Whether what was added to an utterance by now may be the app's own voice. */
export function voiceSounds(state: EarState, at: number): boolean {
  return !state.settings.headset && linesBetween(state.voice, at - RESULT_LAG_MS, at).length > 0;
}

/** Whether an utterance may be nothing but the app's own words coming back. */
export function isEcho(state: EarState, { text, beganAt, lastAt }: Spoken): boolean {
  const lines = linesBetween(state.voice, beganAt, lastAt);
  return lines.some((line) => isEchoOf(text, line.text));
}
