/**
 * The ear that needs no network: microphone to commands on this device. Lives here: everything
 * between samples and text, the worker it runs in, and the grammar the job's state makes. It shares
 * the ear's own rules (when something counts, when it shuts) with every other ear. Loaded only when
 * an ear is wanted, so it has a door of its own.
 */
export { browserParts, canRunOffline } from './browserParts';
export { type RunningCheck, startSoundCheck } from './createSoundCheck';
export { createOfflineEar, type OfflineEarParts } from './offlineEar';
export { type EarRecording, isRecording, MOST_RECORDED_S, wavOf } from './recorder';
export { askedFor, CHECK_COMMANDS, CHECK_NUMBERS, type SoundCheck } from './soundCheck';
export { readVoicePrints, type VoicePrints } from './voicePrints';
