import {
  groupOf,
  QUARTER,
  travelPerQuarterMm,
  type ValveId,
  type Verdict,
  verdict,
  type Window,
} from '#valvetrain';
import { type Reading, readingCount48, readingSaid48 } from './readings';
import type { SetUp } from './setUp';
import { type JobState, setUpAt } from './state';
import { type Sureness, sureOfCount, sureOfDial } from './sure';

/** What a count comes to: preload in mm and its verdict, each null while it can't be known. */
export interface Figures {
  readonly preloadMm: number | null;
  readonly verdict: Verdict | null;
  readonly window: Window | null;
  /** Counted past the plunger's whole travel. */
  readonly pastTravel: boolean;
  /** How sure the figure is; null between counts, and where nothing was measured. */
  readonly sure: Sureness | null;
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
export function figuresForCount(setUp: SetUp, valve: ValveId | null, count48: number): Figures {
  const { adjuster } = setUp;
  const preload = adjuster === null ? null : (count48 / QUARTER) * travelPerQuarterMm(adjuster);
  return figuresAt(setUp, valve, preload);
}

/** Figures for a reading on the set-up it was taken on, or the one later applied to it. */
export function figuresForReading(
  state: JobState,
  reading: Reading,
  onSetUp = reading.setUp,
): Figures {
  const setUp = setUpAt(state, onSetUp);
  if (setUp === null) return NOTHING;
  switch (reading.kind) {
    case 'counted':
      return surely(figuresForCount(setUp, reading.valve, readingCount48(reading)), (window) =>
        sureOfCount(setUp, reading, window),
      );
    case 'seated loose':
      return figuresAt(setUp, reading.valve, 0);
    case 'dial':
      return surely(figuresAt(setUp, reading.valve, reading.travelMm), (window) =>
        sureOfDial(reading.travelMm, window),
      );
    default: {
      const never: never = reading;
      return never;
    }
  }
}

const NOTHING: Figures = {
  preloadMm: null,
  verdict: null,
  window: null,
  pastTravel: false,
  sure: null,
};

function surely(figures: Figures, sure: (window: Window | null) => Sureness | null): Figures {
  return { ...figures, sure: sure(figures.window) };
}

/** The count a reading is said with, 48ths; null where nothing was counted. */
export function saidCount(reading: Reading): ReturnType<typeof readingSaid48> | null {
  return reading.kind === 'counted' ? readingSaid48(reading) : null;
}
