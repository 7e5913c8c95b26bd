import { type ValveId, valveAt, valveKey } from '#valvetrain';
import type { CrankPosition } from '../events';
import type { Reading } from '../readings';
import type { SetUp } from '../setUp';
import { type JobState, setUpAt, setUpOf } from '../state';
import { timingOf, walkChoiceOf } from './choice';
import { angleOn } from './crankPlace';

/** A reading taken where its valve was on a ramp, or nearer to one than is wanted. */
export interface OffBase {
  readonly valve: ValveId;
  /** Crank degrees off the nearer ramp; nought or less where it was not shut on base circle. */
  readonly marginDeg: number;
  readonly wantedDeg: number;
}

/** What no degree wheel shows. */
const DUST_DEG = 1e-3;

/**
 * Where the crank stood for a reading, judged by the timing of the set-up it is figured on. Null while
 * it was far enough off the ramps, and where nothing tells where the crank stood.
 */
export function offBase(state: JobState, reading: Reading): OffBase | null {
  const { valve, position } = reading;
  const setUp = setUpAt(state, reading.setUp);
  const taken = setUpAt(state, reading.takenOn ?? reading.setUp);
  return setUp === null ? null : offBaseAt(setUp, taken, position, valve);
}

/** The same for the valve being counted, where the crank stands now. */
export function openOffBase(state: JobState): OffBase | null {
  const setUp = setUpOf(state);
  if (setUp === null || state.open === null || state.crank.overshot) return null;
  return offBaseAt(setUp, setUp, state.crank.at, state.open.valve);
}

/** The newest reading of each valve of this round, where it was taken off base circle. */
export function offBaseNow(state: JobState): readonly OffBase[] {
  // A valve read anew keeps the place of its newest reading.
  const newest = new Map<string, Reading>();
  for (const reading of state.readings) {
    if (reading.valve === null || reading.round !== state.round.number) continue;
    const key = valveKey(reading.valve);
    newest.delete(key);
    newest.set(key, reading);
  }
  return [...newest.values()].flatMap((reading) => offBase(state, reading) ?? []);
}

function offBaseAt(
  setUp: SetUp,
  taken: SetUp | null,
  position: CrankPosition | null,
  valve: ValveId | null,
): OffBase | null {
  const { engine } = setUp;
  if (valve === null || position === null || engine === null) return null;
  const angleDeg = angleOn(position, taken?.engine ?? null, engine);
  if (angleDeg === null || !engine.firingOrder.includes(valve.cylinder)) return null;
  const { marginDeg } = valveAt(engine, timingOf(setUp).events, valve, angleDeg);
  const wantedDeg = walkChoiceOf(setUp).marginDeg;
  return wantedDeg - marginDeg > DUST_DEG ? { valve, marginDeg, wantedDeg } : null;
}
