import type { Tier } from './expected';
import type { Candidate } from './recognition';
import type { Opinion } from './voicePrints';

/** What is made of a candidate. */
export type Verdict =
  | 'taken'
  /** It may have been that: never taken, said to be missed. */
  | 'missed'
  /** Noise, or talk that is no phrase. */
  | 'nothing';

/** What a stretch of sound was like besides its words. */
export interface Soundness {
  /** Frames that surely hold a voice. */
  readonly voiced: number;
  /** It came close upon other speech: no mark is passed that soon. */
  readonly crowded: boolean;
  /** What the builder's own words say of it. */
  readonly opinion: Opinion;
}

/** Fit from which a phrase is taken, nats a frame: what was less likely has to fit the better. */
export const TAKEN_FROM: Readonly<Record<Tier, number>> = {
  expected: -1.5,
  ahead: -0.5,
  near: -0.5,
  far: -0.3,
  remote: 0.2,
  'not now': 0.1,
};
/** Less fit than taken by up to this is missed, where the phrase was likely. */
const MISSED_WITHIN = 0.4;
/** A frame surely holds a voice where the denoiser gives it at least this chance. */
export const SURELY_VOICED = 0.8;
/** Frames of sure voice that any word has: of clicks and ratchets few have as many. */
export const LEAST_VOICED = 10;
/** What skips a count has to be surer: most that clicks are taken for is the one after the next. */
const LEAST_VOICED_AHEAD = 17;
/** In the middle of talk, or as the end of a word cut in two, it has to fit this much better. */
const CROWDED_BY = 0.8;
/** The builder's own words turn what is as near as this, nats a frame, and nothing clearer. */
export const SWAY: Readonly<Record<Opinion, number>> = { agrees: 0.5, disagrees: -0.5, none: 0 };
/** A phrase of so many words takes no longer, frames of 10 ms, the frames around it counted in. */
const longestFor = (words: number) => 60 + 55 * words;
/** Shorter than any word, the frames around it counted in. */
const SHORTEST = 32;

/** Whether a candidate is taken: the likelier it was, the less is asked of it. */
export function judge({ branch, fit, frames }: Candidate, soundness: Soundness): Verdict {
  const { voiced, crowded, opinion } = soundness;
  if (voiced < LEAST_VOICED || frames < SHORTEST) return 'nothing';
  if (frames > longestFor(branch.words.split(' ').length)) return 'nothing';
  const { tier } = branch;
  if (tier === 'ahead' && voiced < LEAST_VOICED_AHEAD) return 'nothing';
  const over = fit - TAKEN_FROM[tier] - (crowded ? CROWDED_BY : 0) + SWAY[opinion];
  if (over >= 0) return 'taken';
  return tier === 'expected' && !crowded && over >= -MISSED_WITHIN ? 'missed' : 'nothing';
}
