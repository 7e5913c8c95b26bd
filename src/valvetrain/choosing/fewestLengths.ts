import { mostServed, type Span } from './matching';
import type { Candidate } from './offer';
import { distanceNm, type Reach } from './reach';
import { type Stabbing, type StabbingTask, stab, stabbingNumber, type Taker } from './stabbing';

/**
 * The fewest distinct lengths, each valve judged on its own reading: for each valve the place of its
 * candidate, or null when the stock has none left that would do.
 *
 * Best is, in this order: most valves proven usable, most valves served at all, fewest lengths,
 * smallest worst distance from target, smallest total length. A valve is only given the best that is
 * to be had for it: a length that proves it usable if there is one on offer, else one that does not
 * prove it unusable, else any. When the stock of those runs out it goes without, and the order says so.
 *
 * Exact, each figure settled before the next is looked at, so that none pays for a later one. How many
 * can be served is a matching. With that number required, the fewest lengths are a stabbing of the
 * valves' spans (see `stab`). A worst distance of D only narrows each valve's span to the lengths
 * within D of its target, and more D never hurts, so the smallest D is found by halving the list of
 * the distances there are. With D held, `stab` itself gives the smallest total.
 */
export function fewestLengths(reaches: readonly Reach[], offered: readonly Candidate[]): Stabbing {
  const lengthsNm = offered.map(({ lengthNm }) => lengthNm);
  const quantities = offered.map(({ quantity }) => quantity);
  const takersWithin = (furthestNm: number) =>
    reaches.map((reach) => takerOf(reach, lengthsNm, furthestNm));
  const takers = takersWithin(Number.POSITIVE_INFINITY);
  const task = (furthestNm: number, most: number): StabbingTask => ({
    takers: takersWithin(furthestNm),
    lengthsNm,
    quantities,
    mayMiss,
    most,
  });
  const mayMiss = missing(takers, quantities);
  const served = takers.length - mayMiss.provable - mayMiss.other;
  if (served === 0) return takers.map(() => null);

  const fewest = firstThat(
    range(Math.max(1, stabbingNumber(takers) - mayMiss.provable - mayMiss.other), served),
    (most) => suffices(task(Number.POSITIVE_INFINITY, most)),
  );
  const distances = distinct(
    reaches.flatMap((reach) => lengthsNm.map((lengthNm) => distanceNm(reach, lengthNm))),
  );
  const worstNm = halved(distances, (furthestNm) => suffices(task(furthestNm, fewest)));
  return stab(task(worstNm, fewest)) ?? takers.map(() => null);
}

/** Whether so many lengths are enough. With plenty of each it is stabbing alone, done greedily. */
function suffices(task: StabbingTask): boolean {
  const isPlenty = task.quantities.every((quantity) => quantity >= task.takers.length);
  if (!isPlenty) return stab(task) !== null;
  return (
    task.takers.every(({ from, to }) => from <= to) && stabbingNumber(task.takers) <= task.most
  );
}

/** The lengths that may go to a valve: the best it can get, and near enough. */
function takerOf(reach: Reach, lengthsNm: readonly number[], furthestNm: number): Taker {
  const proven = spanOf(lengthsNm, reach.provenFromNm, reach.provenToNm);
  const possible = spanOf(lengthsNm, reach.possibleFromNm, reach.possibleToNm);
  const near = spanOf(lengthsNm, reach.targetNm - furthestNm, reach.targetNm + furthestNm);
  if (!isEmpty(proven)) return { ...both(near, proven), provable: true };
  return { ...(isEmpty(possible) ? near : both(near, possible)), provable: false };
}

function isEmpty({ from, to }: Span): boolean {
  return from > to;
}

function both(a: Span, b: Span): Span {
  return { from: Math.max(a.from, b.from), to: Math.min(a.to, b.to) };
}

/** The places of the lengths from one to another, both included. */
function spanOf(lengthsNm: readonly number[], fromNm: number, toNm: number): Span {
  const firstAbove = (limit: (lengthNm: number) => boolean) => {
    const place = lengthsNm.findIndex(limit);
    return place < 0 ? lengthsNm.length : place;
  };
  return {
    from: firstAbove((lengthNm) => lengthNm >= fromNm),
    to: firstAbove((lengthNm) => lengthNm > toNm) - 1,
  };
}

/** How many of each class the quantities can't serve, the provable ones having the right of way. */
function missing(takers: readonly Taker[], quantities: readonly number[]): StabbingTask['mayMiss'] {
  const provable = takers.filter((taker) => taker.provable);
  const other = takers.filter((taker) => !taker.provable);
  const isServed = mostServed([...provable, ...other], quantities);
  const unserved = (served: readonly boolean[]) => served.filter((is) => !is).length;
  return {
    provable: unserved(isServed.slice(0, provable.length)),
    other: unserved(isServed.slice(provable.length)),
  };
}

function range(from: number, to: number): readonly number[] {
  return Array.from({ length: Math.max(0, to - from) + 1 }, (_, step) => from + step);
}

/** The first value that will do; the last one when none before it does. */
function firstThat(values: readonly number[], will: (value: number) => boolean): number {
  return values.find((value, place) => place === values.length - 1 || will(value)) ?? 0;
}

/** The first of rising values that will do, where each after one that will do does too. */
function halved(values: readonly number[], will: (value: number) => boolean): number {
  let low = 0;
  let high = values.length - 1;
  while (low < high) {
    const middle = Math.floor((low + high) / 2);
    if (will(values[middle] ?? 0)) high = middle;
    else low = middle + 1;
  }
  return values[low] ?? 0;
}

function distinct(values: readonly number[]): readonly number[] {
  return [...new Set(values)].sort((a, b) => a - b);
}
