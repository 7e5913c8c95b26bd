import { rectangular, rootSumOfSquares } from './rectangular';
import type { Travel } from './travel';
import { DIAL_HALF_WIDTH_MM } from './uncertain';

/** One dial reading after a known count from zero lash. */
export interface DialOverCount {
  readonly quarters: number;
  readonly travelMm: number;
}

export interface DialTerms {
  /** How far the dial may be off, mm either way. */
  readonly dialHalfWidthMm: number;
  /** How far the mark may have stood from the quarter called, quarter turns either way. */
  readonly markHalfWidthQuarters: number;
}

/** From memory: an hour of the clock is a third of a quarter, and the mark is set to a quarter of that. */
export const DIAL_TERMS: DialTerms = {
  dialHalfWidthMm: DIAL_HALF_WIDTH_MM,
  markHalfWidthQuarters: 0.08,
};

export interface FittedTravel extends Travel {
  /** The readings' distances from the fitted line, mm, in their order. */
  readonly residualsMm: readonly number[];
  /**
   * Places of readings further from the line than 3 standard uncertainties of one reading: the
   * dial and the count contradict each other there.
   */
  readonly contradicting: readonly number[];
}

/**
 * Travel per quarter turn from dial readings over known counts: least squares through zero,
 * k = Σ q·t / Σ q², u(k) = s / √Σ q². For s the larger of two: what dial and mark are stated to be
 * good for, and (from three readings on) the scatter about the line with one degree of freedom
 * spent. Textbook regression; the choice of the larger is ours.
 *
 * @throws RangeError unless every count is above 0 and every travel finite, and k comes out above 0.
 */
export function travelFromDial(
  readings: readonly DialOverCount[],
  terms: DialTerms = DIAL_TERMS,
): FittedTravel {
  if (readings.length === 0) throw new RangeError('No dial reading to go by.');
  for (const { quarters, travelMm } of readings) {
    if (!(quarters > 0) || !Number.isFinite(quarters) || !Number.isFinite(travelMm)) {
      throw new RangeError(`No dial reading over a count: ${travelMm} mm at ${quarters} quarters.`);
    }
  }
  const squares = readings.reduce((sum, { quarters }) => sum + quarters ** 2, 0);
  const products = readings.reduce((sum, { quarters, travelMm }) => sum + quarters * travelMm, 0);
  const perQuarterMm = products / squares;
  if (!(perQuarterMm > 0)) throw new RangeError(`Travel must come out above 0: ${perQuarterMm}.`);
  const residualsMm = readings.map(({ quarters, travelMm }) => travelMm - perQuarterMm * quarters);
  const statedMm = rootSumOfSquares(
    rectangular(terms.dialHalfWidthMm),
    perQuarterMm * rectangular(terms.markHalfWidthQuarters),
  );
  const scatterMm =
    readings.length < 3 ? 0 : rootSumOfSquares(...residualsMm) / Math.sqrt(readings.length - 1);
  return {
    perQuarterMm,
    uMm: Math.max(statedMm, scatterMm) / Math.sqrt(squares),
    basis: 'dial readings',
    residualsMm,
    contradicting: residualsMm.flatMap((mm, place) => (Math.abs(mm) > 3 * statedMm ? [place] : [])),
  };
}
