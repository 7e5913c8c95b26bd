import { type Adjuster, travelPerQuarterMm } from '../lever';
import { rectangular } from './rectangular';

/** What the travel per quarter turn rests on. */
export type TravelBasis = 'geometry' | 'measured' | 'dial readings' | 'two test lengths';

/**
 * k: pushrod-side travel per quarter turn, mm, and its standard uncertainty. One k serves every
 * valve of a set-up, so its error is common to all of them and to every repeat.
 */
export interface Travel {
  readonly perQuarterMm: number;
  readonly uMm: number;
  readonly basis: TravelBasis;
}

/** Half-widths of k, relative, taken as rectangular (common practice, no source). */
export const TRAVEL_HALF_WIDTH = { geometry: 0.07, measured: 0.02 } as const;

/**
 * The travel of an adjuster: ±7 % by pitch and lever, ±2 % once it was measured, both rectangular.
 * Travel fitted to dial readings, or found from two test lengths, carries its own u: see
 * `travelFromDial` and `travelFromTwoLengths`.
 */
export function travelOf(a: Adjuster): Travel {
  const basis = a.measuredTravelPerQuarterMm === undefined ? 'geometry' : 'measured';
  const perQuarterMm = travelPerQuarterMm(a);
  return { perQuarterMm, uMm: perQuarterMm * rectangular(TRAVEL_HALF_WIDTH[basis]), basis };
}
