/**
 * How many standard uncertainties a number must lie inside a limit to be proven inside it, or
 * beyond it to be proven outside: one-sided 95 % of a normal distribution, 1.645, rounded up.
 * After the decision rule of ISO 14253-1:2017 (edition from memory; the 1998 rule used U = 2u).
 */
export const GUARD_FACTOR = 1.65;

/** The guard g = 1.65 u, in the unit of `u`. */
export function guard(u: number): number {
  return GUARD_FACTOR * u;
}

/** Two-sided 95 % of a normal distribution: two figures agree within this many u of their difference. */
export const AGREEMENT_FACTOR = 1.96;
