import { type CountedReading, type JobState, type Reading, readingCount48 } from '#counting';
import { QUARTER, type Turn48, turn48 } from '#valvetrain';

/** One simulated bolt: what it teaches, and where it comes up tight, 48ths of a turn from zero. */
export interface Bolt {
  readonly teaches: 'presses' | 'numbers' | 'clock';
  readonly seat48: Turn48;
}

/**
 * The bolts of the practice run, in order: three and a half quarters by presses, four and a quarter
 * by numbers, and seven o'clock (two and a third quarters) off the mark.
 */
export const bolts: readonly Bolt[] = [
  { teaches: 'presses', seat48: turn48(42) },
  { teaches: 'numbers', seat48: turn48(51) },
  { teaches: 'clock', seat48: turn48(28) },
];

/** As near as a reading by words or taps can come: a quarter of a quarter, 48ths. */
const NEAR48 = 3;

/** The last whole quarter a bolt passes before it is tight, 48ths. */
export function lastMark48({ seat48 }: Bolt): Turn48 {
  return turn48(Math.floor(seat48 / QUARTER) * QUARTER);
}

/**
 * Where the bolt's mark really stands for what was counted: with the count, until the last mark
 * before the seat is counted; the bolt is then turned on until it is tight, and no further. The bolt
 * whose clock is read has been turned to its seat already.
 */
export function boltMark48(bolt: Bolt, count48: number): Turn48 {
  const turned = bolt.teaches === 'clock' || count48 >= lastMark48(bolt);
  return turned ? bolt.seat48 : turn48(count48);
}

/** Whether the bolt has come up tight for what was counted. */
export function isTight(bolt: Bolt, count48: number): boolean {
  return boltMark48(bolt, count48) === bolt.seat48;
}

/** The bolt a job is at: as many as have been read and left. */
export function boltNow({ open, readings }: JobState): Bolt | null {
  const here = open === null || open.reading === null ? readings.length : readings.length - 1;
  return bolts[here] ?? null;
}

/** A reading held against where its bolt was tight. */
export interface Judged {
  readonly bolt: Bolt;
  /** What was read, 48ths; null when it was told as seated loose. */
  readonly read48: number | null;
  readonly right: boolean;
}

/** A reading judged against its bolt. */
export function judge(bolt: Bolt, reading: Reading): Judged {
  const read48 = isCounted(reading) ? readingCount48(reading) : null;
  return { bolt, read48, right: read48 !== null && Math.abs(read48 - bolt.seat48) <= NEAR48 };
}

/** Every bolt read so far, judged, in order. */
export function judged({ readings }: JobState): readonly Judged[] {
  return readings.flatMap((reading, at) => {
    const bolt = bolts[at];
    return bolt === undefined ? [] : [judge(bolt, reading)];
  });
}

function isCounted(reading: Reading): reading is CountedReading {
  return reading.kind === 'counted';
}
