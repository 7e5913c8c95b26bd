import type { CrankPosition, JobEvent } from '../events';
import type { SetUp } from '../setUp';
import { type Crank, type JobState, setUpOf } from '../state';
import { plannedAt, positionFor, samePosition } from '../walk';
import { angleOn } from '../walk/crankPlace';

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
    crank: crankOn(setUpOf(state), setUp, state.crank),
  };
}

function sameLength(before: SetUp | null, now: SetUp): boolean {
  const was = before?.testPushrod ?? null;
  const is = now.testPushrod;
  return was?.mm === is?.mm && was?.convention === is?.convention;
}

/**
 * The crank stands where it stood, by the angles of the engine as it now is; where they don't tell, its
 * place is forgotten. What may be counted there, and where it goes for a valve, is the new walk's.
 */
function crankOn(before: SetUp | null, setUp: SetUp, crank: Crank): Crank {
  const at = standing(before, setUp, crank.at);
  const valve = crank.headingValve;
  const position = valve === null ? undefined : positionFor(setUp, valve);
  const heading = position !== undefined && stays(before, setUp, crank, position) ? position : null;
  return {
    ...crank,
    at,
    overshot: crank.overshot && at !== null,
    heading,
    headingValve: heading === null ? null : valve,
  };
}

function standing(
  before: SetUp | null,
  setUp: SetUp,
  position: CrankPosition | null,
): CrankPosition | null {
  if (position === null) return null;
  const angleDeg = angleOn(position, before?.engine ?? null, setUp.engine);
  if (angleDeg === null) return null;
  const { cylinder } = position;
  const here = { angleDeg, cylinder, valves: [] };
  return plannedAt(setUp, here)?.position ?? here;
}

/** A place the crank was sent to holds while the walk has it still. */
function stays(
  before: SetUp | null,
  setUp: SetUp,
  { heading }: Crank,
  position: CrankPosition,
): boolean {
  return samePosition(standing(before, setUp, heading), position);
}
