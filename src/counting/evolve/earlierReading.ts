import { sameValve, type ValveId } from '#valvetrain';
import type { JobState } from '../state';

/**
 * The last reading of a valve in the present round, taken before the one named: what a new count
 * of it repeats. Null when there is none.
 */
export function earlierReading(
  state: JobState,
  valve: ValveId | null,
  before = Number.POSITIVE_INFINITY,
): number | null {
  const earlier = state.readings.filter(
    (reading) =>
      reading.round === state.round.number &&
      reading.id < before &&
      (valve === null || reading.valve === null
        ? reading.valve === valve
        : sameValve(reading.valve, valve)),
  );
  return earlier.at(-1)?.id ?? null;
}
