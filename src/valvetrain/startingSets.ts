import { mmFromThou } from './figures';
import type { LifterKind, Window } from './windows';

export type Evidence = 'published' | 'common practice';

/**
 * An example window to start from. None is applied before the lifter kind is chosen, and each is
 * shown with its basis and confirmed by the builder against the lifter maker's own figures.
 */
export interface StartingSet {
  readonly id: string;
  readonly name: string;
  readonly window: Window;
  /** What the usable limits rest on. */
  readonly evidence: Evidence;
  /** Where each figure comes from, in a sentence or two. */
  readonly basis: string;
  /** The window is too narrow for counted turns to be trusted alone. */
  readonly wantsDialIndicator: boolean;
}

/** One set per lifter kind. Plunger travels and keep-outs are from memory throughout. */
export const startingSets: readonly StartingSet[] = [
  {
    id: 'long-travel-roller',
    name: 'Long-travel hydraulic roller',
    window: windowFromThou('long-travel hydraulic roller', 200, 20, [75, 110], [80, 100]),
    evidence: 'common practice',
    basis:
      'Common practice, no published source: 1.91 to 2.79 mm (0.075 to 0.110 in) usable, 2.03 to 2.54 mm (0.080 to 0.100 in) preferred. Plunger travel of 5.08 mm (0.200 in) and keep-outs of 0.51 mm (0.020 in) are examples: confirm them against the lifter maker’s figures.',
    wantsDialIndicator: false,
  },
  {
    id: 'standard-travel-roller',
    name: 'Standard-travel hydraulic roller',
    window: windowFromThou('standard-travel hydraulic roller', 150, 15, [20, 60], [20, 60]),
    evidence: 'published',
    basis:
      'A trade magazine (Engine Builder, June 2011) gives 0.51 to 1.52 mm (0.020 to 0.060 in) for most engines; no preferred band is known here, so the whole is preferred. Plunger travel of 3.81 mm (0.150 in) and keep-outs of 0.38 mm (0.015 in) are examples: confirm them against the lifter maker’s figures.',
    wantsDialIndicator: false,
  },
  {
    id: 'short-travel-roller',
    name: 'Short-travel hydraulic roller',
    window: windowFromThou('short-travel hydraulic roller', 70, 10, [25, 45], [30, 40]),
    evidence: 'common practice',
    basis:
      'Common practice, no published source: aim at about 0.89 mm (0.035 in), with a dial indicator. The limits either side of it, plunger travel of 1.78 mm (0.070 in) and keep-outs of 0.25 mm (0.010 in) are examples: confirm them against the lifter maker’s figures.',
    wantsDialIndicator: true,
  },
  {
    id: 'flat-tappet',
    name: 'Hydraulic flat tappet',
    window: windowFromThou('hydraulic flat tappet', 150, 15, [20, 60], [20, 60]),
    evidence: 'published',
    basis:
      'A trade magazine (Engine Builder, June 2011) gives 0.51 to 1.52 mm (0.020 to 0.060 in) for most engines; no preferred band is known here, so the whole is preferred. Some manuals say instead three quarters of a turn, or one turn, past zero lash. Plunger travel of 3.81 mm (0.150 in) and keep-outs of 0.38 mm (0.015 in) are examples: confirm them against the lifter maker’s figures.',
    wantsDialIndicator: false,
  },
];

type Band = readonly [minThou: number, maxThou: number];

function windowFromThou(
  lifter: LifterKind,
  travelThou: number,
  keepOutThou: number,
  usable: Band,
  preferred: Band,
): Window {
  return {
    lifter,
    plungerTravelMm: mmFromThou(travelThou),
    keepOutTopMm: mmFromThou(keepOutThou),
    keepOutBottomMm: mmFromThou(keepOutThou),
    usableMinMm: mmFromThou(usable[0]),
    usableMaxMm: mmFromThou(usable[1]),
    preferredMinMm: mmFromThou(preferred[0]),
    preferredMaxMm: mmFromThou(preferred[1]),
  };
}
