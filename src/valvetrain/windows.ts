/**
 * Hydraulic lifters as the trade sorts them: by follower, and rollers by plunger travel. The kind
 * only picks which starting set is offered; every figure is then the builder's own.
 */
export type LifterKind =
  | 'long-travel hydraulic roller'
  | 'standard-travel hydraulic roller'
  | 'short-travel hydraulic roller'
  | 'hydraulic flat tappet';

export const lifterKinds: readonly LifterKind[] = [
  'long-travel hydraulic roller',
  'standard-travel hydraulic roller',
  'short-travel hydraulic roller',
  'hydraulic flat tappet',
];

/**
 * Where the plunger may stand. Every figure is mm of preload, measured down from the plunger's
 * top stop (its retainer); the bottom stop is at `plungerTravelMm`.
 */
export interface Window {
  readonly lifter: LifterKind;
  readonly plungerTravelMm: number;
  /** Depth below the top stop that the usable limits must stay out of. */
  readonly keepOutTopMm: number;
  /** Height above the bottom stop from which a plunger is near bottom. */
  readonly keepOutBottomMm: number;
  /** Limits that hurt when crossed, inclusive. */
  readonly usableMinMm: number;
  readonly usableMaxMm: number;
  /** The band aimed at, inclusive: a target, not a limit. */
  readonly preferredMinMm: number;
  readonly preferredMaxMm: number;
}

/** Slack in every comparison with an edge, so that a figure meant to lie on it does. */
export const EDGE_TOLERANCE_MM = 1e-6;

/** The preload aimed at, mm: the middle of the preferred band. */
export function targetPreloadMm(w: Window): number {
  return (w.preferredMinMm + w.preferredMaxMm) / 2;
}
