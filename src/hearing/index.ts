/**
 * Hearing: sound becomes commands. Lives here: the ear as a pure fold over everything that happens
 * to it, the runner that joins it to a clock and a recogniser, and the browser's own speech
 * recognition. May not be here: what phrases mean (words), what a command does (counting), what is
 * said back (speaking).
 */
export { createEar, type EarParts } from './createEar';
export type { Ear, EarListener, EarView } from './ear';
export type { Alternative, EarInput, EarSettings, Place, SessionEvent } from './earInput';
export { type EarLog, replayEar } from './earLog';
export { type EarOutcome, reduceEar } from './earReducer';
export {
  type CaptionKind,
  type EarCaption,
  type EarEffect,
  type EarPhase,
  type EarState,
  type Ghost,
  type SessionOptions,
  shutEar,
} from './earState';
export { answerTo, type ErrorAnswer } from './errorCodes';
export type { Recogniser, RecogniserSession } from './recogniser';
export {
  browserMicrophone,
  LEVEL_EVERY_MS,
  levelDb,
  measureRoom,
  type OpenMicrophone,
  type RoomLevelParts,
} from './roomLevel';
export { webSpeech } from './webSpeech';
export type { WebRecogniser, WebRecogniserMaker, WebSpeechWindow } from './webSpeechTypes';
