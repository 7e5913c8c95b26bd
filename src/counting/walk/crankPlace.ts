import { type Engine, firingAngleDeg } from '#valvetrain';
import type { CrankPosition } from '../events';
import { sameAngle } from './crankPlan';

/**
 * Where a crank that stood at a position of one engine stands by another's angles, degrees from that
 * one's first firing TDC; null when nothing tells. They differ where a set-up was put right.
 */
export function angleOn(
  position: CrankPosition,
  from: Engine | null,
  to: Engine | null,
): number | null {
  if (position.angleDeg === null || to === null) return null;
  if (from !== null && fireAlike(from, to)) return position.angleDeg;
  const { cylinder } = position;
  if (cylinder === null || !to.firingOrder.includes(cylinder)) return null;
  const angle = firingAngleDeg(to, cylinder);
  return sameAngle(angle, position.angleDeg) ? angle : null;
}

function fireAlike(a: Engine, b: Engine): boolean {
  return (
    a.firingOrder.length === b.firingOrder.length &&
    a.firingOrder.every((cylinder, place) => cylinder === b.firingOrder[place]) &&
    a.firingOrder.every((cylinder) => firingAngleDeg(a, cylinder) === firingAngleDeg(b, cylinder))
  );
}
