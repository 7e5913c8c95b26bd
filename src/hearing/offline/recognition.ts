import type { Grammar } from '#words';
import { conditioned } from './conditioned';
import { type ReadyDecoder, startDecoderProgram } from './decoderModule';
import type { EarPack } from './earPack';
import { HANDICAP } from './expected';
import { type Branch, branchesFor, jsgfOf } from './grammar';
import { PHONE_LOOP } from './phoneLoop';

/** What a stretch of sound is most like. */
export interface Candidate {
  readonly branch: Branch;
  /** How much better it explains the sound than any run of phones, nats a frame, handicap left out. */
  readonly fit: number;
  readonly frames: number;
}

/** Finds what a stretch of sound is most like among the phrases of the moment. */
export interface Recognition {
  follow(grammar: Grammar): void;
  /** Samples at 16 kHz, -1 to 1; null where no phrase comes near. */
  candidate(samples: Float32Array): Candidate | null;
}

/** The rate samples are recognised at, per second. */
export const RECOGNISED_RATE = 16_000;
/** Decoder's units to a nat: it counts in logarithms of 1.0001, 1024 at a time. */
const PER_NAT = 1 / (1024 * Math.log(1.0001));

/** Worked out on recorded numbers; all senones are scored so that two scores can be compared. */
const CONFIG = {
  samprate: RECOGNISED_RATE,
  lw: 1,
  silprob: 0.3,
  fillprob: 1e-3,
  topn: 8,
  beam: 1e-60,
  wbeam: 1e-40,
  pbeam: 1e-60,
  compallsen: 1,
  // The mean over the last words, not over this one: a single word's own mean takes half of it away.
  cmn: 'live',
  // What that mean comes to with most voices: the first words of a day are heard by it.
  cmninit: '50.8,1,2.2,-0.8,-3.9,-2.9,-0.5,0.7,-0.4,0.9,1,0.4,2.2',
} as const;

/** Starts both decoders. Rejects with an Error where the pack can't be read. */
export async function startRecognition(pack: EarPack): Promise<Recognition> {
  const makeDecoder = await startDecoderProgram(pack);
  const phrases = await makeDecoder(CONFIG);
  const phones = await makeDecoder(CONFIG);
  phones.decoder.set_grammar(PHONE_LOOP);
  let branches: ReadonlyMap<string, Branch> = new Map();
  let waiting: Grammar | null = null;

  function follow(grammar: Grammar): void {
    const now = branchesFor(grammar);
    phrases.decoder.set_grammar(jsgfOf(now));
    branches = new Map(now.map((branch) => [branch.words, branch]));
  }

  return {
    follow(grammar) {
      // Built when it is needed: a job can move on several times between two utterances.
      waiting = grammar;
    },
    candidate(samples) {
      if (waiting !== null) follow(waiting);
      waiting = null;
      // Nothing is listened for yet: a decoder without a grammar gives up for good.
      if (branches.size === 0) return null;
      const heard = conditioned(samples);
      const said = decode(phrases, heard);
      const branch = branches.get(said.words);
      if (branch === undefined) return null;
      const any = decode(phones, heard);
      const better = (said.score - any.score) / PER_NAT + HANDICAP[branch.tier];
      return { branch, fit: better / Math.max(1, said.frames), frames: said.frames };
    },
  };
}

function decode({ decoder, score }: ReadyDecoder, samples: Float32Array) {
  decoder.start();
  const frames = decoder.process_audio(samples, false, true);
  decoder.stop();
  return { words: decoder.get_text(), score: score(), frames };
}
