import type { EarWhy } from '#words';

/** What an error of the recogniser's asks for. */
export type ErrorAnswer =
  /** No fault: the session will end and be started again. */
  | { readonly answer: 'go on' }
  /** Try again after a pause; given up after some. */
  | { readonly answer: 'retry'; readonly why: EarWhy }
  /** Start again at once without phrase hints. */
  | { readonly answer: 'no hints' }
  /** Start again in the next language. */
  | { readonly answer: 'next language' }
  /** This place refuses: the other may not. */
  | { readonly answer: 'elsewhere'; readonly why: EarWhy }
  | { readonly answer: 'dead'; readonly why: EarWhy };

/** The answer to each code a recogniser is known to give (Web Speech API, and the ear that needs no network); others are tried again. */
export function answerTo(code: string): ErrorAnswer {
  return ANSWERS.get(code) ?? { answer: 'retry', why: 'unknown' };
}

const ANSWERS: ReadonlyMap<string, ErrorAnswer> = new Map<string, ErrorAnswer>([
  ['no-speech', { answer: 'go on' }],
  ['aborted', { answer: 'retry', why: 'keeps ending' }],
  ['audio-capture', { answer: 'dead', why: 'no microphone' }],
  ['network', { answer: 'retry', why: 'network' }],
  ['not-allowed', { answer: 'dead', why: 'denied' }],
  ['service-not-allowed', { answer: 'elsewhere', why: 'service refused' }],
  ['bad-grammar', { answer: 'no hints' }],
  ['phrases-not-supported', { answer: 'no hints' }],
  ['language-not-supported', { answer: 'next language' }],
  ['model-missing', { answer: 'dead', why: 'no model' }],
  ['model-damaged', { answer: 'dead', why: 'model damaged' }],
  ['model-unable', { answer: 'dead', why: 'not here' }],
  ['worker-crashed', { answer: 'retry', why: 'keeps ending' }],
]);
