import { AGREEMENT_FACTOR } from '../uncertainty/guard';
import { rectangular, rootSumOfSquares } from '../uncertainty/rectangular';
import { type LengthTerm, lengthChange, type PartsChange } from './partsChange';

/** A length, mm, and how far it may be off either way, mm; 0 where nothing is known to be. */
export interface GiveOrTake {
  readonly mm: number;
  readonly giveMm: number;
}

/** A change of parts and how far its figure may be off either way, mm; 0 where that was not given. */
export interface PlannedChange {
  readonly change: PartsChange;
  readonly giveMm: number;
}

/** Parts to be changed, before any of them is bought. */
export interface PartsPlan {
  readonly changes: readonly PlannedChange[];
  /** Ratio of the rockers to be used. */
  readonly rockerRatio: number;
  /** How far that ratio may be off either way; 0 where that was not given. */
  readonly ratioGive: number;
  /** Preload with the present parts and the present pushrod; null where it is not known. */
  readonly presentPreload: GiveOrTake | null;
  /** Preload wanted with the new parts, mm; null for as much as now. */
  readonly targetMm: number | null;
}

export interface PlannedTerm extends LengthTerm {
  /** How far `longerMm` may be off either way, by the term's own figure and by the ratio, mm. */
  readonly giveMm: number;
}

export interface PlannedLength {
  readonly terms: readonly PlannedTerm[];
  /** Longer the pushrod must be for the same preload: the sum of the terms. */
  readonly byParts: GiveOrTake;
  /** Longer for more preload than now, one to one; null where either preload is not known. */
  readonly byPreload: GiveOrTake | null;
  /** Longer in all than the present pushrod. */
  readonly longer: GiveOrTake;
  /** Preload with the new parts on the present pushrod; null where the present one is not known. */
  readonly keptPreload: GiveOrTake | null;
}

/**
 * What a plan does to the pushrod's length and to the preload, with how sure it is. Derived: the terms are
 * `lengthChange`, lengthening by x adds x of preload, and the shares are independent and rectangular (JCGM
 * 100:2008, 4.3.7 and 5.1.2), but for the ratio, whose error is common to every term that goes by the lever.
 *
 * @throws RangeError for a ratio that is not above 0, a figure that is not finite, or a ± below 0.
 */
export function plannedLength(plan: PartsPlan): PlannedLength {
  const { changes, rockerRatio, ratioGive, presentPreload, targetMm } = plan;
  const { terms, longerMm } = lengthChange(
    changes.map(({ change }) => change),
    rockerRatio,
  );
  const own = terms.map(({ factor }, at) => Math.abs(factor) * (changes[at]?.giveMm ?? 0));
  const slopes = terms.map((term) => ratioSlopeMm(term, rockerRatio));
  const ofRatio = slopes.reduce((sum, slope) => sum + slope, 0) * ratioGive;
  const ofParts = [...own, Math.abs(ofRatio)];
  const byParts = { mm: longerMm, giveMm: together(ofParts) };
  const withPresent = [...ofParts, presentPreload?.giveMm ?? 0];
  const byPreload =
    presentPreload === null || targetMm === null
      ? null
      : { mm: targetMm - presentPreload.mm, giveMm: together([presentPreload.giveMm]) };
  return {
    terms: terms.map((term, at) => ({
      ...term,
      giveMm: together([own[at] ?? 0, Math.abs(slopes[at] ?? 0) * ratioGive]),
    })),
    byParts,
    byPreload,
    longer:
      byPreload === null ? byParts : { mm: longerMm + byPreload.mm, giveMm: together(withPresent) },
    keptPreload: presentPreload && {
      mm: presentPreload.mm - longerMm,
      giveMm: together(withPresent),
    },
  };
}

/**
 * The nearest length that can be had, mm: whole multiples of the step. Half-way it is the shorter, which
 * can't open a valve as it is seated.
 * @throws RangeError unless the step is finite and above 0.
 */
export function nearestLengthMm(lengthMm: number, stepMm: number): number {
  if (!(stepMm > 0) || !Number.isFinite(stepMm)) {
    throw new RangeError(`A step between lengths must be above 0; got ${stepMm}.`);
  }
  const HALF_WAY = 0.5 - 1e-9;
  return Math.floor(lengthMm / stepMm + HALF_WAY) * stepMm;
}

/** How much longer a term asks for each 1 of ratio more, mm. */
function ratioSlopeMm({ change, figureMm }: LengthTerm, rockerRatio: number): number {
  const perRatio = figureMm / rockerRatio ** 2;
  switch (change.kind) {
    case 'pivot shim':
      return -perRatio;
    case 'valve tip higher, pivot fixed':
      return perRatio;
    default:
      return 0;
  }
}

/** Half-widths taken together: two-sided 95 %, and never more than all of them at their ends. */
function together(halfWidthsMm: readonly number[]): number {
  const u = rootSumOfSquares(...halfWidthsMm.map(rectangular));
  const atTheirEnds = halfWidthsMm.reduce((sum, half) => sum + half, 0);
  return Math.min(AGREEMENT_FACTOR * u, atTheirEnds);
}
