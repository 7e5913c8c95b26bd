import {
  type CountOnLength,
  type FittedTravel,
  type OnTwoLengths,
  QUARTER,
  sameValve,
  type TravelFromLengths,
  travelFromDial,
  travelFromTwoLengths,
  type ValveId,
  valveKey,
} from '#valvetrain';
import { type CountedReading, type DialReading, type Reading, readingCount48 } from '../readings';
import { type JobState, setUpAt, setUpOf } from '../state';
import { lengthIn } from './lengthIn';
import { countTerms } from './sureness';

/** The travel by valves read both by dial and by count. */
export interface DialTravel {
  readonly travel: FittedTravel;
  readonly valves: readonly ValveId[];
  /** Valves whose dial and count contradict each other. */
  readonly contradicting: readonly ValveId[];
}

/** The travel by valves counted on two test pushrods. */
export interface LengthsTravel {
  /** Null where the counts do not rise with the length: something moved between the two. */
  readonly travel: TravelFromLengths | null;
  readonly valves: readonly ValveId[];
  readonly shorterMm: number;
  readonly longerMm: number;
}

/** Null while no valve has both a dial reading and a count on one pushrod. */
export function travelByDial(state: JobState): DialTravel | null {
  const pairs = valvesRead(state).flatMap((valve) => {
    const readings = ofValve(state, valve);
    const dials = readings.filter((one): one is DialReading => one.kind === 'dial');
    const dial = dials.at(-1);
    const counts = readings.filter(isCount).filter((one) => samePushrod(one, dial));
    const quarters = mean(counts.map(readingCount48)) / QUARTER;
    if (dial === undefined || !(quarters > 0)) return [];
    const alike = dials.filter((one) => samePushrod(one, dial));
    return [{ valve, quarters, travelMm: mean(alike.map(({ travelMm }) => travelMm)) }];
  });
  if (pairs.length === 0 || !pairs.some(({ travelMm }) => travelMm > 0)) return null;
  const travel = travelFromDial(pairs);
  const valves = pairs.map(({ valve }) => valve);
  const contradicting = travel.contradicting.flatMap((place) => valves[place] ?? []);
  return { travel, valves, contradicting };
}

/**
 * The two test pushrods most valves were counted on, of two alike the further apart; null while no
 * valve was counted on two.
 */
export function travelByLengths(state: JobState): LengthsTravel | null {
  const counted = valvesRead(state).map((valve) => ({ valve, by: countsByLength(state, valve) }));
  const lengths = [...new Set(counted.flatMap(({ by }) => [...by.keys()]))].sort((a, b) => a - b);
  const pairs = lengths.flatMap((shorterMm, at) =>
    lengths.slice(at + 1).map((longerMm) => {
      const both = counted.flatMap(({ valve, by }) => {
        const onShorter = by.get(shorterMm);
        const onLonger = by.get(longerMm);
        return onShorter && onLonger ? [{ valve, onShorter, onLonger }] : [];
      });
      return { shorterMm, longerMm, both };
    }),
  );
  const [best] = pairs.toSorted(
    (a, b) => b.both.length - a.both.length || b.longerMm - b.shorterMm - a.longerMm + a.shorterMm,
  );
  if (best === undefined || best.both.length === 0) return null;
  const { shorterMm, longerMm, both } = best;
  const valves = both.map(({ valve }) => valve);
  return { travel: fitted(both, longerMm - shorterMm), valves, shorterMm, longerMm };
}

function fitted(both: readonly OnTwoLengths[], longerByMm: number): TravelFromLengths | null {
  const rise = both.reduce((sum, one) => sum + one.onLonger.quarters - one.onShorter.quarters, 0);
  return rise > 0 ? travelFromTwoLengths(both, longerByMm) : null;
}

/** The mean count of a valve on each test pushrod, by its length in mm. */
function countsByLength(state: JobState, valve: ValveId): ReadonlyMap<number, CountOnLength> {
  const setUp = setUpOf(state);
  const byLength = new Map<number, CountedReading[]>();
  for (const reading of ofValve(state, valve).filter(isCount)) {
    const mm = setUp === null || reading.pushrod === null ? null : lengthIn(setUp, reading.pushrod);
    if (mm !== null) byLength.set(mm, [...(byLength.get(mm) ?? []), reading]);
  }
  return new Map(
    [...byLength].map(([mm, readings]) => [
      mm,
      {
        quarters: mean(readings.map(readingCount48)) / QUARTER,
        counts: readings.flatMap((reading) => {
          const on = setUpAt(state, reading.setUp);
          return on === null ? [] : [countTerms(reading, on)];
        }),
      },
    ]),
  );
}

/** A count of the fastener: a checking pushrod's turns say nothing of its travel. */
function isCount(reading: Reading): reading is CountedReading {
  return reading.kind === 'counted' && reading.checking === undefined;
}

function samePushrod(a: Reading, b: Reading | undefined): boolean {
  return a.pushrod?.mm === b?.pushrod?.mm && a.pushrod?.convention === b?.pushrod?.convention;
}

function ofValve(state: JobState, valve: ValveId): readonly Reading[] {
  return state.readings.filter((one) => one.valve !== null && sameValve(one.valve, valve));
}

function valvesRead(state: JobState): readonly ValveId[] {
  const all = state.readings.flatMap(({ valve }) => valve ?? []);
  return [...new Map(all.map((valve) => [valveKey(valve), valve])).values()];
}

/** NaN for none. */
function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
