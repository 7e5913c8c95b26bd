import { EDGE_TOLERANCE_MM } from '../windows';

/** Why a valve may stand far from its fellows: faults of the reading first, a part last. */
export type OutlierCause =
  | 'off base circle'
  | 'plunger not up'
  | 'rocker not seated'
  | 'pushrod off its cup'
  | 'bent pushrod'
  | 'part';

/** The order to look in (common practice). */
export const outlierCauses: readonly OutlierCause[] = [
  'off base circle',
  'plunger not up',
  'rocker not seated',
  'pushrod off its cup',
  'bent pushrod',
  'part',
];

/**
 * How many robust standard deviations from the median make an outlier (Iglewicz and Hoaglin, 1993,
 * from memory).
 */
export const OUTLIER_CUTOFF = 3.5;

/** The median absolute deviation of a normal distribution times this is its standard deviation. */
const MAD_TO_SIGMA = 1.4826;

/** Fewer readings than this have no fellows to be judged by. */
const FEWEST = 3;

export interface Outlier<T> {
  readonly reading: T;
  /** From the median, mm: above 0 is more preload than its fellows. */
  readonly offMm: number;
  /** In order. A repeat comes before any part is blamed. */
  readonly causes: readonly OutlierCause[];
}

export type OutlierResult<T> =
  | { readonly judged: false; readonly because: 'fewer than three readings' }
  | {
      readonly judged: true;
      readonly medianMm: number;
      /** The spread they were judged by, as a standard deviation, mm. */
      readonly spreadMm: number;
      readonly outliers: readonly Outlier<T>[];
    };

/** A reading among its fellows, all brought to one pushrod length. */
export interface FellowReading {
  readonly preloadMm: number;
  /** Its own share of uncertainty; the common one moves all alike. */
  readonly ownMm: number;
}

/**
 * Readings far from those of like valves, by median and median absolute deviation (MAD), which an
 * outlier can't drag along. The spread is 1.4826 MAD, but never less than the readings' own median
 * uncertainty: with few or with coarse counts the MAD comes out small or 0, and readings would be
 * distrusted for lying one mark apart. Off by more than 3.5 spreads is an outlier.
 */
export function outliers<T extends FellowReading>(readings: readonly T[]): OutlierResult<T> {
  if (readings.length < FEWEST) return { judged: false, because: 'fewer than three readings' };
  const medianMm = median(readings.map(({ preloadMm }) => preloadMm));
  const deviations = readings.map(({ preloadMm }) => Math.abs(preloadMm - medianMm));
  const spreadMm = Math.max(
    MAD_TO_SIGMA * median(deviations),
    median(readings.map(({ ownMm }) => ownMm)),
  );
  const found = readings
    .map((reading) => ({ reading, offMm: reading.preloadMm - medianMm, causes: outlierCauses }))
    .filter(({ offMm }) => Math.abs(offMm) > OUTLIER_CUTOFF * spreadMm + EDGE_TOLERANCE_MM);
  return { judged: true, medianMm, spreadMm, outliers: found };
}

function median(values: readonly number[]): number {
  const sorted = values.toSorted((a, b) => a - b);
  const upper = sorted[Math.floor(sorted.length / 2)] ?? 0;
  const lower = sorted[Math.ceil(sorted.length / 2) - 1] ?? 0;
  return (lower + upper) / 2;
}
