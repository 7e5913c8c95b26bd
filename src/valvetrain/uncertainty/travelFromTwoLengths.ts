import { type CountTerms, meanCountUncertaintyQuarters } from './count';
import { rectangular, rootSumOfSquares } from './rectangular';
import type { Travel } from './travel';

/** A count, or the mean of its repeats, on one test pushrod. */
export interface CountOnLength {
  readonly quarters: number;
  readonly counts: readonly CountTerms[];
}

/** The same valve counted on both test pushrods. */
export interface OnTwoLengths {
  readonly onShorter: CountOnLength;
  readonly onLonger: CountOnLength;
}

export interface TravelFromLengths extends Travel {
  readonly valves: number;
  /**
   * Standard deviation of the valves' differences over the one their counts explain; 0 for a
   * single valve. Well above 1: something moved between the two lengths.
   */
  readonly scatterRatio: number;
}

/**
 * Travel per quarter turn without a dial: the longer pushrod adds its length difference of preload
 * to every valve, so k = ΔL / mean(q_longer − q_shorter). Sixteen valves 0.050 in apart with the usual
 * counts give it to about 2.3 % (derived).
 *
 * u(k)/k = √(u(mean Δq)²/Δq² + u(ΔL)²/ΔL²); for u(mean Δq) the larger of what the counts explain
 * and, from four valves on, the scatter found.
 *
 * @param lengthDifferenceMm longer less shorter test length, by one convention, above 0.
 * @param lengthHalfWidthMm how far that difference may be off, mm either way; 0 takes it as exact.
 * @throws RangeError when there is no valve, or the counts do not rise with the length.
 */
export function travelFromTwoLengths(
  valves: readonly OnTwoLengths[],
  lengthDifferenceMm: number,
  lengthHalfWidthMm = 0,
): TravelFromLengths {
  if (valves.length === 0) throw new RangeError('No valve was counted on both lengths.');
  if (!(lengthDifferenceMm > 0) || !Number.isFinite(lengthDifferenceMm)) {
    throw new RangeError(`The lengths must differ; got ${lengthDifferenceMm} mm.`);
  }
  const n = valves.length;
  const rises = valves.map(({ onShorter, onLonger }) => onLonger.quarters - onShorter.quarters);
  const meanRise = rises.reduce((sum, rise) => sum + rise, 0) / n;
  if (!(meanRise > 0)) {
    throw new RangeError(`The counts do not rise with the length; they differ by ${meanRise}.`);
  }
  const explained = valves.map(({ onShorter, onLonger }) =>
    rootSumOfSquares(
      meanCountUncertaintyQuarters(onShorter.counts),
      meanCountUncertaintyQuarters(onLonger.counts),
    ),
  );
  const explainedOne = rootSumOfSquares(...explained) / Math.sqrt(n);
  const scatterOne =
    n < 2 ? 0 : rootSumOfSquares(...rises.map((rise) => rise - meanRise)) / Math.sqrt(n - 1);
  const uRise = Math.max(explainedOne, n < 4 ? 0 : scatterOne) / Math.sqrt(n);
  const perQuarterMm = lengthDifferenceMm / meanRise;
  const relative = rootSumOfSquares(
    uRise / meanRise,
    rectangular(lengthHalfWidthMm) / lengthDifferenceMm,
  );
  return {
    perQuarterMm,
    uMm: perQuarterMm * relative,
    basis: 'two test lengths',
    valves: n,
    scatterRatio: explainedOne > 0 ? scatterOne / explainedOne : 0,
  };
}
