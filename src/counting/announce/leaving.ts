import type { JobEvent } from '../events';
import type { JobState } from '../state';
import { cylinderSummaries } from '../summary';
import type { Announcement } from './announcement';
import { result } from './count';
import { tell } from './tell';

type Leaving = JobEvent & { type: 'valveLeft' | 'valveChosen' | 'repeatStarted' | 'roundStarted' };

/** What going on from a valve has to tell: a result that waited, a valve passed over, a cylinder done. */
export function left(before: JobState, event: Leaving, after: JobState): readonly Announcement[] {
  const unsaid = before.open?.phase === 'landing' ? result(before, event.seq, null) : [];
  const skipped =
    event.type === 'valveLeft' && event.skipped
      ? [tell({ kind: 'skipped', valve: event.valve }, event.seq, 'soft')]
      : [];
  return [...unsaid, ...skipped, ...cylinderDone(before, event, after)];
}

/** Said once, on leaving a cylinder whose valves have all been read. */
function cylinderDone(before: JobState, event: Leaving, after: JobState): readonly Announcement[] {
  if (event.type === 'roundStarted' || before.open?.reading == null) return [];
  const { valve } = before.open;
  const goesTo = after.open?.valve ?? after.crank.headingValve;
  if (valve === null || goesTo?.cylinder === valve.cylinder) return [];
  const cylinders = cylinderSummaries(after);
  const cylinder = cylinders.find((one) => one.cylinder === valve.cylinder);
  if (cylinder === undefined || !cylinder.done) return [];
  const toGo = cylinders.filter(({ done }) => !done).length;
  return [tell({ kind: 'cylinder done', cylinder, left: toGo }, event.seq)];
}
