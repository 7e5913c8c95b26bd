import { sameValve } from '#valvetrain';
import type { CrankPosition, JobEvent } from '../events';
import type { SetUp } from '../setUp';
import { type Crank, type JobState, setUpOf } from '../state';
import { stopsOf } from '../walk';

/**
 * Another set-up is in force. Readings already taken are figured on it when it applies to all,
 * remembering the one they were taken on. A pushrod fitted since stays, unless the set-up names
 * another than before.
 */
export function setUpChanged(
  state: JobState,
  { seq, setUp, appliesTo }: JobEvent & { type: 'setupChanged' },
): JobState {
  const readings =
    appliesTo === 'all'
      ? state.readings.map((reading) => ({
          ...reading,
          setUp: seq,
          takenOn: reading.takenOn ?? reading.setUp,
        }))
      : state.readings;
  return {
    ...state,
    setUps: [...state.setUps, { seq, setUp }],
    readings,
    ...(sameLength(setUpOf(state), setUp) ? {} : { pushrod: setUp.testPushrod, fitted: [] }),
    crank: crankOn(setUp, state.crank),
  };
}

function sameLength(before: SetUp | null, now: SetUp): boolean {
  const was = before?.testPushrod ?? null;
  const is = now.testPushrod;
  return was?.mm === is?.mm && was?.convention === is?.convention;
}

/** A position that the set-up no longer has is forgotten; its valves are those of the new one. */
function crankOn(setUp: SetUp, crank: Crank): Crank {
  const heading = sameStop(setUp, crank.heading);
  const valve = crank.headingValve;
  const stays =
    heading !== null && valve !== null && heading.valves.some((v) => sameValve(v, valve));
  return {
    ...crank,
    at: sameStop(setUp, crank.at),
    heading: stays ? heading : null,
    headingValve: stays ? valve : null,
  };
}

/** The same cylinder at the same crank angle, whether or not any of its valves are still wanted. */
function sameStop(setUp: SetUp, position: CrankPosition | null): CrankPosition | null {
  if (position === null) return null;
  return (
    stopsOf(setUp).find(
      ({ angleDeg, cylinder }) => angleDeg === position.angleDeg && cylinder === position.cylinder,
    ) ?? null
  );
}
