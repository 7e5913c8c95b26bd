import type { PushrodLength } from '#valvetrain';
import type { SetUp } from '../setUp';
import { dialProblems, lengthProblems, setUpProblems } from '../setUpProblems';
import { type JobState, setUpOf } from '../state';
import { outside } from './choose';
import { type CommandOf, type Draft, happens, notNow, refuse } from './decision';

/** Opens a job on a set-up that can be used. */
export function decideOpen({ setUp, app }: CommandOf<'openJob'>): Draft {
  return badSetUp(setUp) ?? happens({ type: 'jobOpened', setUp, app });
}

/** Another set-up, applied to all readings or from here on. */
export function decideSetUp({ setUp, appliesTo }: CommandOf<'changeSetUp'>): Draft {
  return badSetUp(setUp) ?? happens({ type: 'setupChanged', setUp, appliesTo });
}

/** The next round of readings. */
export function decideRound({ round }: JobState, { purpose }: CommandOf<'startRound'>): Draft {
  return happens({ type: 'roundStarted', number: round.number + 1, purpose });
}

/** Another test pushrod is fitted, or none. */
export function decidePushrod(state: JobState, { length, valves }: CommandOf<'fitPushrod'>): Draft {
  const setUp = setUpOf(state);
  const stray = valves?.flatMap((id) => (setUp === null ? [] : (outside(setUp, id) ?? []))).at(0);
  if (stray !== undefined) return stray;
  return (
    badLength(length) ??
    happens({ type: 'pushrodFitted', length, ...(valves === undefined ? {} : { valves }) })
  );
}

/** A valve read by dial indicator instead of counted. */
export function decideDial(state: JobState, { valve, travelMm }: CommandOf<'readDial'>): Draft {
  const setUp = setUpOf(state);
  if (setUp === null) return notNow(state, 'readDial');
  const problems = dialProblems(travelMm);
  return (
    outside(setUp, valve) ??
    (problems.length > 0
      ? refuse({ code: 'bad dial reading', problems })
      : happens({ type: 'dialRead', valve, travelMm }))
  );
}

function badSetUp(setUp: SetUp): Draft | null {
  const problems = setUpProblems(setUp).filter(({ severity }) => severity === 'refused');
  return problems.length > 0 ? refuse({ code: 'bad set-up', problems }) : null;
}

function badLength(length: PushrodLength | null): Draft | null {
  const problems = length === null ? [] : lengthProblems(length);
  return problems.length > 0 ? refuse({ code: 'bad length', problems }) : null;
}
