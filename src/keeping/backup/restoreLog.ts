import type { JobEvent } from '#counting';
import { canonicalJson } from '../canonicalJson';
import type { HeldLogs } from '../holdUnkept';
import type { WriterLocks } from '../writerLock';

/**
 * What became of a job of a backup:
 * 'new' it was not here and is now; 'longer' it was here up to a point and goes on now;
 * 'here' all of it was here, perhaps with more; 'apart' it went on otherwise on this device;
 * 'open' a window is counting on it now. In the last three the device's log is left as it is.
 */
export type Restored = 'new' | 'longer' | 'here' | 'apart' | 'open';

/**
 * Brings a job's log from a backup onto the device. Never changes an event that is there: it adds
 * what the device's own log lacks at its end, or nothing. Rejects with a KeepError where the disk does.
 */
export async function restoreLog(
  logs: HeldLogs,
  locks: WriterLocks,
  events: readonly JobEvent[],
): Promise<Restored> {
  const [first] = events;
  if (first === undefined) return 'here';
  const claim = await locks.claim(first.jobId, () => undefined);
  if (claim === null) return 'open';
  try {
    const here = await logs.read(first.jobId);
    const shared = Math.min(here.events.length, events.length);
    const same = here.events
      .slice(0, shared)
      .every((event, i) => canonicalJson(event) === canonicalJson(events[i]));
    if (!same || (here.newer && events.length > shared)) return 'apart';
    if (shared === events.length) return 'here';
    await logs.append(events.slice(shared));
    return shared === 0 ? 'new' : 'longer';
  } finally {
    claim.release();
  }
}
