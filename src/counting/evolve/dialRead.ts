import { sameValve, type ValveId } from '#valvetrain';
import type { JobEvent } from '../events';
import { type JobState, pushrodFor } from '../state';
import { earlierReading } from './earlierReading';
import { without } from './openValve';

function here({ crank }: JobState, valve: ValveId): boolean {
  return crank.at?.valves.some((id) => sameValve(id, valve)) ?? false;
}

/** A valve read by dial indicator: a reading like any other, whatever valve stands open. */
export function dialRead(
  state: JobState,
  { seq, at, valve, travelMm }: JobEvent & { type: 'dialRead' },
): JobState {
  const reading = {
    kind: 'dial',
    id: seq,
    valve,
    round: state.round.number,
    pushrod: pushrodFor(state, valve),
    // It may be typed in later, the crank long gone on: then where it stood is not known.
    position: here(state, valve) ? state.crank.at : null,
    at,
    setUp: state.setUps.at(-1)?.seq ?? 0,
    takenOn: null,
    repeatOf: earlierReading(state, valve),
    torqued: false,
    travelMm,
  } as const;
  return {
    ...state,
    skipped: without(state.skipped, valve),
    readings: [...state.readings, reading],
  };
}
