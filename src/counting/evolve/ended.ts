import { turn48 } from '#valvetrain';
import type { JobEvent } from '../events';
import type { LandingAnswer } from '../landing';
import type { Reading } from '../readings';
import { markOf, type SetUp } from '../setUp';
import { type JobState, type OpenValve, pushrodFor, setUpOf } from '../state';

/** The count ends and is frozen as a reading (C8). */
export function ended(state: JobState, open: OpenValve, event: JobEvent, loose: boolean): JobState {
  const setUp = setUpOf(state);
  if (setUp === null) return state;
  const told = loose ? null : toldInCount(open, setUp);
  const reading = readingOf(state, open, event, setUp, loose, told);
  const asks = !loose && setUp.asksLanding && told === null;
  const pressed = open.direction === 'on' && !loose && setUp.checking === undefined;
  return {
    ...state,
    readings: [...state.readings, reading],
    crank: { ...state.crank, loaded: state.crank.loaded || pressed },
    open: { ...open, phase: asks ? 'landing' : 'read', reading: event.seq, endedAt: event.at },
  };
}

/** A count between marks, or read by the hour, already tells where it landed: it is not asked again. */
function toldInCount({ count48, lastHow }: OpenValve, { calling }: SetUp): LandingAnswer | null {
  const past48 = turn48(count48 % markOf(calling));
  if (lastHow === 'clock') return { told: 'clock', past48 };
  return past48 === 0 ? null : { told: 'in the count', past48 };
}

function readingOf(
  state: JobState,
  open: OpenValve,
  event: JobEvent,
  setUp: SetUp,
  loose: boolean,
  landing: LandingAnswer | null,
): Reading {
  const common = {
    id: event.seq,
    valve: open.valve,
    round: state.round.number,
    pushrod: pushrodFor(state, open.valve),
    position: state.crank.at,
    at: event.at,
    setUp: state.setUps.at(-1)?.seq ?? 0,
    takenOn: null,
    repeatOf: open.repeatOf,
    torqued: false,
  };
  if (loose) return { kind: 'seated loose', ...common };
  return {
    kind: 'counted',
    ...common,
    direction: open.direction,
    count48: turn48(open.count48 - (landing?.past48 ?? 0)),
    landing,
    mark48: markOf(setUp.calling),
    ...(setUp.checking === undefined ? {} : { checking: setUp.checking }),
  };
}
