import { CYCLE_DEG, forwardDeg } from './cycle';
import { type Allowed, type Arc, canStab, endDeg } from './stabbing';

/** Arcs with a margin taken off both ends. Lengths below 0 hold nothing. */
export function shrunk(arcs: readonly Arc[], marginDeg: number): readonly Arc[] {
  return arcs.map(({ startDeg, lengthDeg }) => ({
    startDeg: startDeg + marginDeg,
    lengthDeg: lengthDeg - 2 * marginDeg,
  }));
}

/**
 * The largest margin, from `atLeastDeg` up, at which so many points still stab every arc shrunk by
 * it. Exact: whether an answer holds can change only where a shrunk start meets a shrunk end or
 * the end of an allowed stretch, or a shrunk end the start of one: finitely many margins.
 */
export function widestMarginDeg(
  arcs: readonly Arc[],
  allowed: Allowed,
  points: number,
  atLeastDeg: number,
): number {
  const longest = Math.min(...arcs.map((arc) => arc.lengthDeg)) / 2;
  const stretches = allowed === 'anywhere' ? [] : allowed;
  const margins = [
    ...arcs.flatMap((one) => arcs.map((other) => forwardDeg(one.startDeg, endDeg(other)) / 2)),
    ...stretches.flatMap((stretch) =>
      arcs.flatMap((arc) => [
        forwardDeg(arc.startDeg, endDeg(stretch)),
        forwardDeg(stretch.startDeg, endDeg(arc)),
      ]),
    ),
  ].filter((margin) => margin > atLeastDeg && margin <= longest);
  return lastHolding(margins, atLeastDeg, (margin) =>
    canStab(shrunk(arcs, margin), allowed, points),
  );
}

/**
 * The largest clearance from every TDC at which so many points still stab every arc, 0 when none
 * does. Exact, for the same reason as `widestMarginDeg`.
 */
export function widestClearanceDeg(
  arcs: readonly Arc[],
  tdcAnglesDeg: readonly number[],
  points: number,
): number {
  const halves = gaps(tdcAnglesDeg).map(({ lengthDeg }) => lengthDeg / 2);
  const clearances = [
    ...halves,
    ...tdcAnglesDeg.flatMap((tdc) =>
      arcs.flatMap((arc) => [forwardDeg(arc.startDeg, tdc), forwardDeg(tdc, endDeg(arc))]),
    ),
  ].filter((clearance) => clearance > 0 && clearance <= Math.max(...halves));
  return lastHolding(clearances, 0, (clearance) =>
    canStab(arcs, clearOfTdc(tdcAnglesDeg, clearance), points),
  );
}

/** Every stretch of the circle at least so far from each TDC. */
export function clearOfTdc(tdcAnglesDeg: readonly number[], clearanceDeg: number): readonly Arc[] {
  return shrunk(gaps(tdcAnglesDeg), clearanceDeg).filter(({ lengthDeg }) => lengthDeg >= 0);
}

/** The stretches between neighbouring angles, which are given rising, 0 up to 720. */
function gaps(anglesDeg: readonly number[]): readonly Arc[] {
  return anglesDeg.map((startDeg, place) => ({
    startDeg,
    lengthDeg: (anglesDeg[place + 1] ?? (anglesDeg[0] ?? 0) + CYCLE_DEG) - startDeg,
  }));
}

/** The largest value a test holds for, where it holds up to some value and not beyond. */
function lastHolding(
  values: readonly number[],
  known: number,
  test: (value: number) => boolean,
): number {
  const rising = [...new Set(values)].toSorted((a, b) => a - b);
  let low = 0;
  let high = rising.length;
  while (low < high) {
    const middle = Math.floor((low + high) / 2);
    if (test(rising[middle] ?? known)) low = middle + 1;
    else high = middle;
  }
  return rising[low - 1] ?? known;
}
