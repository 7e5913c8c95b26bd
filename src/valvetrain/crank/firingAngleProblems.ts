import type { Engine } from '../engine';
import { plainFigure } from '../figures';
import { odd, type Problem, refused } from '../problems';

const FIELD = 'firingAnglesDeg';

/** Cylinders mostly fire at least this far apart; two at once are known, and asked about. From memory. */
const CLOSE_DEG = 40;

/**
 * What is wrong with an odd-fire engine's typed firing angles. Empty when there are none. Refused: as
 * many as there are cylinders is not kept to, one is missing or outside 0 to 720, the first is not 0,
 * or they don't rise. Odd: two within 40° of each other.
 */
export function firingAngleProblems(
  e: Pick<Engine, 'cylinders' | 'firingOrder' | 'firingAnglesDeg'>,
): readonly Problem[] {
  const angles = e.firingAnglesDeg;
  if (angles === undefined) return [];
  if (angles.length !== e.cylinders) {
    return [
      refused(
        FIELD,
        'wrong number',
        `${angles.length} firing angles for ${e.cylinders} cylinders: give one for each, in firing order.`,
      ),
    ];
  }
  const outside = angles.find((angle) => !(angle >= 0 && angle < 720));
  if (outside !== undefined) {
    return [
      refused(
        FIELD,
        'out of range',
        `${Number.isFinite(outside) ? `A firing angle of ${plainFigure(outside)}° can’t be` : 'A firing angle is missing'}: two turns of the crank hold 0 to 719°.`,
      ),
    ];
  }
  const first = angles[0] ?? 0;
  if (first !== 0) {
    return [
      refused(
        FIELD,
        'does not begin at 0',
        `The firing angles begin at ${plainFigure(first)}°: they count from the first cylinder in order, which is 0.`,
      ),
    ];
  }
  return gapProblems(angles, e.firingOrder);
}

function gapProblems(angles: readonly number[], order: readonly number[]): readonly Problem[] {
  const gaps = angles.map((angle, place) => ({
    pair: `${order[place] ?? 'one'} to ${order[(place + 1) % order.length] ?? 'the next'}`,
    gapDeg: (angles[place + 1] ?? 720) - angle,
  }));
  const least = gaps.toSorted((a, b) => a.gapDeg - b.gapDeg)[0];
  if (least === undefined) return [];
  if (least.gapDeg < 0) {
    return [
      refused(
        FIELD,
        'not rising',
        `From ${least.pair} the firing angles go back by ${plainFigure(-least.gapDeg)}°: they rise in firing order.`,
      ),
    ];
  }
  if (least.gapDeg >= CLOSE_DEG) return [];
  return [
    odd(
      FIELD,
      'close together',
      `From ${least.pair} is only ${plainFigure(least.gapDeg)}°. Confirm it if it is right.`,
    ),
  ];
}
