import { type Agreement, agree } from '#valvetrain';
import type { Reading } from '../readings';
import { type JobState, setUpAt } from '../state';
import { lengthAs } from './lengthIn';
import { type Mean, meanOf } from './meanOf';
import { travelIn } from './travelIn';

/** Two ways of knowing one valve, judged against each other. */
export interface Compared {
  /** Repeats among themselves; or what stands against a count, a dial or another pushrod. */
  readonly with: 'repeat' | 'count' | 'dial' | 'other pushrod';
  readonly agreement: Agreement;
}

/** What stands for a valve in a round: the mean of its newest reading and those like it. */
export interface StandingFigure extends Mean {
  /** The readings in the mean, oldest first. */
  readonly readings: readonly Reading[];
  /** Every judgement that can be made; empty for a single reading. */
  readonly compared: readonly Compared[];
}

/** A valve's readings that are alike: of one kind, on one pushrod, by one travel. */
type Alike = readonly [Reading, ...Reading[]];

/**
 * The figure that stands for a valve: the mean of its newest reading with those counted the same way on
 * the same pushrod, every one with its zero found afresh. Null for no readings.
 *
 * @param on the set-up to figure a reading on; its own unless said.
 */
export function standingFigure(
  state: JobState,
  readings: readonly Reading[],
  on: (reading: Reading) => number = (reading) => reading.setUp,
): StandingFigure | null {
  const sets = alikeSets(state, readings, on);
  const standing = sets.at(-1);
  if (standing === undefined) return null;
  const mean = meanIn(state, standing, on);
  if (mean === null) return null;
  return {
    ...mean,
    readings: standing,
    compared: [
      ...repeats(state, standing, on),
      ...sets.slice(0, -1).flatMap((other) => against(state, other, standing, on)),
    ],
  };
}

/** The sets, the one with the newest reading last. */
function alikeSets(
  state: JobState,
  readings: readonly Reading[],
  on: (reading: Reading) => number,
): readonly Alike[] {
  const sets = new Map<string, Alike>();
  for (const reading of readings) {
    const key = keyOf(state, reading, on);
    const set = sets.get(key);
    sets.delete(key);
    sets.set(key, set === undefined ? [reading] : [...set, reading]);
  }
  return [...sets.values()];
}

function keyOf(state: JobState, reading: Reading, on: (reading: Reading) => number): string {
  const setUp = setUpAt(state, on(reading));
  const rod = reading.kind === 'counted' ? reading.checking : undefined;
  const travel = setUp === null || reading.kind !== 'counted' ? null : travelIn(setUp);
  return JSON.stringify([
    reading.kind,
    rod ?? reading.pushrod,
    travel?.perQuarterMm ?? null,
    travel?.uMm ?? null,
  ]);
}

function meanIn(state: JobState, readings: Alike, on: (reading: Reading) => number): Mean | null {
  const newest = readings.at(-1) ?? readings[0];
  const setUp = setUpAt(state, on(newest));
  return setUp === null ? null : meanOf(setUp, newest, ...readings.slice(0, -1));
}

/** The least and the most of the repeats: where these agree, all do. */
function repeats(
  state: JobState,
  readings: Alike,
  on: (reading: Reading) => number,
): readonly Compared[] {
  if (readings.length < 2) return [];
  const each = readings.flatMap((reading) => heightOf(state, [reading], on) ?? []);
  const [first, ...rest] = each.toSorted((a, b) => a.preloadMm - b.preloadMm);
  const last = rest.at(-1);
  if (first === undefined || last === undefined) return [];
  return [{ with: 'repeat', agreement: agree(first, last) }];
}

/** What one set reads against another, a difference of their pushrods allowed for. */
function against(
  state: JobState,
  other: Alike,
  standing: Alike,
  on: (reading: Reading) => number,
): readonly Compared[] {
  const [a, b] = [meanIn(state, other, on), meanIn(state, standing, on)];
  if (a?.preload == null || b?.preload == null) return [];
  const longer = lengthDifference(state, a, b, standing[0], on);
  if (longer === null) return [];
  const dial = [other[0].kind, standing[0].kind].filter((kind) => kind === 'dial').length === 1;
  const how = dial ? (other[0].kind === 'dial' ? 'dial' : 'count') : 'other pushrod';
  return [{ with: how, agreement: agree(a.preload, b.preload, longer) }];
}

/** How much longer b's pushrod is than a's, mm; null where that can't be told. */
function lengthDifference(
  state: JobState,
  a: Mean,
  b: Mean,
  reading: Reading,
  on: (reading: Reading) => number,
): number | null {
  const setUp = setUpAt(state, on(reading));
  if (a.length === null || b.length === null) return a.length === b.length ? 0 : null;
  const mm = setUp === null ? null : lengthAs(setUp, a.length, b.length.convention);
  return mm === null ? null : b.length.mm - mm;
}

/** A set's preload; for a checking pushrod its length in the preload's place, which repeats compare by. */
function heightOf(state: JobState, set: Alike, on: (reading: Reading) => number) {
  const mean = meanIn(state, set, on);
  if (mean?.preload == null) return null;
  const { lengthMm } = mean.figures;
  return lengthMm === undefined ? mean.preload : { ...mean.preload, preloadMm: lengthMm };
}
