import { bandLevel, QUIETEST_DB } from './bandLevel';
import { conditioned } from './conditioned';
import { DENOISED_FRAME, DENOISER_RATE, type Denoiser } from './denoiser';
import {
  type EndpointState,
  endpoint,
  endpointStart,
  LONGEST_FRAMES,
  loudOf,
  quietOf,
  type Stretch,
} from './endpointer';
import { framesOf } from './frames';
import { noiseLevel } from './noiseLevel';
import { type Candidate, RECOGNISED_RATE, type Recognition } from './recognition';
import { judge, LEAST_VOICED, SURELY_VOICED, type Verdict } from './rejection';
import { resampler } from './resampler';
import { opinionOf, type VoicePrints } from './voicePrints';
import { type WordPrint, wordPrint } from './wordPrint';

/** What the pipeline tells. */
export type PipelineEvent =
  /** Sound that may be speech; what it was follows, if only that it was nothing. */
  | { readonly type: 'speech' }
  | {
      readonly type: 'heard';
      readonly verdict: Verdict;
      /** Null where it was like no phrase, or too long for one. */
      readonly candidate: Candidate | null;
      /** Frames of 10 ms that surely held a voice. */
      readonly voiced: number;
      /** How loud it was as it came in, dB of full scale. */
      readonly db: number;
      /** How it sounded, while that is asked for; null else, and of what is no voice. */
      readonly print: WordPrint | null;
    }
  /** The room between sounds, and all its noise but speech, dB of full scale, as they come in. */
  | { readonly type: 'level'; readonly db: number; readonly noiseDb: number };

const FRAME = RECOGNISED_RATE / 100;
/** Kept to look back on, frames. */
const KEPT = LONGEST_FRAMES + 100;
const LEVEL_EVERY = 25;
const ROOM_EVERY = 10;
/** What the denoiser leaves is told from the room down to this far below it. */
const WELL_BELOW_DB = 6;
/** Frames the room's level is taken from. */
const ROOM_OVER = 300;
/** What of the sound as it came is left in for the decoder: denoising alone leaves holes it trips over. */
const AS_IT_CAME = 0.1;
/** Speech that ended less than this before, frames, makes it talk, in which a number is no count. */
const CROWDED = 60;

/** What is known of the builder's voice. */
export interface Voice {
  prints: VoicePrints | null;
  checks: boolean;
}

interface Heard {
  /** The frame it ends at. */
  readonly to: number;
  readonly voiced: number;
  readonly db: number;
  readonly candidate: Candidate | null;
  readonly print: WordPrint | null;
}

/** More samples of one microphone in, what was said out. */
export type Stream = (samples: Float32Array) => readonly PipelineEvent[];

/** One microphone's sound from its opening on, its rate per second. */
export function streamOf(
  denoiser: Denoiser,
  recognition: Recognition,
  voice: Voice,
  rate: number,
): Stream {
  const up = resampler(rate, DENOISER_RATE);
  const cut = framesOf(DENOISED_FRAME);
  const rawLevel = bandLevel(DENOISER_RATE);
  const down = resampler(DENOISER_RATE, RECOGNISED_RATE);
  const frames = framesOf(FRAME);
  const level = bandLevel(RECOGNISED_RATE);
  const kept: Float32Array[] = [];
  const voices: number[] = [];
  const levels: number[] = [];
  const noise = noiseLevel();
  const room: number[] = [];
  const downAsItCame = resampler(DENOISER_RATE, RECOGNISED_RATE);
  const framesAsItCame = framesOf(FRAME);
  /** The denoiser gives back each frame one later. */
  let before = new Float32Array(DENOISED_FRAME);
  let state: EndpointState = endpointStart;
  let denoised = 0;
  /** The room as it comes in, dBFS. */
  let roomDb = QUIETEST_DB;
  /** Where the last speech ended. */
  let talkedUntil = Number.NEGATIVE_INFINITY;

  /** What a stretch that seemed over was like, worked out while its silence went on. */
  let early: Heard | null = null;

  function listen({ from, to }: Stretch): Heard {
    const first = state.frame - kept.length;
    const [start, end] = [Math.max(0, from - first), to - first];
    const db = loudOf(levels.slice(start, end));
    const voiced = voices.slice(start, end).filter((sure) => sure >= SURELY_VOICED).length;
    // Decoding is dear, and a click is no voice.
    if (voiced < LEAST_VOICED) return { to, voiced, db, candidate: null, print: null };
    const sound = joined(kept.slice(start, end));
    const candidate = recognition.candidate(sound);
    const asked = voice.checks || (voice.prints !== null && candidate !== null);
    return { to, voiced, db, candidate, print: asked ? wordPrint(conditioned(sound)) : null };
  }

  function heard(stretch: Stretch): PipelineEvent {
    const { voiced, db, candidate, print } = early?.to === stretch.to ? early : listen(stretch);
    early = null;
    const crowded = stretch.from - talkedUntil < CROWDED;
    const { prints, checks } = voice;
    const opinion =
      print === null || prints === null || candidate === null
        ? 'none'
        : opinionOf(print, prints, candidate.branch.words);
    const verdict = candidate === null ? 'nothing' : judge(candidate, { voiced, crowded, opinion });
    if (voiced >= LEAST_VOICED) {
      talkedUntil = stretch.to;
      noise.drop(state.frame - stretch.from);
    }
    return { type: 'heard', verdict, candidate, voiced, db, print: checks ? print : null };
  }

  function one(
    frame: Float32Array,
    asItCame: Float32Array | undefined,
    chance: number,
  ): readonly PipelineEvent[] {
    keep(
      kept,
      frame.map((sample, i) => sample + AS_IT_CAME * (asItCame?.[i] ?? 0)),
      KEPT,
    );
    keep(voices, chance, KEPT);
    keep(levels, room.at(-1) ?? QUIETEST_DB, KEPT);
    const { state: next, event } = endpoint(state, level(frame), roomDb - WELL_BELOW_DB);
    state = next;
    switch (event?.type) {
      case undefined:
        return [];
      case 'began':
        return [{ type: 'speech' }];
      case 'too long':
        talkedUntil = event.at;
        noise.drop(LONGEST_FRAMES);
        return [
          {
            type: 'heard',
            verdict: 'nothing',
            candidate: null,
            voiced: 0,
            db: roomDb,
            print: null,
          },
        ];
      case 'pausing':
        early = listen(event.stretch);
        return [];
      case 'ended':
        return [heard(event.stretch)];
      default: {
        const never: never = event;
        return never;
      }
    }
  }

  return (samples) => {
    const events: PipelineEvent[] = [];
    for (const frame of cut(up(finite(samples)))) {
      const came = rawLevel(frame);
      keep(room, came, ROOM_OVER);
      noise.add(came);
      if (denoised % ROOM_EVERY === 0) roomDb = quietOf(room);
      const untouched = framesAsItCame(downAsItCame(before));
      before = frame.slice();
      const chance = denoiser.process(frame);
      for (const [i, piece] of frames(down(frame)).entries()) {
        events.push(...one(piece, untouched[i], chance));
      }
      denoised += 1;
      if (denoised % LEVEL_EVERY === 0) {
        events.push({ type: 'level', db: roomDb, noiseDb: noise.now() });
      }
    }
    return events;
  };
}

/** One broken sample would spoil every one after it: the filters remember. */
function finite(samples: Float32Array): Float32Array {
  return samples.every(Number.isFinite)
    ? samples
    : samples.map((sample) => (Number.isFinite(sample) ? sample : 0));
}

function keep<T>(list: T[], one: T, most: number): void {
  list.push(one);
  if (list.length > most) list.shift();
}

function joined(frames: readonly Float32Array[]): Float32Array {
  const all = new Float32Array(frames.length * FRAME);
  for (const [i, frame] of frames.entries()) all.set(frame, i * FRAME);
  return all;
}
