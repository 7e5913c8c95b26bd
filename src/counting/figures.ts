import {
  CHECKING_TURNS_MOST,
  groupOf,
  QUARTER,
  TURN,
  travelPerQuarterMm,
  type ValveId,
  type Verdict,
  verdict,
  type Window,
} from '#valvetrain';
import { type Reading, readingSaid48 } from './readings';
import type { CheckingRod, SetUp } from './setUp';
import type { Sureness } from './sure/sureness';

/** What a count comes to: preload in mm and its verdict, each null while it can't be known. */
export interface Figures {
  readonly preloadMm: number | null;
  readonly verdict: Verdict | null;
  readonly window: Window | null;
  /** Counted past the plunger's whole travel. */
  readonly pastTravel: boolean;
  /** How sure the figure is; null between counts, and where nothing was measured. */
  readonly sure: Sureness | null;
  /** Length a checking pushrod was opened to, mm: then this is measured, and no preload. */
  readonly lengthMm?: number;
}

/** The window of a valve; for one without a name, the window only when all valves share one. */
export function windowFor(setUp: SetUp, valve: ValveId | null): Window | null {
  if (valve === null || setUp.engine === null) {
    return setUp.groups.length === 1 ? (setUp.groups[0]?.window ?? null) : null;
  }
  return groupOf(valve, setUp.groups, setUp.engine)?.window ?? null;
}

/** Figures for a preload known in mm. */
export function figuresAt(setUp: SetUp, valve: ValveId | null, preload: number | null): Figures {
  const window = windowFor(setUp, valve);
  if (preload === null || window === null) {
    return { preloadMm: preload, verdict: null, window, pastTravel: false, sure: null };
  }
  return {
    preloadMm: preload,
    verdict: verdict(preload, window).word,
    window,
    pastTravel: preload > window.plungerTravelMm,
    sure: null,
  };
}

/** Figures for a count in 48ths of a turn (a half-counted mark may make it fractional). */
export function figuresForCount(
  setUp: SetUp,
  valve: ValveId | null,
  count48: number,
  checking: CheckingRod | null = setUp.checking ?? null,
): Figures {
  if (checking !== null) {
    return { ...figuresAt(setUp, valve, null), lengthMm: openedLengthMm(checking, count48) };
  }
  const { adjuster } = setUp;
  const preload = adjuster === null ? null : (count48 / QUARTER) * travelPerQuarterMm(adjuster);
  return figuresAt(setUp, valve, preload);
}

/** Length of a checking pushrod opened so far, mm; past its most turns it opens no further. */
export function openedLengthMm({ closedMm, perTurnMm }: CheckingRod, count48: number): number {
  return closedMm + Math.min(count48 / TURN, CHECKING_TURNS_MOST) * perTurnMm;
}

/** The count a reading is said with, 48ths; null where nothing was counted. */
export function saidCount(reading: Reading): ReturnType<typeof readingSaid48> | null {
  return reading.kind === 'counted' ? readingSaid48(reading) : null;
}
