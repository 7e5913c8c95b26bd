import { expansionPerK, type MaterialId } from './materials';

/** A piece of the valve train that grows: its length along the pushrod and its mean rise. */
export interface WarmPiece {
  readonly material: MaterialId;
  readonly lengthMm: number;
  /** How much warmer than when it was measured, kelvin, the mean over its length. */
  readonly riseK: number;
}

/** A valve stem between its seat and its tip. Its expansion is entered: valve steels vary widely. */
export interface WarmStem {
  readonly lengthMm: number;
  readonly riseK: number;
  readonly expansionPerK: number;
}

export interface HotAssumptions {
  /** Block, head and stands between lifter and rocker, in pieces where iron and aluminium mix. */
  readonly stack: readonly WarmPiece[];
  readonly pushrod: WarmPiece;
  /** Left out, the stem's growth is not estimated. */
  readonly stem?: WarmStem;
  readonly rockerRatio: number;
}

/** What warmth does to the preload: an estimate to be shown with its assumptions, never a correction. */
export interface HotEstimate {
  readonly assumptions: HotAssumptions;
  /** Growth of the stack takes preload away, mm, below 0 when it grows. */
  readonly byStackMm: number;
  /** Growth of the pushrod adds to it, mm. */
  readonly byPushrodMm: number;
  /** Growth of the stem lifts the valve tip and adds growth/R, mm. */
  readonly byStemMm: number;
  /** The sum: preload when hot less preload when measured, mm. */
  readonly preloadChangeMm: number;
}

/** An exhaust stem to start from: 10e-6/K, its mean 225 K warmer (from memory). */
export const exhaustStemStart = { riseK: 225, expansionPerK: 10e-6 } as const;

/**
 * How the preload changes from cold to warm by linear expansion, ΔL = α·L·ΔT. Derived. Exhaust stem
 * growth acts against an aluminium stack and can be as large.
 * @throws RangeError unless the ratio is above 0 and every length and rise finite.
 */
export function hotEstimate(assumptions: HotAssumptions): HotEstimate {
  const { stack, pushrod, stem, rockerRatio } = assumptions;
  if (!Number.isFinite(rockerRatio) || rockerRatio <= 0) {
    throw new RangeError(`A rocker ratio must be above 0; got ${rockerRatio}.`);
  }
  const byStackMm = -stack.reduce((sum, piece) => sum + growthMm(piece), 0);
  const byPushrodMm = growthMm(pushrod);
  const byStemMm = stem === undefined ? 0 : stemGrowthMm(stem) / rockerRatio;
  const preloadChangeMm = byStackMm + byPushrodMm + byStemMm;
  if (!Number.isFinite(preloadChangeMm)) throw new RangeError('A length or a rise is missing.');
  return { assumptions, byStackMm, byPushrodMm, byStemMm, preloadChangeMm };
}

function growthMm({ material, lengthMm, riseK }: WarmPiece): number {
  return expansionPerK[material] * lengthMm * riseK;
}

function stemGrowthMm(stem: WarmStem): number {
  return stem.expansionPerK * stem.lengthMm * stem.riseK;
}
