import type { JobEvent } from '../events';
import { type JobState, pushrodFor } from '../state';
import { earlierReading } from './earlierReading';
import { without } from './openValve';

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
    position: state.crank.at,
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
