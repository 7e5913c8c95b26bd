import type { Verdict } from './verdict';

/** What a verdict asks of the pushrod where only its length sets the preload. */
export type PushrodCall = 'longer' | 'keep' | 'shorter';

/**
 * Which way the length must go. Lash and light call for a longer pushrod, heavy and near bottom
 * for a shorter one (common practice). With an adjustable rocker nothing is ordered: do not ask.
 */
export function pushrodCall(word: Verdict): PushrodCall {
  switch (word) {
    case 'lash':
    case 'light':
      return 'longer';
    case 'fits, light side':
    case 'fits':
    case 'fits, heavy side':
      return 'keep';
    case 'heavy':
    case 'near bottom':
      return 'shorter';
    default:
      return unknownVerdict(word);
  }
}

/**
 * Preload a valve would have with a pushrod of another length, mm: lengthening by x adds x
 * (common practice; derived). Both lengths by the same convention.
 */
export function preloadAtLengthMm(
  measuredPreloadMm: number,
  testLengthMm: number,
  otherLengthMm: number,
): number {
  return measuredPreloadMm + (otherLengthMm - testLengthMm);
}

/** Length that would bring a valve to the target preload, mm: L + (target − measured). */
export function lengthNeededMm(
  measuredPreloadMm: number,
  testLengthMm: number,
  targetMm: number,
): number {
  return testLengthMm + (targetMm - measuredPreloadMm);
}

function unknownVerdict(word: never): never {
  throw new RangeError(`Unknown verdict: ${String(word)}.`);
}
