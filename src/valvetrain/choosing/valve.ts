import type { UncertainPreload } from '../uncertainty/uncertain';
import type { ValveId } from '../valves';
import type { Window } from '../windows';

/**
 * A valve measured on a test pushrod, as choosing needs it. All lengths by one convention; the window
 * is one without a refused problem. Every common share is from the same travel per quarter turn.
 */
export interface ChoosableValve {
  readonly id: ValveId;
  readonly preload: UncertainPreload;
  readonly testLengthMm: number;
  readonly window: Window;
}

/** Length at which the valve would stand at zero lash, mm: the preload at length x is x less this. */
export function zeroLashLengthMm({ preload, testLengthMm }: ChoosableValve): number {
  return testLengthMm - preload.preloadMm;
}
