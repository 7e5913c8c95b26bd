import { QUARTER, QUARTER_OF_QUARTER, type Turn48, turn48 } from '../turns';
import type { CountTerms } from '../uncertainty/count';
import { usableZone, type Zone } from '../uncertainty/limits';
import type { Travel } from '../uncertainty/travel';
import { countedPreload, type UncertainPreload, uncertaintyMm } from '../uncertainty/uncertain';
import { type VerdictResult, verdict } from '../verdict';
import { targetPreloadMm, type Window } from '../windows';

/** Where to stop turning an adjustable rocker, counted from zero lash. */
export interface TurnsToStop {
  readonly count48: Turn48;
  /** What the stop would give. Read it again after locking: a locking nut creeps. */
  readonly preload: UncertainPreload;
  readonly verdict: VerdictResult;
  readonly zone: Zone;
}

/**
 * The stop nearest the target, in whole steps from zero lash; of two alike the lesser. Adjustable rockers
 * are answered by this, never by an order for pushrods.
 * @param count what limits the count to be made.
 * @param step48 how finely the builder can stop, 48ths of a turn: a quarter of a quarter unless said.
 */
export function turnsToStop(
  window: Window,
  travel: Travel,
  count: CountTerms,
  step48: Turn48 = QUARTER_OF_QUARTER,
): TurnsToStop {
  const steps = ((targetPreloadMm(window) / travel.perQuarterMm) * QUARTER) / step48;
  const count48 = turn48(Math.max(0, Math.ceil(steps - 0.5 - 1e-9)) * step48);
  const preload = countedPreload(count48 / QUARTER, [count], travel);
  const uMm = uncertaintyMm(preload);
  return {
    count48,
    preload,
    verdict: verdict(preload.preloadMm, window, uMm),
    zone: usableZone(preload.preloadMm, uMm, window),
  };
}
