import { CYCLE_DEG, forwardDeg, SAME_DEG } from './cycle';

/** A closed stretch of the 720° circle; a point has length 0. */
export interface Arc {
  readonly startDeg: number;
  /** 0 up to, not including, 720. */
  readonly lengthDeg: number;
}

/** Where points may be put: anywhere, or only within these arcs. */
export type Allowed = 'anywhere' | readonly Arc[];

export function endDeg(arc: Arc): number {
  return arc.startDeg + arc.lengthDeg;
}

/** Whether an arc holds an angle, its edges included. */
export function holds(arc: Arc, angleDeg: number): boolean {
  return alongDeg(arc, angleDeg) <= arc.lengthDeg + SAME_DEG;
}

/** How far along an arc an angle lies; a hair before its start is its start. */
export function alongDeg(arc: Arc, angleDeg: number): number {
  const along = forwardDeg(arc.startDeg, angleDeg);
  return along >= CYCLE_DEG - SAME_DEG ? 0 : along;
}

/** Degrees from an angle to the nearer end of an arc, below 0 outside it. */
export function marginIn(arc: Arc, angleDeg: number): number {
  const along = alongDeg(arc, angleDeg);
  return along <= arc.lengthDeg
    ? Math.min(along, arc.lengthDeg - along)
    : -Math.min(along - arc.lengthDeg, CYCLE_DEG - along);
}

/**
 * Every fewest set of points that stabs all arcs which the greedy sweep reaches, each in order from
 * where it began; empty when some arc has no allowed point. Exact in the number of points: push each
 * point of any answer forward until it would leave an arc it stabs and it stands at that arc's latest
 * allowed angle. So one of those begins an answer, and from it on the arcs lie on a line, where taking
 * the nearest latest angle of an arc not yet stabbed is best. n starts of at most n arcs each; points
 * few.
 */
export function fewestPoints(
  arcs: readonly Arc[],
  allowed: Allowed,
): readonly (readonly number[])[] {
  const latest = latestAngles(arcs, allowed);
  if (latest === undefined) return [];
  let best: (readonly number[])[] = [];
  for (const start of new Set(latest)) {
    const most = best[0]?.length ?? arcs.length;
    const points = sweep(arcs, latest, start, most);
    if (points === undefined) continue;
    if (points.length < most) best = [];
    best.push(points);
  }
  return best;
}

/** Whether `most` points or fewer can stab every arc: as `fewestPoints`, stopping at the first answer. */
export function canStab(arcs: readonly Arc[], allowed: Allowed, most: number): boolean {
  const latest = latestAngles(arcs, allowed);
  if (latest === undefined) return false;
  const shortest = arcs.toSorted((a, b) => a.lengthDeg - b.lengthDeg)[0];
  // Any answer stabs the shortest arc, so one that begins within it need only be looked for there.
  return [...new Set(latest)]
    .filter((start) => shortest !== undefined && holds(shortest, start))
    .some((start) => sweep(arcs, latest, start, most) !== undefined);
}

function latestAngles(arcs: readonly Arc[], allowed: Allowed): readonly number[] | undefined {
  const found: number[] = [];
  for (const arc of arcs) {
    const angle = latestIn(arc, allowed);
    if (angle === undefined) return undefined;
    found.push(angle);
  }
  return found;
}

/** The last allowed angle of an arc: its end, or else the end of an allowed stretch that lies in it. */
function latestIn(arc: Arc, allowed: Allowed): number | undefined {
  if (arc.lengthDeg < -SAME_DEG) return undefined;
  if (allowed === 'anywhere') return endDeg(arc);
  let furthest = -1;
  let latest: number | undefined;
  for (const stretch of allowed) {
    if (holds(stretch, endDeg(arc))) return endDeg(arc);
    const along = alongDeg(arc, endDeg(stretch));
    if (along <= arc.lengthDeg + SAME_DEG && along > furthest) {
      furthest = along;
      latest = endDeg(stretch);
    }
  }
  return latest;
}

/** The greedy sweep from one point; undefined when it needs more points than `most`. */
function sweep(
  arcs: readonly Arc[],
  latest: readonly number[],
  start: number,
  most: number,
): readonly number[] | undefined {
  const points: number[] = [];
  let left = arcs.map((arc, place) => ({
    arc,
    latest: latest[place] ?? start,
    on: forwardDeg(start, latest[place] ?? start),
  }));
  let next: number | undefined = start;
  while (next !== undefined) {
    if (points.length === most) return undefined;
    const point: number = next;
    points.push(point);
    left = left.filter(({ arc }) => !holds(arc, point));
    next = left.reduce<(typeof left)[number] | undefined>(
      (soonest, one) => (soonest === undefined || one.on < soonest.on ? one : soonest),
      undefined,
    )?.latest;
  }
  return points;
}
