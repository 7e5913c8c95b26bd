import type { PushrodLength, Turn48, ValveId } from '#valvetrain';
import { turn48 } from '#valvetrain';
import type { CrankPosition, Direction } from './events';
import { type LandingAnswer, resolutionOf } from './landing';
import type { CheckingRod } from './setUp';

interface ReadingCommon {
  /** The seq of the event that ended it: its name for ever. */
  readonly id: number;
  readonly valve: ValveId | null;
  readonly round: number;
  readonly pushrod: PushrodLength | null;
  /** Where the crank stood. */
  readonly position: CrankPosition | null;
  readonly at: number;
  /** The seq of the set-up that was in force, or that was later applied to it. */
  readonly setUp: number;
  /** The set-up it was first figured on, once another was applied to it. */
  readonly takenOn: number | null;
  /** The reading this one repeats. */
  readonly repeatOf: number | null;
  readonly torqued: boolean;
}

/** A count of turns from zero lash to the seat (on), or from the seat to first play (off). */
export interface CountedReading extends ReadingCommon {
  readonly kind: 'counted';
  readonly direction: Direction;
  /** The count at the last mark, 48ths of a turn. */
  readonly count48: Turn48;
  readonly landing: LandingAnswer | null;
  /** The spacing of the marks it was counted by, 48ths. */
  readonly mark48: Turn48;
  /** The checking pushrod whose turns were counted; absent where the fastener's were. */
  readonly checking?: CheckingRod;
}

/** The rocker seated with lash still in it: no preload at all. */
export interface LooseReading extends ReadingCommon {
  readonly kind: 'seated loose';
}

/** Plunger travel read straight off a dial indicator, mm. */
export interface DialReading extends ReadingCommon {
  readonly kind: 'dial';
  readonly travelMm: number;
}

export type Reading = CountedReading | LooseReading | DialReading;

/**
 * The count a reading stands for, 48ths of a turn. A landing that was not asked leaves it anywhere
 * up to the next mark, so half a mark is added.
 */
export function readingCount48(reading: CountedReading): number {
  return reading.landing === null
    ? reading.count48 + reading.mark48 / 2
    : reading.count48 + reading.landing.past48;
}

/** The full width the reading may lie in, 48ths of a turn. */
export function readingResolution48(reading: CountedReading): Turn48 {
  return resolutionOf(reading.landing, reading.mark48);
}

/** The reading as a count, rounded to whole 48ths for saying. */
export function readingSaid48(reading: CountedReading): Turn48 {
  return turn48(Math.round(readingCount48(reading)));
}
