import {
  type CountedValve,
  type CountTerms,
  guardMm,
  type Settling,
  settles,
  type UncertainPreload,
  uncertaintyMm,
  type VerdictResult,
  verdict,
  type Window,
  ZERO_FEEL_QUARTERS,
} from '#valvetrain';
import { type CountedReading, readingResolution48 } from '../readings';
import type { SetUp } from '../setUp';

/** How sure a reading is. Lengths in mm. */
export interface Sureness {
  /** Standard uncertainty, its share of this reading alone, and the one common to all valves. */
  readonly uMm: number;
  readonly ownMm: number;
  readonly commonMm: number;
  /** Half the band: inside a limit by this much is proven, one-sided 95 %. */
  readonly guardMm: number;
  /** The nearest limit that hurts and can't be told, and what lies across it; null where all is proven. */
  readonly against: NonNullable<VerdictResult['against']> | null;
  /** What would settle it; null where nothing needs settling, or nothing but the dial is known. */
  readonly settling: Settling | null;
}

/** What limits a counted reading: how finely it was read, and how its zero was felt. */
export function countTerms(reading: CountedReading, { zeroFeel }: SetUp): CountTerms {
  return {
    resolution48: readingResolution48(reading),
    zeroFeelQuarters: ZERO_FEEL_QUARTERS[zeroFeel ?? 'up-and-down play'],
  };
}

/** How sure a preload is, beside the limits of its window; `counted` where turns were counted. */
export function surenessOf(
  preload: UncertainPreload,
  window: Window | null,
  counted: CountedValve | null = null,
): Sureness {
  const { ownMm, commonMm, preloadMm } = preload;
  const uMm = uncertaintyMm(preload);
  const against = window === null ? undefined : verdict(preloadMm, window, uMm).against;
  return {
    uMm,
    ownMm,
    commonMm,
    guardMm: guardMm(preload),
    against: against ?? null,
    settling: window === null || counted === null ? null : settles(counted, window),
  };
}
