import { CLOCK_HOUR } from '../turns';
import type { Window } from '../windows';
import { type CountTerms, meanCountUncertaintyQuarters } from './count';
import { GUARD_FACTOR } from './guard';
import { limitZones } from './limits';
import { rectangular } from './rectangular';
import { TRAVEL_HALF_WIDTH, type Travel } from './travel';
import { countedPreload, DIAL_HALF_WIDTH_MM, dialPreload, uncertaintyMm } from './uncertain';

/** A counted reading, as `settles` needs it. */
export interface CountedValve {
  /** The count, or the mean of the repeats, quarter turns. */
  readonly quarters: number;
  /** One entry a count so far, each with a zero found afresh. */
  readonly counts: readonly CountTerms[];
  readonly travel: Travel;
}

/** How many counts in all it takes with zero found again each time, or that none will do. */
export type Recounts =
  | { readonly enough: true; readonly inAll: number; readonly more: number }
  | {
      readonly enough: false;
      /** The guard that is left however often it is counted: 1.65 times the common share, mm. */
      readonly floorMm: number;
    };

/** One thing the builder can do about a reading that can't be told. */
export type Remedy =
  /**
   * Measure the travel per quarter turn. `recounts`: the counts it then takes, null if measuring alone
   * settles it.
   */
  | {
      readonly kind: 'measure the travel';
      readonly settles: boolean;
      readonly recounts: Recounts | null;
    }
  | { readonly kind: 'recount'; readonly settles: boolean; readonly counts: Recounts }
  /** Read the last landing again, by the clock hour of the mark on the socket: no new count. */
  | { readonly kind: 'read by the hour'; readonly settles: boolean }
  | { readonly kind: 'dial indicator'; readonly settles: boolean };

export interface Settling {
  /** How far the number is from the nearest limit that can't be told, mm. */
  readonly marginMm: number;
  /** The guard now, mm; it has to come down to the margin. */
  readonly guardMm: number;
  /** In the order of trouble: the least first. Each says whether it settles the reading alone. */
  readonly remedies: readonly Remedy[];
  /** The first remedy that is enough; null where the number stands on the limit itself. */
  readonly first: Remedy | null;
}

/**
 * What would settle a reading: null if nothing needs settling. Every remedy is judged as if it
 * found the same number again, so it is a forecast, not a promise. Measuring the travel is left
 * out when k is better than ±2 % already, reading by the hour when a landing was read so.
 */
export function settles(valve: CountedValve, window: Window): Settling | null {
  const now = countedPreload(valve.quarters, valve.counts, valve.travel);
  const open = limitZones(now.preloadMm, uncertaintyMm(now), window).filter(
    ({ zone }) => zone === "can't tell",
  );
  if (open.length === 0) return null;
  const marginMm = Math.min(...open.map(({ insideMm }) => Math.abs(insideMm)));
  const remedies = [
    ...measuring(valve, marginMm),
    recounting(valve, marginMm),
    ...byTheHour(valve, marginMm),
    {
      kind: 'dial indicator',
      settles: isWithin(uncertaintyMm(dialPreload(now.preloadMm, 1, DIAL_HALF_WIDTH_MM)), marginMm),
    } as const,
  ];
  return {
    marginMm,
    guardMm: GUARD_FACTOR * uncertaintyMm(now),
    remedies,
    first: remedies.find(isEnough) ?? null,
  };
}

/** A remedy that settles the reading, alone or with the recounts it names. */
function isEnough(remedy: Remedy): boolean {
  if (remedy.settles) return true;
  return remedy.kind === 'measure the travel' && remedy.recounts?.enough === true;
}

function measuring(valve: CountedValve, marginMm: number): readonly Remedy[] {
  const uMm = valve.travel.perQuarterMm * rectangular(TRAVEL_HALF_WIDTH.measured);
  if (valve.travel.uMm <= uMm) return [];
  const measured: CountedValve = { ...valve, travel: { ...valve.travel, uMm, basis: 'measured' } };
  const isSettled = isWithin(uncertaintyOf(measured), marginMm);
  const left = isSettled ? null : recounts(measured, marginMm);
  return [{ kind: 'measure the travel', settles: isSettled, recounts: left }];
}

function recounting(valve: CountedValve, marginMm: number): Remedy {
  const counts = recounts(valve, marginMm);
  return { kind: 'recount', settles: counts.enough, counts };
}

function byTheHour(valve: CountedValve, marginMm: number): readonly Remedy[] {
  const last = valve.counts[valve.counts.length - 1];
  if (last === undefined || last.resolution48 <= CLOCK_HOUR) return [];
  const finer = { ...last, resolution48: CLOCK_HOUR };
  const counts = [...valve.counts.slice(0, -1), finer];
  return [
    { kind: 'read by the hour', settles: isWithin(uncertaintyOf({ ...valve, counts }), marginMm) },
  ];
}

/**
 * The least number of counts whose mean has its guard within the margin, the further ones as good
 * as the last one so far. Starts from the closed form for like counts, n = (k u(q))²/(u² − common²).
 */
function recounts(valve: CountedValve, marginMm: number): Recounts {
  const commonMm = valve.quarters * valve.travel.uMm;
  const floorMm = GUARD_FACTOR * commonMm;
  const last = valve.counts[valve.counts.length - 1];
  const allowedMm2 = (marginMm / GUARD_FACTOR) ** 2 - commonMm ** 2;
  if (last === undefined || allowedMm2 <= 0) return { enough: false, floorMm };
  const sumOf = (terms: readonly CountTerms[]) =>
    (meanCountUncertaintyQuarters(terms) * terms.length * valve.travel.perQuarterMm) ** 2;
  const already = valve.counts.length;
  const soFarMm2 = sumOf(valve.counts);
  const eachMm2 = sumOf([last]);
  // allowed·n² ≥ soFar + each·(n − already), solved for the larger root.
  const constant = soFarMm2 - eachMm2 * already;
  const root = Math.sqrt(Math.max(0, eachMm2 ** 2 + 4 * allowedMm2 * constant));
  const inAll = Math.max(already + 1, Math.ceil((eachMm2 + root) / (2 * allowedMm2) - 1e-9));
  return { enough: true, inAll, more: inAll - already };
}

function uncertaintyOf({ quarters, counts, travel }: CountedValve): number {
  return uncertaintyMm(countedPreload(quarters, counts, travel));
}

function isWithin(uMm: number, marginMm: number): boolean {
  return GUARD_FACTOR * uMm <= marginMm;
}
