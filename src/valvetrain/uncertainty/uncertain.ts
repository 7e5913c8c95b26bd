import { type CountTerms, meanCountUncertaintyQuarters } from './count';
import { guard } from './guard';
import { rectangular, rootSumOfSquares } from './rectangular';
import type { Travel } from './travel';

/** A preload, mm, with its standard uncertainty in two shares kept apart. */
export interface UncertainPreload {
  readonly preloadMm: number;
  /** This reading's own share: landing and zero. Repeats shrink it. */
  readonly ownMm: number;
  /**
   * The share it has in common with every valve counted by the same travel per quarter turn:
   * q·u(k). No repeat shrinks it, and it cancels in differences. 0 for a dial reading.
   */
  readonly commonMm: number;
}

/**
 * Preload of a valve from its count, or the mean of repeated counts that each found zero afresh:
 * p = q·k, u(p)² = k²u(q)² + q²u(k)².
 * @param quarters the count, or the mean of the counts, in quarter turns; 0 or more.
 * @param counts one entry a count.
 * @throws RangeError for no counts, or a count below 0 or not finite.
 */
export function countedPreload(
  quarters: number,
  counts: readonly CountTerms[],
  travel: Travel,
): UncertainPreload {
  if (!Number.isFinite(quarters) || quarters < 0) {
    throw new RangeError(`A count must be 0 or more; got ${quarters}.`);
  }
  return {
    preloadMm: quarters * travel.perQuarterMm,
    ownMm: travel.perQuarterMm * meanCountUncertaintyQuarters(counts),
    commonMm: quarters * travel.uMm,
  };
}

/**
 * How far a dial indicator set by hand on the plunger or pushrod may be off, mm either way: a lean of the
 * stem, its seat, its divisions (from memory; the builder may state another).
 */
export const DIAL_HALF_WIDTH_MM = 0.04;

/**
 * Preload read straight off a dial indicator, or the mean of n such readings set up afresh.
 * Nothing of it is common with counted valves.
 * @throws RangeError unless `readings` is a whole number, 1 or more.
 */
export function dialPreload(
  travelMm: number,
  readings = 1,
  halfWidthMm = DIAL_HALF_WIDTH_MM,
): UncertainPreload {
  if (!Number.isSafeInteger(readings) || readings < 1) {
    throw new RangeError(`Dial readings are a whole number, 1 or more; got ${readings}.`);
  }
  const ownMm = rectangular(halfWidthMm) / Math.sqrt(readings);
  return { preloadMm: travelMm, ownMm, commonMm: 0 };
}

/** Combined standard uncertainty u(p), mm: what `verdict` takes. */
export function uncertaintyMm({ ownMm, commonMm }: UncertainPreload): number {
  return rootSumOfSquares(ownMm, commonMm);
}

/** The guard 1.65 u of a preload, mm: half the band a gauge draws about it. */
export function guardMm(preload: UncertainPreload): number {
  return guard(uncertaintyMm(preload));
}
