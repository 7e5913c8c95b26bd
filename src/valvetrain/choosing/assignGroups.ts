import type { Candidate } from './offer';

/** A group to be given one length: how many pushrods it takes, and what each candidate does for it. */
export interface GroupToAssign {
  readonly size: number;
  /** Valves usable at each candidate, by its place. */
  readonly usable: readonly number[];
  /** Which candidates it may be given at all. */
  readonly may: readonly boolean[];
  /** Worst distance from target at each candidate, nm. */
  readonly distanceNm: readonly number[];
}

/** For each group the place of its candidate, or null when the stock has none left for it. */
export type GroupAssignment = readonly (number | null)[];

/** One way to serve some of the groups. Smaller is better, figure by figure in this order. */
interface Partial {
  readonly notUsable: number;
  readonly notServed: number;
  readonly lengths: number;
  /** The last to count: the worst distance in the first pass, the total length in the second. */
  readonly lastNm: number;
  readonly before: Partial | null;
  readonly place: number;
  readonly groups: number;
}

/**
 * The best way to give each of a few groups one length of the candidates, whole groups only, no
 * candidate beyond its quantity. Best is, in this order: most valves usable, most valves served (the
 * stock may run out), fewest lengths, smallest worst distance, smallest total length.
 *
 * Exact, by dynamic programming over the candidates: after each, for every set of groups already served
 * (a bit mask; engines have two to six groups) only the best way to have served just that set is kept.
 * What the later candidates can add depends on the set alone, and each of the first three figures is
 * a sum of what was and what is added, so a worse way to the same set can never end better. That
 * holds for the worst distance as the last figure too (the maximum of a smaller and the same is no larger),
 * but not for a total behind it: of two ways with worst distances 3 and 4, the second may end the
 * better when a 5 follows. So the worst distance D is found first, and the total in a second pass
 * in which no group may lie further than D; every way left is then as good in all that comes before.
 */
export function assignGroups(
  groups: readonly GroupToAssign[],
  offered: readonly Candidate[],
): GroupAssignment {
  const byWorst = bestPartial(groups, offered, Number.POSITIVE_INFINITY, (before, added) =>
    Math.max(before, added.distanceNm),
  );
  const byTotal = bestPartial(
    groups,
    offered,
    byWorst.lastNm,
    (before, added) => before + added.totalNm,
  );
  const places: (number | null)[] = groups.map(() => null);
  for (let step: Partial | null = byTotal; step !== null; step = step.before) {
    for (const [index] of groups.entries()) {
      if ((step.groups >> index) % 2 === 1) places[index] = step.place;
    }
  }
  return places;
}

/** What serving a set of groups from one candidate comes to. */
interface Added {
  readonly size: number;
  readonly usable: number;
  readonly distanceNm: number;
  readonly totalNm: number;
}

function bestPartial(
  groups: readonly GroupToAssign[],
  offered: readonly Candidate[],
  furthestNm: number,
  last: (before: number, added: Added) => number,
): Partial {
  const all = 2 ** groups.length - 1;
  const size = groups.reduce((sum, group) => sum + group.size, 0);
  const start: Partial = {
    notUsable: size,
    notServed: size,
    lengths: 0,
    lastNm: 0,
    before: null,
    place: -1,
    groups: 0,
  };
  const best: (Partial | undefined)[] = [start];
  for (const [place, candidate] of offered.entries()) {
    const added = addedBySet(groups, place, candidate, furthestNm);
    // From the fullest set down, so that a candidate is never used twice on one way.
    for (let served = all; served > 0; served -= 1) {
      for (let now = served; now > 0; now = (now - 1) & served) {
        const before = best[served ^ now];
        const gain = added[now];
        if (before === undefined || gain === undefined) continue;
        const way: Partial = {
          notUsable: before.notUsable - gain.usable,
          notServed: before.notServed - gain.size,
          lengths: before.lengths + 1,
          lastNm: last(before.lastNm, gain),
          before,
          place,
          groups: now,
        };
        if (isBetter(way, best[served])) best[served] = way;
      }
    }
  }
  return best.reduce<Partial>((a, b) => (b !== undefined && isBetter(b, a) ? b : a), start);
}

/** For every set of groups what this candidate does for it; undefined where it can't serve it. */
function addedBySet(
  groups: readonly GroupToAssign[],
  place: number,
  { lengthNm, quantity }: Candidate,
  furthestNm: number,
): readonly (Added | undefined)[] {
  const sets: (Added | undefined)[] = [{ size: 0, usable: 0, distanceNm: 0, totalNm: 0 }];
  for (const [index, group] of groups.entries()) {
    const bit = 1 << index;
    for (let rest = 0; rest < bit; rest += 1) {
      const others = sets[rest];
      const distanceNm = group.distanceNm[place] ?? Number.POSITIVE_INFINITY;
      const fits =
        others !== undefined &&
        group.may[place] === true &&
        others.size + group.size <= quantity &&
        distanceNm <= furthestNm;
      sets[rest | bit] = fits
        ? {
            size: others.size + group.size,
            usable: others.usable + (group.usable[place] ?? 0),
            distanceNm: Math.max(others.distanceNm, distanceNm),
            totalNm: others.totalNm + group.size * lengthNm,
          }
        : undefined;
    }
  }
  return sets;
}

function isBetter(a: Partial, b: Partial | undefined): boolean {
  if (b === undefined) return true;
  if (a.notUsable !== b.notUsable) return a.notUsable < b.notUsable;
  if (a.notServed !== b.notServed) return a.notServed < b.notServed;
  if (a.lengths !== b.lengths) return a.lengths < b.lengths;
  return a.lastNm < b.lastNm;
}
