/** What is known of the room and the voice in it, and whether the two still go together. Plain data. */
export interface RoomWatch {
  /** How loud the last words came in, newest last, dB of full scale. */
  readonly words: readonly number[];
  readonly tooNoisy: boolean;
  /** Since when the room has been otherwise than it was last told; null while it is not. */
  readonly otherwiseSince: number | null;
}

/** What is worth telling the builder. */
export type RoomChange = 'room louder' | 'room quieter';

export const unheardRoom: RoomWatch = { words: [], tooNoisy: false, otherwiseSince: null };

/**
 * A voice less than this above the noise, dB: fewer than four words in five are expected to be heard
 * (docs/ear.md: the shop's noise at 10 dB measures 11 to 12 here).
 */
export const LEAST_ABOVE_DB = 11;
/** Quieter again only with this much to spare, dB. */
const TO_SPARE_DB = 3;
/** A change is told once it has stood so long, ms: a grinder's short burst is none. */
const LOUDER_FOR_MS = 4000;
const QUIETER_FOR_MS = 8000;
/** Words from which the voice's own level is taken. */
const WORDS = 9;
/** Fewer say too little. */
const LEAST_WORDS = 3;

/** A word was taken, this loud, dB of full scale. */
export function wordHeard(watch: RoomWatch, db: number): RoomWatch {
  return { ...watch, words: [...watch.words, db].slice(-WORDS) };
}

/** The room's noise, dB of full scale, `at` by the clock, ms. Told once a change has stood. */
export function roomHeard(
  watch: RoomWatch,
  noiseDb: number,
  at: number,
): { readonly watch: RoomWatch; readonly told: RoomChange | null } {
  const voiceDb = voiceLevel(watch);
  if (voiceDb === null) return { watch, told: null };
  const above = voiceDb - noiseDb;
  const otherwise = watch.tooNoisy ? above >= LEAST_ABOVE_DB + TO_SPARE_DB : above < LEAST_ABOVE_DB;
  if (!otherwise) return { watch: { ...watch, otherwiseSince: null }, told: null };
  const since = watch.otherwiseSince ?? at;
  const stands = at - since >= (watch.tooNoisy ? QUIETER_FOR_MS : LOUDER_FOR_MS);
  if (!stands) return { watch: { ...watch, otherwiseSince: since }, told: null };
  return {
    watch: { ...watch, tooNoisy: !watch.tooNoisy, otherwiseSince: null },
    told: watch.tooNoisy ? 'room quieter' : 'room louder',
  };
}

/** How loud the builder's words come in, dB of full scale; null before there are enough. */
export function voiceLevel({ words }: RoomWatch): number | null {
  if (words.length < LEAST_WORDS) return null;
  return [...words].sort((a, b) => a - b)[Math.floor(words.length / 2)] ?? null;
}
