import { AGREEMENT_FACTOR } from './guard';
import { rootSumOfSquares } from './rectangular';
import type { UncertainPreload } from './uncertain';

export interface Agreement {
  readonly agrees: boolean;
  /** b − a, less what a difference of the test lengths accounts for, mm. */
  readonly differenceMm: number;
  /** How far they may differ and still agree: 1.96 u of the difference, mm. */
  readonly allowedMm: number;
}

/**
 * Whether two preloads of one valve agree: repeats, a count and a dial reading, a prediction and its final
 * check. They need not be equal, only within 1.96 u of their difference. Counts by the same travel share
 * its error, so only what is left of it after subtracting counts: u² = own_a² + own_b² +
 * (common_a − common_b)².
 *
 * @param lengthDifferenceMm test length of b less that of a, both by one convention: lengthening
 *   by x adds x of preload.
 */
export function agree(a: UncertainPreload, b: UncertainPreload, lengthDifferenceMm = 0): Agreement {
  const differenceMm = b.preloadMm - a.preloadMm - lengthDifferenceMm;
  const uMm = rootSumOfSquares(a.ownMm, b.ownMm, b.commonMm - a.commonMm);
  const allowedMm = AGREEMENT_FACTOR * uMm;
  return { agrees: Math.abs(differenceMm) <= allowedMm, differenceMm, allowedMm };
}
