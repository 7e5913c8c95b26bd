import { QUIETEST_DB } from './bandLevel';

/** Frames of 10 ms the noise is taken from: 20 s. */
const OVER = 2000;

/** The mean power of what is no speech, over the last 20 s: blows count by their loudness. */
export interface NoiseLevel {
  /** One more frame's level, dB of full scale. */
  add(db: number): void;
  /** The last so many frames were speech: they are not of the room. */
  drop(frames: number): void;
  /** dB of full scale. */
  now(): number;
}

/** Nothing heard yet. */
export function noiseLevel(): NoiseLevel {
  let levels: number[] = [];
  return {
    add(db) {
      levels.push(db);
      if (levels.length > OVER * 1.5) levels = levels.slice(-OVER);
    },
    drop(frames) {
      levels.length = Math.max(0, levels.length - frames);
    },
    now() {
      const last = levels.slice(-OVER);
      if (last.length === 0) return QUIETEST_DB;
      const power = last.reduce((sum, db) => sum + 10 ** (db / 10), 0) / last.length;
      return Math.max(QUIETEST_DB, 10 * Math.log10(power + 1e-12));
    },
  };
}
