import {
  type CountedValve,
  checkingPreload,
  countedPreload,
  dialPreload,
  type PushrodLength,
  QUARTER,
  type UncertainPreload,
} from '#valvetrain';
import { type Figures, figuresAt, figuresForCount } from '../figures';
import { type CountedReading, type DialReading, type Reading, readingCount48 } from '../readings';
import type { CheckingRod, SetUp } from '../setUp';
import { countTerms, surenessOf } from './sureness';
import { travelIn } from './travelIn';

/** What one reading, or the mean of several of one valve, comes to. */
export interface Mean {
  readonly figures: Figures;
  /** Null where no preload is known. None, at its own length, for a checking pushrod. */
  readonly preload: UncertainPreload | null;
  /** The pushrod it holds for. */
  readonly length: PushrodLength | null;
  /** The mean count where turns of the fastener were counted, with what limits each. */
  readonly counted: CountedValve | null;
}

/**
 * The mean of readings of one valve that are alike: counted the same way on the same pushrod, each with
 * a zero found afresh. Of another kind than the first are left out.
 */
export function meanOf(setUp: SetUp, first: Reading, ...others: readonly Reading[]): Mean {
  switch (first.kind) {
    case 'counted': {
      const alike = others.filter((one): one is CountedReading => one.kind === 'counted');
      return first.checking === undefined
        ? meanOfCounts(setUp, [first, ...alike])
        : meanOfOpenings(setUp, first.checking, [first, ...alike]);
    }
    case 'seated loose': {
      const figures = figuresAt(setUp, first.valve, 0);
      return { figures, preload: null, length: first.pushrod, counted: null };
    }
    case 'dial': {
      const alike = others.filter((one): one is DialReading => one.kind === 'dial');
      return meanOfDial(setUp, [first, ...alike]);
    }
    default: {
      const never: never = first;
      return never;
    }
  }
}

type Some<T> = readonly [T, ...T[]];

function meanOfCounts(setUp: SetUp, readings: Some<CountedReading>): Mean {
  const [{ valve, pushrod }] = readings;
  const count48 = mean(readings.map(readingCount48));
  const figures = figuresForCount(setUp, valve, count48, null);
  const travel = travelIn(setUp);
  if (travel === null) return { figures, preload: null, length: pushrod, counted: null };
  const counts = readings.map((reading) => countTerms(reading, setUp));
  const counted: CountedValve = { quarters: count48 / QUARTER, counts, travel };
  const preload = countedPreload(counted.quarters, counts, travel);
  const sure = surenessOf(preload, figures.window, counted);
  return { figures: { ...figures, sure }, preload, length: pushrod, counted };
}

function meanOfOpenings(setUp: SetUp, rod: CheckingRod, readings: Some<CountedReading>): Mean {
  const [{ valve }] = readings;
  const figures = figuresForCount(setUp, valve, mean(readings.map(readingCount48)), rod);
  const preload = checkingPreload(
    rod,
    readings.map((reading) => countTerms(reading, setUp)),
  );
  const { convention } = rod;
  const length = figures.lengthMm === undefined ? null : { mm: figures.lengthMm, convention };
  return {
    figures: { ...figures, sure: surenessOf(preload, null) },
    preload,
    length,
    counted: null,
  };
}

function meanOfDial(setUp: SetUp, readings: Some<DialReading>): Mean {
  const [{ valve, pushrod }] = readings;
  const preload = dialPreload(mean(readings.map(({ travelMm }) => travelMm)), readings.length);
  const figures = figuresAt(setUp, valve, preload.preloadMm);
  const sure = surenessOf(preload, figures.window);
  return { figures: { ...figures, sure }, preload, length: pushrod, counted: null };
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
