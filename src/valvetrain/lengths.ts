/**
 * How a pushrod's length is stated. The oil hole cuts a flat off each ball: 'tip to tip' is measured
 * over those flats, 'full ball' is the theoretical length to the balls' uncut poles.
 */
export type LengthConvention = 'tip to tip' | 'full ball';

/** A pushrod's length, mm, with the convention it is stated in. */
export interface PushrodLength {
  readonly mm: number;
  readonly convention: LengthConvention;
}

/** One end of a pushrod: its ball and the oil hole through it, diameters, mm. */
export interface PushrodEnd {
  readonly ballMm: number;
  readonly holeMm: number;
}

/** Both ends of a pushrod; they may differ. */
export type PushrodEnds = readonly [PushrodEnd, PushrodEnd];

/**
 * What the oil hole cuts off a ball's height, mm: r − √(r² − (h/2)²) with r the ball's radius and
 * h the hole's diameter. Plain geometry; a chamfer on the hole takes a little more.
 * @throws RangeError unless the ball is above 0 and the hole from 0 to below the ball.
 */
export function ballFlatMm({ ballMm, holeMm }: PushrodEnd): number {
  if (!(ballMm > 0) || !Number.isFinite(ballMm) || !(holeMm >= 0) || !(holeMm < ballMm)) {
    throw new RangeError(`No ball of ${ballMm} mm with a hole of ${holeMm} mm.`);
  }
  const radius = ballMm / 2;
  return radius - Math.sqrt(radius * radius - (holeMm / 2) ** 2);
}

/**
 * The same pushrod's length by the convention asked for: full ball = tip to tip + the flats of both
 * ends. Without change when it is stated so already.
 * @throws RangeError for an impossible ball or hole.
 */
export function inConvention(
  length: PushrodLength,
  convention: LengthConvention,
  ends: PushrodEnds,
): PushrodLength {
  if (length.convention === convention) return length;
  const flatsMm = ballFlatMm(ends[0]) + ballFlatMm(ends[1]);
  switch (convention) {
    case 'full ball':
      return { mm: length.mm + flatsMm, convention };
    case 'tip to tip':
      return { mm: length.mm - flatsMm, convention };
    default:
      return unknownConvention(convention);
  }
}

function unknownConvention(convention: never): never {
  throw new RangeError(`Unknown convention: ${String(convention)}.`);
}
