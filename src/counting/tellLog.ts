import { announce } from './announce';
import type { Announcement } from './announce/announcement';
import type { JobEvent } from './events';
import { evolve } from './evolve';
import { initial, type JobState } from './state';

/** A log folded with what it had to tell on the way. */
export interface ReplayedLog {
  readonly state: JobState;
  readonly announcements: readonly Announcement[];
}

/** The state a whole log folds to, and every announcement it made, in order. Pure. */
export function replayLog(events: readonly JobEvent[]): ReplayedLog {
  const announcements: Announcement[] = [];
  let state = initial;
  for (const event of events) {
    const after = evolve(state, event);
    announcements.push(...announce(state, event, after));
    state = after;
  }
  return { state, announcements };
}

/** Every announcement a log made, in order. */
export function tellLog(events: readonly JobEvent[]): readonly Announcement[] {
  return replayLog(events).announcements;
}
