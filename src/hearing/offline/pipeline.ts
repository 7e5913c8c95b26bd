import type { Grammar } from '#words';
import { DENOISER_RATE, startDenoiser } from './denoiser';
import type { EarPack } from './earPack';
import { startRecognition } from './recognition';
import { type PipelineEvent, streamOf, type Voice } from './stream';
import type { VoicePrints } from './voicePrints';

export type { PipelineEvent } from './stream';

/** Sound in, what was said out. */
export interface Pipeline {
  follow(grammar: Grammar): void;
  /** More samples of the microphone, -1 to 1, any number of them. */
  take(samples: Float32Array): readonly PipelineEvent[];
  /** Forgets what was being said: a microphone was opened anew. */
  reset(rate: number): void;
  /** The builder's own words as a second opinion; null for none. */
  know(prints: VoicePrints | null): void;
  /** Whether prints are told of what is heard. */
  check(on: boolean): void;
}

/** Starts denoiser and decoders. Rejects with an Error where the pack can't be read. */
export async function startPipeline(pack: EarPack): Promise<Pipeline> {
  const denoiser = await startDenoiser(pack.denoiserWasm);
  const recognition = await startRecognition(pack);
  const voice: Voice = { prints: null, checks: false };
  let stream = streamOf(denoiser, recognition, voice, DENOISER_RATE);
  return {
    follow: (grammar) => recognition.follow(grammar),
    take: (samples) => stream(samples),
    reset(rate) {
      stream = streamOf(denoiser, recognition, voice, rate);
    },
    know(prints) {
      voice.prints = prints;
    },
    check(on) {
      voice.checks = on;
    },
  };
}
