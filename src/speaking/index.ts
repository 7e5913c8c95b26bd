/**
 * Speaking: announcements become ticks at once, words when they may be said, and captions always.
 * Lives here: the mouth (one queue, pure), the ticks as notes and their Web Audio, the browser's
 * voices, and until when what is heard may be the app itself. May not be here: what is said (words),
 * what happened (counting), or where captions stand on the page (screens).
 */
export type { Caption } from './captions';
export { createSpeaker, type Speaker, type SpeakerParts, type SpeakerState } from './speaker';
export { browserSpeech, type SpeechEngine, type UtteranceEvents } from './speechEngine';
export { switchedSynth } from './switchedSynth';
export type { SpeechListener, Synth, VoiceChoice, VoiceStatus } from './synth';
export { createSynthesiser, type SynthesiserParts } from './synthesiser';
export {
  type Beeper,
  createTicker,
  type ScheduledTick,
  type Ticker,
  type TickerParts,
} from './ticker';
export type { Note, Tick } from './ticks';
export type { VoiceInfo } from './voices';
export { webAudioBeeper } from './webAudio';
export type { Wording } from './wording';
