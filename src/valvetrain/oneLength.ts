import { preloadAtLengthMm } from './pushrod';
import { EDGE_TOLERANCE_MM, targetPreloadMm, type Window } from './windows';

/** A valve measured on a test pushrod. Lengths and preload in mm, all lengths by one convention. */
export interface MeasuredValve {
  readonly preloadMm: number;
  readonly testLengthMm: number;
  readonly window: Window;
}

export interface OneLengthResult {
  readonly lengthMm: number;
  /** How many of the valves would stand inside their usable limits. */
  readonly fits: number;
  readonly of: number;
}

interface Candidate extends OneLengthResult {
  readonly worstMm: number;
}

/**
 * The one length on a grid that puts the most valves inside their usable limits; of those the one
 * whose worst valve is nearest its target; of those the shorter. Lengthening by x adds x of preload
 * (common practice; derived). Null for no valves.
 *
 * @param gridMm spacing of the lengths on offer, mm, above 0; they are whole multiples of it.
 * @throws RangeError when the grid is not a positive number.
 */
export function oneLengthForAll(
  valves: readonly MeasuredValve[],
  gridMm: number,
): OneLengthResult | null {
  if (!(gridMm > 0) || !Number.isFinite(gridMm))
    throw new RangeError(`Grid must be above 0 mm; got ${gridMm}.`);
  const needed = valves.map(
    ({ preloadMm, testLengthMm, window }) => testLengthMm + targetPreloadMm(window) - preloadMm,
  );
  if (needed.length === 0) return null;
  const from = Math.floor(Math.min(...needed) / gridMm);
  const to = Math.ceil(Math.max(...needed) / gridMm);
  let best: Candidate | null = null;
  for (let step = from; step <= to; step += 1) {
    const candidate = judged(valves, step * gridMm);
    if (best === null || better(candidate, best)) best = candidate;
  }
  return best && { lengthMm: best.lengthMm, fits: best.fits, of: best.of };
}

function judged(valves: readonly MeasuredValve[], lengthMm: number): Candidate {
  const preloads = valves.map(({ preloadMm, testLengthMm }) =>
    preloadAtLengthMm(preloadMm, testLengthMm, lengthMm),
  );
  const fits = valves.filter(({ window }, i) => {
    const preload = preloads[i] ?? Number.NEGATIVE_INFINITY;
    return (
      preload >= window.usableMinMm - EDGE_TOLERANCE_MM &&
      preload <= window.usableMaxMm + EDGE_TOLERANCE_MM
    );
  }).length;
  const worstMm = Math.max(
    ...valves.map(({ window }, i) => Math.abs((preloads[i] ?? 0) - targetPreloadMm(window))),
  );
  return { lengthMm, fits, of: valves.length, worstMm };
}

function better(a: Candidate, b: Candidate): boolean {
  if (a.fits !== b.fits) return a.fits > b.fits;
  return a.worstMm < b.worstMm - EDGE_TOLERANCE_MM;
}
