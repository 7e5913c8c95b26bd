import { guard } from './uncertainty/guard';
import { EDGE_TOLERANCE_MM, type Window } from './windows';

/** What a preload is called, from loose to bottomed. */
export type Verdict =
  | 'lash'
  | 'light'
  | 'fits, light side'
  | 'fits'
  | 'fits, heavy side'
  | 'heavy'
  | 'near bottom';

/** All verdicts in order of rising preload. */
export const verdictWords: readonly Verdict[] = [
  'lash',
  'light',
  'fits, light side',
  'fits',
  'fits, heavy side',
  'heavy',
  'near bottom',
];

/** A verdict without its side: what may lie across a limit. */
export type Across = 'lash' | 'light' | 'fits' | 'heavy' | 'near bottom';

export interface VerdictResult {
  /** Judged on the plain number; the uncertainty never changes it. */
  readonly word: Verdict;
  /** A limit that hurts lies within the guard of the number. */
  readonly cantTell: boolean;
  /** Only with `cantTell`: the nearest such limit and what lies across it ("can't tell from light"). */
  readonly against?: { readonly word: Across; readonly limitMm: number };
}

/**
 * Judges a preload against a window that has no refused problem.
 *
 * Lash is 0 or less; near bottom is within the bottom keep-out, its edge included; usable and
 * preferred edges belong to the inside, all within 1e-6 mm. Where a usable limit stands on lash or
 * on the keep-out, the worse word wins.
 *
 * `uncertaintyMm` is the standard uncertainty u. Inside a limit by g = 1.65 u is proven in (one-sided,
 * 95 %; after ISO 14253-1), more than g beyond it is proven out, between is can't tell. It counts
 * at the limits that hurt (lash, usable, keep-out); the preferred band is judged on the plain number.
 *
 * @throws RangeError if the preload is not finite, or the uncertainty not finite or below 0.
 */
export function verdict(preloadMm: number, w: Window, uncertaintyMm = 0): VerdictResult {
  if (!Number.isFinite(preloadMm)) throw new RangeError(`Preload is no number: ${preloadMm}.`);
  if (!Number.isFinite(uncertaintyMm) || uncertaintyMm < 0) {
    throw new RangeError(`Uncertainty must be 0 or more; got ${uncertaintyMm}.`);
  }
  const word = plainVerdict(preloadMm, w);
  const limit = nearestUnsettled(preloadMm, guard(uncertaintyMm), w);
  if (limit === undefined) return { word, cantTell: false };
  const acrossMm = limit.limitMm + (limit.isAbove(preloadMm) ? -1 : 1) * 2 * EDGE_TOLERANCE_MM;
  const against = { word: withoutSide(plainVerdict(acrossMm, w)), limitMm: limit.limitMm };
  return { word, cantTell: true, against };
}

/** A limit that hurts, and which side of it a preload is on, the edge counted as the verdict does. */
interface Limit {
  readonly limitMm: number;
  readonly isAbove: (preloadMm: number) => boolean;
}

function limitsOf(w: Window) {
  const bottomMm = w.plungerTravelMm - w.keepOutBottomMm;
  return {
    lash: { limitMm: 0, isAbove: (p: number) => p > EDGE_TOLERANCE_MM },
    bottom: { limitMm: bottomMm, isAbove: (p: number) => p >= bottomMm - EDGE_TOLERANCE_MM },
    usableMin: {
      limitMm: w.usableMinMm,
      isAbove: (p: number) => p >= w.usableMinMm - EDGE_TOLERANCE_MM,
    },
    usableMax: {
      limitMm: w.usableMaxMm,
      isAbove: (p: number) => p > w.usableMaxMm + EDGE_TOLERANCE_MM,
    },
  };
}

function plainVerdict(preloadMm: number, w: Window): Verdict {
  const { lash, bottom, usableMin, usableMax } = limitsOf(w);
  if (!lash.isAbove(preloadMm)) return 'lash';
  if (bottom.isAbove(preloadMm)) return 'near bottom';
  if (!usableMin.isAbove(preloadMm)) return 'light';
  if (usableMax.isAbove(preloadMm)) return 'heavy';
  if (preloadMm < w.preferredMinMm - EDGE_TOLERANCE_MM) return 'fits, light side';
  if (preloadMm > w.preferredMaxMm + EDGE_TOLERANCE_MM) return 'fits, heavy side';
  return 'fits';
}

/** The nearest limit that the guard reaches across; lash and keep-out before usable when level. */
function nearestUnsettled(preloadMm: number, guardMm: number, w: Window): Limit | undefined {
  const { lash, bottom, usableMin, usableMax } = limitsOf(w);
  return [lash, bottom, usableMin, usableMax]
    .filter((limit) => limit.isAbove(preloadMm + guardMm) !== limit.isAbove(preloadMm - guardMm))
    .sort((a, b) => Math.abs(preloadMm - a.limitMm) - Math.abs(preloadMm - b.limitMm))[0];
}

function withoutSide(word: Verdict): Across {
  switch (word) {
    case 'fits, light side':
    case 'fits, heavy side':
    case 'fits':
      return 'fits';
    case 'lash':
    case 'light':
    case 'heavy':
    case 'near bottom':
      return word;
    default:
      return unknownVerdict(word);
  }
}

function unknownVerdict(word: never): never {
  throw new RangeError(`Unknown verdict: ${String(word)}.`);
}
