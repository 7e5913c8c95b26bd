/**
 * Joining: the pieces of the composition root, one a seam: the mouth, the keys, the place in the
 * app, the device it runs on, files handed out. Only main.tsx comes in by this door, and only here do device rooms and
 * stores meet.
 */

export { joinDevice } from './device';
export { joinDiagnostics } from './diagnostics';
export { type EarJoint, joinEar } from './ear';
export { joinEarRecording, type RecordingJoint } from './earRecording';
export { joinKeys, type Keys } from './keys';
export { joinMouth, type Mouth } from './mouth';
export { joinPlace, type Place } from './place';
export { joinPractice, joinPracticeLog, type Practice } from './practice';
export { saveFile } from './saveFile';
export { joinSoundCheck, type SoundCheckJoint } from './soundCheck';
export { joinStore, type Store } from './store';
