import { guard } from '../uncertainty/guard';
import { EDGE_TOLERANCE_MM, targetPreloadMm, type Window } from '../windows';

/**
 * What pushrod lengths would do for a valve, or for the mean of a pool: whole nanometres, so that
 * ties between lengths are real ties. From above to is an empty reach.
 */
export interface Reach {
  /** Lengths that would prove it usable, both ends included. */
  readonly provenFromNm: number;
  readonly provenToNm: number;
  /** Lengths that would not prove it unusable, both ends included. */
  readonly possibleFromNm: number;
  readonly possibleToNm: number;
  /** The length that would bring it to its target. */
  readonly targetNm: number;
}

/** A nanometre is the tolerance of every edge: 1e-6 mm. */
export function nanometres(mm: number): number {
  return Math.round(mm / EDGE_TOLERANCE_MM);
}

export function millimetresOf(nm: number): number {
  return nm * EDGE_TOLERANCE_MM;
}

/**
 * The reach of a valve at zero lash at `zeroLashMm`, known to ± u: the zones of `limitZones`, laid
 * out along the length of the pushrod. u does not change with the length chosen, which is exact
 * beside a count.
 */
export function reachOf(zeroLashMm: number, uMm: number, w: Window): Reach {
  const g = nanometres(guard(uMm));
  const zero = nanometres(zeroLashMm);
  const lowest = nanometres(w.usableMinMm);
  const highest = nanometres(w.usableMaxMm);
  const bottom = nanometres(w.plungerTravelMm - w.keepOutBottomMm);
  // Lash and the keep-out are outside by themselves, so there the reach ends past the tolerance.
  return {
    provenFromNm: zero + Math.max(lowest + g, g + STEP_OUTSIDE_NM),
    provenToNm: zero + Math.min(highest - g, bottom - g - STEP_OUTSIDE_NM),
    possibleFromNm: zero + Math.max(lowest - g, STEP_OUTSIDE_NM - g),
    possibleToNm: zero + Math.min(highest + g, bottom + g - STEP_OUTSIDE_NM),
    targetNm: zero + nanometres(targetPreloadMm(w)),
  };
}

const STEP_OUTSIDE_NM = 2;

export function isProven({ provenFromNm, provenToNm }: Reach, lengthNm: number): boolean {
  return lengthNm >= provenFromNm && lengthNm <= provenToNm;
}

export function isPossible({ possibleFromNm, possibleToNm }: Reach, lengthNm: number): boolean {
  return lengthNm >= possibleFromNm && lengthNm <= possibleToNm;
}

export function distanceNm({ targetNm }: Reach, lengthNm: number): number {
  return Math.abs(lengthNm - targetNm);
}
