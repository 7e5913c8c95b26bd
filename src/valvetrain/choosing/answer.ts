import { type LimitZone, limitZones, usableZone, type Zone } from '../uncertainty/limits';
import { type UncertainPreload, uncertaintyMm } from '../uncertainty/uncertain';
import { type ValveId, valveKey } from '../valves';
import { type VerdictResult, verdict } from '../verdict';
import type { Candidate } from './offer';
import type { Pool } from './pools';
import { isProven, millimetresOf, nanometres, type Reach } from './reach';
import type { GroupLabel, Scheme } from './schemes';
import { type ChoosableValve, zeroLashLengthMm } from './valve';

/** Why a valve is not counted as usable in an answer. */
export type WhyNot =
  /** The stock has none left that would do, so it gets none. */
  | 'stock runs out'
  /** The guard at both limits leaves nothing between them: no length at all could be proven. */
  | 'uncertainty wider than the window'
  /** Some length would do, but none on offer. */
  | 'no length on offer'
  /** A length on offer would do, but not the one it has to share. */
  | 'shared length'
  /** Its group's mean is proven usable at this length, but its own reading is proven not to be. */
  | 'own reading proven out';

/** What a valve would have with the pushrod an answer gives it. */
export interface Prediction {
  readonly id: ValveId;
  /** Null when it gets none. */
  readonly lengthMm: number | null;
  /** Null when it gets none; else by its own reading, whatever its group's mean says. */
  readonly preload: UncertainPreload | null;
  readonly verdict: VerdictResult | null;
  /** Of its own reading. */
  readonly zone: Zone | null;
  /** Zones at each limit, of its own reading. */
  readonly limits: readonly LimitZone[];
  /** Counted as usable: by the mean of its pool in fixed groups, by its own reading otherwise. */
  readonly usable: boolean;
  readonly whyNot: WhyNot | null;
}

/** The valves that get one length, shortest length first. */
export interface LengthShare {
  readonly lengthMm: number;
  readonly valves: readonly ValveId[];
}

/** One group of a fixed scheme. */
export interface GroupAnswer {
  readonly label: GroupLabel;
  readonly lengthMm: number | null;
  /** The means it was judged by. */
  readonly pools: readonly Pool[];
}

export interface Answer {
  readonly scheme: Scheme;
  readonly lengths: readonly LengthShare[];
  readonly valves: readonly Prediction[];
  /** Only with fixed groups. */
  readonly groups: readonly GroupAnswer[];
  readonly usable: number;
  readonly of: number;
  /** Everyone counts as usable. */
  readonly fits: boolean;
  /** Worst distance from target, mm: of the means in fixed groups, of single readings otherwise. */
  readonly worstMm: number;
}

/** A valve, the reach it is judged by, and the length it gets. */
export interface Given {
  readonly valve: ChoosableValve;
  readonly judgedBy: Reach;
  /** Whether `judgedBy` is the mean of a pool rather than its own reading. */
  readonly isPooled: boolean;
  readonly lengthNm: number | null;
}

/** Puts an answer together from who gets what. */
export function answerOf(
  scheme: Scheme,
  given: readonly Given[],
  groups: readonly GroupAnswer[],
  offered: readonly Candidate[],
): Answer {
  const valves = given.map((each) => predicted(each, offered));
  const usable = valves.filter((valve) => valve.usable).length;
  const distances = given.map(({ judgedBy, lengthNm }) =>
    lengthNm === null ? 0 : Math.abs(lengthNm - judgedBy.targetNm),
  );
  return {
    scheme,
    lengths: sharesOf(given),
    valves,
    groups,
    usable,
    of: valves.length,
    fits: usable === valves.length,
    worstMm: millimetresOf(Math.max(0, ...distances)),
  };
}

/** How a valve counts at a length: its pool's mean proven usable, its own reading not proven out. */
export function whyNotUsable(
  { valve, judgedBy, isPooled, lengthNm }: Given,
  offered: readonly Candidate[],
): WhyNot | null {
  if (lengthNm === null) return 'stock runs out';
  if (isProven(judgedBy, lengthNm)) {
    if (!isPooled) return null;
    const preloadMm = millimetresOf(lengthNm) - zeroLashLengthMm(valve);
    const own = usableZone(preloadMm, uncertaintyMm(valve.preload), valve.window);
    return own === 'proven out' ? 'own reading proven out' : null;
  }
  if (judgedBy.provenFromNm > judgedBy.provenToNm) return 'uncertainty wider than the window';
  const onOffer = offered.some((candidate) => isProven(judgedBy, candidate.lengthNm));
  return onOffer ? 'shared length' : 'no length on offer';
}

function predicted(given: Given, offered: readonly Candidate[]): Prediction {
  const { valve, lengthNm } = given;
  const whyNot = whyNotUsable(given, offered);
  const common = { id: valve.id, usable: whyNot === null, whyNot };
  if (lengthNm === null) {
    return { ...common, lengthMm: null, preload: null, verdict: null, zone: null, limits: [] };
  }
  const lengthMm = millimetresOf(lengthNm);
  const preload = { ...valve.preload, preloadMm: lengthMm - zeroLashLengthMm(valve) };
  const uMm = uncertaintyMm(preload);
  return {
    ...common,
    lengthMm,
    preload,
    verdict: verdict(preload.preloadMm, valve.window, uMm),
    zone: usableZone(preload.preloadMm, uMm, valve.window),
    limits: limitZones(preload.preloadMm, uMm, valve.window),
  };
}

function sharesOf(given: readonly Given[]): readonly LengthShare[] {
  const shares = new Map<number, ValveId[]>();
  for (const { valve, lengthNm } of given) {
    if (lengthNm === null) continue;
    shares.set(lengthNm, [...(shares.get(lengthNm) ?? []), valve.id]);
  }
  return [...shares]
    .sort(([a], [b]) => a - b)
    .map(([lengthNm, valves]) => ({ lengthMm: millimetresOf(lengthNm), valves }));
}

/** Whether two answers give every valve the same length. */
export function givesTheSame(a: Answer, b: Answer): boolean {
  const lengths = new Map(b.valves.map(({ id, lengthMm }) => [valveKey(id), nmOf(lengthMm)]));
  return a.valves.every(({ id, lengthMm }) => lengths.get(valveKey(id)) === nmOf(lengthMm));
}

function nmOf(lengthMm: number | null): number | null {
  return lengthMm === null ? null : nanometres(lengthMm);
}
