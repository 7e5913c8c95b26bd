/** Crank degrees in which every valve opens and shuts once: two turns of a four-stroke engine. */
export const CYCLE_DEG = 720;

/** Angles closer than this are the same one: far under what any degree wheel shows. */
export const SAME_DEG = 1e-6;

/** An angle brought to 0 up to 720. */
export function onCycle(angleDeg: number): number {
  // Division is slow, and the search for stops mostly asks about angles within a cycle or two.
  if (angleDeg >= 0 && angleDeg < CYCLE_DEG) return angleDeg;
  if (angleDeg >= CYCLE_DEG && angleDeg < 2 * CYCLE_DEG) return angleDeg - CYCLE_DEG;
  return ((angleDeg % CYCLE_DEG) + CYCLE_DEG) % CYCLE_DEG;
}

/** Crank degrees from one angle on to another in the running direction, 0 up to 720. */
export function forwardDeg(fromDeg: number, toDeg: number): number {
  return onCycle(toDeg - fromDeg);
}

/** As `forwardDeg`, with a hair short of the whole cycle taken for none: both are the same place. */
export function turnOnDeg(fromDeg: number, toDeg: number): number {
  const turn = tidyDeg(forwardDeg(fromDeg, toDeg));
  return turn === CYCLE_DEG ? 0 : turn;
}

/** An angle without the dust of floating point, 0 up to 720. */
export function tidyAngleDeg(angleDeg: number): number {
  return onCycle(tidyDeg(angleDeg));
}

function tidyDeg(deg: number): number {
  return Math.round(deg / SAME_DEG) * SAME_DEG;
}
