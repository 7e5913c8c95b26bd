import type { Engine } from '../engine';
import { rootSumOfSquares } from '../uncertainty/rectangular';
import { type UncertainPreload, uncertaintyMm } from '../uncertainty/uncertain';
import type { Window } from '../windows';
import { type Reach, reachOf } from './reach';
import { type Factor, grouped } from './schemes';
import { type ChoosableValve, zeroLashLengthMm } from './valve';

/** Valves taken to be alike, their readings pooled into one mean. */
export interface Pool {
  readonly valves: readonly ChoosableValve[];
  readonly window: Window;
  /** Mean length at zero lash, mm. */
  readonly zeroLashMm: number;
  /** Own share of the mean: √Σ own² / n. */
  readonly ownMm: number;
  /** Common share of the mean: the mean of the shares, since one k moves all alike. */
  readonly commonMm: number;
  readonly reach: Reach;
}

/** The mean of some valves with one window. @throws RangeError for none. */
export function pool(valves: readonly ChoosableValve[]): Pool {
  const [first] = valves;
  if (first === undefined) throw new RangeError('A pool needs at least one valve.');
  const mean = (of: (valve: ChoosableValve) => number) =>
    valves.reduce((sum, valve) => sum + of(valve), 0) / valves.length;
  const zeroLashMm = mean(zeroLashLengthMm);
  const ownMm = rootSumOfSquares(...valves.map(({ preload }) => preload.ownMm)) / valves.length;
  const commonMm = mean(({ preload }) => preload.commonMm);
  const uMm = rootSumOfSquares(ownMm, commonMm);
  const { window } = first;
  const reach = reachOf(zeroLashMm, uMm, window);
  return { valves, window, zeroLashMm, ownMm, commonMm, reach };
}

/**
 * Valves in pools by window and by the factors found to differ really. A lifter with another window
 * is another lifter, and is never pooled with the rest.
 */
export function pools(
  valves: readonly ChoosableValve[],
  factors: readonly Factor[],
  engine: Pick<Engine, 'banks'>,
): readonly Pool[] {
  const byWindow = new Map<string, ChoosableValve[]>();
  for (const valve of valves) {
    const key = windowKey(valve.window);
    byWindow.set(key, [...(byWindow.get(key) ?? []), valve]);
  }
  return [...byWindow.values()].flatMap((alike) =>
    grouped(alike, factors, engine).map((group) => pool(group.valves)),
  );
}

/** The preload of a pool's mean at a length, with its shares of uncertainty. */
export function pooledPreload(
  { zeroLashMm, ownMm, commonMm }: Pool,
  lengthMm: number,
): UncertainPreload {
  return { preloadMm: lengthMm - zeroLashMm, ownMm, commonMm };
}

/** The reach of a single valve on its own reading. */
export function ownReach(valve: ChoosableValve): Reach {
  return reachOf(zeroLashLengthMm(valve), uncertaintyMm(valve.preload), valve.window);
}

function windowKey(w: Window): string {
  return [
    w.lifter,
    w.plungerTravelMm,
    w.keepOutTopMm,
    w.keepOutBottomMm,
    w.usableMinMm,
    w.usableMaxMm,
    w.preferredMinMm,
    w.preferredMaxMm,
  ].join(' ');
}
