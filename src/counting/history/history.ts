import {
  AGREEMENT_FACTOR,
  type Offer,
  OUTLIER_CUTOFF,
  outliers,
  rootSumOfSquares,
  type ValveKind,
} from '#valvetrain';
import { LENGTH_GRID_MM } from '../setUp';
import type { JobLengths, KindLengths } from './jobLengths';

/** Lengths from the shortest to the longest, mm. */
export interface LengthRange {
  readonly leastMm: number;
  readonly mostMm: number;
}

/** The lengths the intakes or the exhausts needed, this job's against those of the past, mm. */
export interface KindHistory {
  readonly valve: ValveKind;
  /** Past jobs that measured any of them. */
  readonly jobs: number;
  readonly needed: LengthRange;
  readonly medianMm: number;
  readonly spreadMm: number;
  readonly nowMm: number;
  /** Longer than the median of the past by this; below 0 shorter. */
  readonly offMm: number;
  /** How far off is nothing unusual. */
  readonly allowedMm: number;
  readonly isUnusual: boolean;
}

/** What past jobs of the same recipe say beside this one. It warns; it never gives a length. */
export interface History {
  readonly jobs: number;
  /** The lengths past jobs took. */
  readonly took: LengthRange | null;
  /** The lengths this job asks for. */
  readonly asks: LengthRange | null;
  /** Only kinds of which enough past jobs tell. */
  readonly kinds: readonly KindHistory[];
  readonly isUnusual: boolean;
}

/** With fewer past jobs than this nothing is called unusual. */
export const FEWEST_PAST_JOBS = 3;

/**
 * This job's lengths beside those of past jobs of its recipe.
 *
 * Judged are the lengths needed, intakes and exhausts apart, each job's mean brought to the preload that
 * this job aims at. Unusual is what lies further from the median of the past than each of: 3.5 robust
 * spreads of the past (as with an outlier among valves), 1.96 u of the difference, and half a step of
 * the lengths that can be bought, within which the order stays the same.
 */
export function historyOf(now: JobLengths, past: readonly JobLengths[], offer: Offer): History {
  const kinds = now.kinds.flatMap((kind) => kindHistory(kind, past, offer) ?? []);
  return {
    jobs: past.length,
    took: rangeOf(past.flatMap(({ lengthsMm }) => lengthsMm)),
    asks: rangeOf(now.lengthsMm),
    kinds,
    isUnusual: kinds.some((kind) => kind.isUnusual),
  };
}

function kindHistory(
  now: KindLengths,
  past: readonly JobLengths[],
  offer: Offer,
): KindHistory | null {
  const same = past.flatMap(({ kinds }) => kinds.filter(({ valve }) => valve === now.valve));
  const neededMm = same.map(({ zeroLashMm }) => zeroLashMm + now.targetMm);
  const judged = outliers(
    same.map(({ ownMm }, place) => ({ preloadMm: neededMm[place] ?? 0, ownMm })),
  );
  const needed = rangeOf(neededMm);
  if (!judged.judged || needed === null || same.length < FEWEST_PAST_JOBS) return null;
  const nowMm = now.zeroLashMm + now.targetMm;
  const commonMm = same.reduce((sum, kind) => sum + kind.commonMm, 0) / same.length;
  const uMm = rootSumOfSquares(now.ownMm, judged.spreadMm, now.commonMm - commonMm);
  const allowedMm = Math.max(
    OUTLIER_CUTOFF * judged.spreadMm,
    AGREEMENT_FACTOR * uMm,
    stepOf(offer) / 2,
  );
  const offMm = nowMm - judged.medianMm;
  return {
    valve: now.valve,
    jobs: same.length,
    needed,
    medianMm: judged.medianMm,
    spreadMm: judged.spreadMm,
    nowMm,
    offMm,
    allowedMm,
    isUnusual: Math.abs(offMm) > allowedMm,
  };
}

function stepOf(offer: Offer): number {
  return offer.kind === 'grid' ? offer.stepMm : LENGTH_GRID_MM;
}

function rangeOf(lengths: readonly number[]): LengthRange | null {
  if (lengths.length === 0) return null;
  return { leastMm: Math.min(...lengths), mostMm: Math.max(...lengths) };
}
