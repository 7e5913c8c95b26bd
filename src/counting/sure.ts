import {
  type CountedValve,
  type CountTerms,
  countedPreload,
  dialPreload,
  guardMm,
  QUARTER,
  type Settling,
  settles,
  travelOf,
  type UncertainPreload,
  uncertaintyMm,
  type VerdictResult,
  verdict,
  type Window,
  ZERO_FEEL_QUARTERS,
} from '#valvetrain';
import { type CountedReading, readingCount48, readingResolution48 } from './readings';
import type { SetUp } from './setUp';

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
export function countTerms(reading: CountedReading): CountTerms {
  return {
    resolution48: readingResolution48(reading),
    zeroFeelQuarters: ZERO_FEEL_QUARTERS['up-and-down play'],
  };
}

/** How sure a counted reading is on this set-up; null while its travel is not known. */
export function sureOfCount(
  setUp: SetUp,
  reading: CountedReading,
  window: Window | null,
): Sureness | null {
  if (setUp.adjuster === null) return null;
  const counted: CountedValve = {
    quarters: readingCount48(reading) / QUARTER,
    counts: [countTerms(reading)],
    travel: travelOf(setUp.adjuster),
  };
  const preload = countedPreload(counted.quarters, counted.counts, counted.travel);
  return sureness(preload, window, window === null ? null : settles(counted, window));
}

/** How sure a dial indicator's reading is. */
export function sureOfDial(travelMm: number, window: Window | null): Sureness {
  return sureness(dialPreload(travelMm), window, null);
}

function sureness(
  preload: UncertainPreload,
  window: Window | null,
  settling: Settling | null,
): Sureness {
  const { ownMm, commonMm, preloadMm } = preload;
  const uMm = uncertaintyMm(preload);
  const against = window === null ? undefined : verdict(preloadMm, window, uMm).against;
  return { uMm, ownMm, commonMm, guardMm: guardMm(preload), against: against ?? null, settling };
}
