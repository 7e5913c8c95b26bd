import { GUARD_FACTOR } from './guard';

/** The preloads, mm, between which a limit can't be told; outside them it is proven. */
export interface GuardEdges {
  readonly fromMm: number;
  readonly toMm: number;
}

/**
 * Where the guard meets a limit, for counts of the same terms: the two preloads p with
 * |p − L| = 1.65 √(own² + (c·p)²). The guard grows with p, so they do not lie evenly about L.
 * Derived: the roots of p²(1 − G²c²) − 2Lp + L² − G²·own² = 0.
 *
 * @param ownMm k·u(q), the share of one count (or of the mean of several), mm.
 * @param commonRelative c = u(k)/k; must be below 1/1.65.
 * @throws RangeError for a travel so uncertain that no preload could be proven.
 */
export function guardEdges(limitMm: number, ownMm: number, commonRelative: number): GuardEdges {
  const squareTerm = 1 - (GUARD_FACTOR * commonRelative) ** 2;
  if (!(squareTerm > 0)) {
    throw new RangeError(`With the travel uncertain by ${commonRelative} nothing can be proven.`);
  }
  const spread = Math.sqrt(
    limitMm * limitMm - squareTerm * (limitMm * limitMm - (GUARD_FACTOR * ownMm) ** 2),
  );
  return { fromMm: (limitMm - spread) / squareTerm, toMm: (limitMm + spread) / squareTerm };
}
