declare const turn48Brand: unique symbol;

/**
 * A count: whole 48ths of a turn of the fastener, 0 or more. 48 is the least number in which a
 * quarter of a quarter turn (3), a clock hour (4) and ratchet strokes of 30, 45, 60 and 90°
 * (4, 6, 8, 12) are all whole, so counts add up without rounding.
 */
export type Turn48 = number & { readonly [turn48Brand]: true };

/**
 * Makes a count from a number of 48ths.
 * @throws RangeError unless it is a whole number, 0 or more.
 */
export function turn48(n: number): Turn48 {
  if (!isTurn48(n)) {
    throw new RangeError(`A count is whole 48ths of a turn, 0 or more; got ${n}.`);
  }
  return n;
}

function isTurn48(n: number): n is Turn48 {
  return Number.isSafeInteger(n) && n >= 0;
}

export const TURN: Turn48 = turn48(48);
export const QUARTER: Turn48 = turn48(12);
export const HALF_QUARTER: Turn48 = turn48(6);
export const QUARTER_OF_QUARTER: Turn48 = turn48(3);
export const CLOCK_HOUR: Turn48 = turn48(4);

/** A count in quarter turns: 54 is 4.5. */
export function quarters(t: Turn48): number {
  return t / QUARTER;
}

/** The angle the fastener has turned, in degrees of the fastener (not of the crank): 8 is 60. */
export function degrees(t: Turn48): number {
  return t * DEGREES_PER_48TH;
}

/**
 * A ratchet's stroke as a count: 60° is 8, two thirds of a quarter turn.
 * @throws RangeError unless the angle is a whole multiple of 7.5°, 0 or more.
 */
export function turn48FromDegrees(angleDeg: number): Turn48 {
  return turn48(angleDeg / DEGREES_PER_48TH);
}

const DEGREES_PER_48TH = 7.5;
