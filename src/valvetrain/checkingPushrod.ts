import { degrees, QUARTER, TURN, type Turn48 } from './turns';
import { type CountTerms, meanCountUncertaintyQuarters } from './uncertainty/count';
import type { UncertainPreload } from './uncertainty/uncertain';

/** An adjustable pushrod: opened to zero lash under a rocker torqued down, counting turns. */
export interface CheckingPushrod {
  /** Length screwed right in, mm, by the convention of the job. */
  readonly closedMm: number;
  /** Lengthening per turn, mm. */
  readonly perTurnMm: number;
}

/** Twenty threads per inch: 0.050 in a turn (common practice). Check the one in hand. */
export const CHECKING_PER_TURN_MM = 1.27;

/** The most turns a checking pushrod is counted to. */
export const CHECKING_TURNS_MOST = 40;

/**
 * Length of a checking pushrod opened so many turns, mm: closed + turns × per turn. At zero lash it is the
 * length with no preload; add the target to it for the length to buy (`lengthNeededMm`).
 * @throws RangeError beyond 40 turns, or for a length or lead that is not above 0.
 */
export function checkingPushrodLengthMm(
  { closedMm, perTurnMm }: CheckingPushrod,
  opened: Turn48,
): number {
  if (!(closedMm > 0) || !(perTurnMm > 0)) {
    throw new RangeError(`No checking pushrod of ${closedMm} mm with ${perTurnMm} mm a turn.`);
  }
  if (opened > CHECKING_TURNS_MOST * TURN) {
    throw new RangeError(`Counted to at most ${CHECKING_TURNS_MOST} turns; got ${opened / TURN}.`);
  }
  return closedMm + (degrees(opened) / 360) * perTurnMm;
}

/**
 * The reading of a checking pushrod as a preload: none, at the length it was opened to, with the share its
 * counts give it. Its thread is its own, so nothing is common with counted fasteners; an error of
 * the closed length is common to all and is left out, as it is when both are measured alike.
 */
export function checkingPreload(
  { perTurnMm }: CheckingPushrod,
  counts: readonly CountTerms[],
): UncertainPreload {
  const perQuarterMm = (perTurnMm * QUARTER) / TURN;
  return {
    preloadMm: 0,
    ownMm: perQuarterMm * meanCountUncertaintyQuarters(counts),
    commonMm: 0,
  };
}
