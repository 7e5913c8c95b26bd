import type { JobEvent } from '../events';
import type { JobState } from '../state';
import type { Announcement } from './announcement';
import { standingOf } from './standing';
import { tell } from './tell';

/**
 * What was taken back and where the builder stands again. Where an utterance only replaces its own
 * count, the count that follows is the news: the words wait, so that it takes their place.
 */
export function takenBack(
  before: JobState,
  event: JobEvent & { type: 'takenBack' },
  after: JobState,
): Announcement {
  const undone = before.asked?.seq === event.undoes ? undefined : before.past?.event;
  const own = undone?.utterance !== undefined && undone.utterance === event.utterance;
  return tell(
    {
      kind: 'taken back',
      undone: undone?.type ?? 'question',
      undoneCount48: undone?.type === 'counted' ? undone.to48 : null,
      standing: standingOf(after),
      checkCrank: undone?.type === 'positionReached' || undone?.type === 'overshot',
    },
    event.seq,
    'back',
    own ? 'at a pause' : 'at once',
  );
}
