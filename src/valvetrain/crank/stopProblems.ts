import type { Engine } from '../engine';
import { engineProblems } from '../engineProblems';
import { plainFigure } from '../figures';
import { type Problem, refused } from '../problems';
import type { ValveId } from '../valves';
import { type Allowed, type Arc, marginIn } from './stabbing';

/** Nothing to plan by: without the order only each cylinder's own valves tell where its piston is. */
export function orderProblems(engine: Engine): readonly Problem[] {
  const given = engine.firingOrder.length;
  if (given === 0) {
    return [
      refused(
        'firingOrder',
        'not known',
        `The firing order is not known: 0 of ${plainFigure(engine.cylinders)} cylinders are given. Without it the crank can be walked only by watching each cylinder’s own valves.`,
      ),
    ];
  }
  return engineProblems(engine).filter(({ severity }) => severity === 'refused');
}

/** What forbids looking for stops: no sound firing order, a margin that can't be, no valve, a strange one. */
export function stopProblems(
  engine: Engine,
  wantedDeg: number,
  valves: readonly ValveId[],
): readonly Problem[] {
  const order = orderProblems(engine);
  if (order.length > 0) return order;
  if (!Number.isFinite(wantedDeg)) {
    return [
      refused('marginDeg', 'missing', 'The margin is missing: give crank degrees, 0 or more.'),
    ];
  }
  if (wantedDeg < 0) {
    return [
      refused(
        'marginDeg',
        'out of range',
        `A margin of ${plainFigure(wantedDeg)}° can’t be used: give crank degrees, 0 or more.`,
      ),
    ];
  }
  if (valves.length === 0) return [refused('valves', 'none', 'No valve is to be counted.')];
  const stranger = valves.find(({ cylinder }) => !engine.firingOrder.includes(cylinder));
  if (stranger === undefined) return [];
  return [
    refused(
      'valves',
      'no such cylinder',
      `Cylinder ${plainFigure(stranger.cylinder)} is not in the firing order.`,
    ),
  ];
}

/**
 * A margin no position gives, with the most there is: the valve that comes off worst, at any angle
 * half its time on base circle, or at the best of the allowed angles.
 */
export function noPositionProblem(
  valves: readonly ValveId[],
  arcs: readonly Arc[],
  allowed: Allowed,
  wantedDeg: number,
): Problem {
  const worst = valves
    .flatMap((valve, place) => {
      const arc = arcs[place];
      return arc === undefined ? [] : [{ valve, arc, mostDeg: mostMarginDeg(arc, allowed) }];
    })
    .toSorted((a, b) => a.mostDeg - b.mostDeg)[0];
  if (worst === undefined) return refused('valves', 'none', 'No valve is to be counted.');
  const { valve, arc, mostDeg } = worst;
  const half = plainFigure(arc.lengthDeg / 2);
  const open = plainFigure(720 - arc.lengthDeg);
  const why =
    wantedDeg > arc.lengthDeg / 2
      ? `it is open for ${open}° of 720°, so ${half}° is the most`
      : `${most(mostDeg)} at the places the crank may stop, ${half}° at any angle`;
  return refused(
    'marginDeg',
    'no position gives it',
    `No crank position keeps cylinder ${valve.cylinder}’s ${valve.valve} ${plainFigure(wantedDeg)}° off its ramps: ${why}.`,
  );
}

function most(mostDeg: number): string {
  return mostDeg > 0 ? `${plainFigure(mostDeg)}° is the most` : 'it is never shut';
}

function mostMarginDeg(arc: Arc, allowed: Allowed): number {
  return allowed === 'anywhere'
    ? arc.lengthDeg / 2
    : Math.max(-arc.lengthDeg, ...allowed.map(({ startDeg }) => marginIn(arc, startDeg)));
}
