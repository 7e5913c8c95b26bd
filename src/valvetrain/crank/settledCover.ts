import { CYCLE_DEG, onCycle, SAME_DEG, tidyAngleDeg } from './cycle';
import { type Allowed, type Arc, alongDeg, marginIn } from './stabbing';

/**
 * Of covers with as many points, each first settled to more margin where one point can be moved for
 * it, the one with the most least margin, then most in all, then the one that begins nearest 0.
 * Angles rising, 0 up to 720.
 */
export function settledCover(
  arcs: readonly Arc[],
  covers: readonly (readonly number[])[],
  allowed: Allowed,
): readonly number[] {
  const settled = distinct(covers).map((points) => {
    const better = allowed === 'anywhere' ? centred(arcs, points) : moved(arcs, points, allowed);
    const angles = better.map(tidyAngleDeg).toSorted((a, b) => a - b);
    return { angles, score: scoreOf(arcs, angles) };
  });
  const [best] = settled.toSorted(
    (a, b) =>
      compareScores(b.score, a.score) ||
      fromZeroDeg(a.angles) - fromZeroDeg(b.angles) ||
      (a.angles[0] ?? 0) - (b.angles[0] ?? 0),
  );
  return best?.angles ?? [];
}

interface Score {
  readonly leastDeg: number;
  readonly totalDeg: number;
}

function scoreOf(arcs: readonly Arc[], points: readonly number[]): Score {
  let leastDeg = CYCLE_DEG;
  let totalDeg = 0;
  for (const arc of arcs) {
    let best = -CYCLE_DEG;
    for (const point of points) best = Math.max(best, marginIn(arc, point));
    leastDeg = Math.min(leastDeg, best);
    totalDeg += best;
  }
  return { leastDeg, totalDeg };
}

/** Above 0 when the first is the better; differences that are only dust count as none. */
function compareScores(a: Score, b: Score): number {
  const least = a.leastDeg - b.leastDeg;
  if (Math.abs(least) > SAME_DEG) return least;
  const total = a.totalDeg - b.totalDeg;
  return Math.abs(total) > SAME_DEG * 100 ? total : 0;
}

/**
 * Each point moved to the middle of what its own arcs have in common, and the arcs shared out afresh,
 * until nothing moves. No step lowers the least margin.
 */
function centred(arcs: readonly Arc[], points: readonly number[]): readonly number[] {
  let now = points;
  for (let round = 0; round < 2 * arcs.length; round += 1) {
    const own: Arc[][] = now.map(() => []);
    for (const arc of arcs) {
      const margins = now.map((point) => marginIn(arc, point));
      own[margins.indexOf(Math.max(...margins))]?.push(arc);
    }
    const next = now.map((point, place) => middle(own[place] ?? [], point));
    const still = next.every((point, place) => Math.abs(point - (now[place] ?? point)) < SAME_DEG);
    if (still) return now;
    now = next;
  }
  return now;
}

function middle(arcs: readonly Arc[], point: number): number {
  if (arcs.length === 0) return point;
  const back = Math.min(...arcs.map((arc) => alongDeg(arc, point)));
  const on = Math.min(...arcs.map((arc) => arc.lengthDeg - alongDeg(arc, point)));
  return point + (on - back) / 2;
}

/** Points exchanged one by one for other allowed angles as long as that scores better. */
function moved(
  arcs: readonly Arc[],
  points: readonly number[],
  allowed: readonly Arc[],
): readonly number[] {
  const angles = allowed.filter(({ lengthDeg }) => lengthDeg === 0).map((arc) => arc.startDeg);
  let now = points;
  for (let better: readonly number[] | undefined = now; better !== undefined; ) {
    now = better;
    const score = scoreOf(arcs, now);
    better = exchanges(now, angles).find((tried) => compareScores(scoreOf(arcs, tried), score) > 0);
  }
  return now;
}

function exchanges(
  points: readonly number[],
  angles: readonly number[],
): readonly (readonly number[])[] {
  return points.flatMap((_, place) =>
    angles.filter((angle) => !points.includes(angle)).map((angle) => points.with(place, angle)),
  );
}

/** The same points reached from several starts are one cover. */
function distinct(covers: readonly (readonly number[])[]): readonly (readonly number[])[] {
  const byPoints = covers.map((points): [string, readonly number[]] => {
    const angles = points.map(tidyAngleDeg).toSorted((a, b) => a - b);
    return [angles.join(' '), angles];
  });
  return [...new Map(byPoints).values()];
}

function fromZeroDeg(points: readonly number[]): number {
  return Math.min(...points.map(onCycle).map((angle) => Math.min(angle, CYCLE_DEG - angle)));
}
