import { replay } from '#counting';
import type { KeepingDatabase } from './database';
import { cardOf } from './jobCard';
import { type KeptLog, keptLogOf } from './keptLog';

/** A job's log from the store. */
export async function logOf(db: KeepingDatabase, jobId: string): Promise<KeptLog> {
  const rows = db.events.where('[jobId+seq]').between([jobId, 0], [jobId, Infinity]);
  return keptLogOf(await rows.toArray());
}

/** Folds every log anew and puts its card in place of the cached one, in one transaction. */
export function rebuildCards(db: KeepingDatabase): PromiseLike<void> {
  return db.transaction('rw', db.events, db.jobs, async () => {
    const firsts = await db.events
      .orderBy(':id')
      .filter(({ seq }) => seq === 1)
      .primaryKeys();
    await db.jobs.clear();
    for (const [jobId] of firsts) {
      const { events } = await logOf(db, jobId);
      const createdAt = events[0]?.at;
      const changedAt = events.at(-1)?.at;
      if (createdAt === undefined || changedAt === undefined) continue;
      await db.jobs.put(cardOf(replay(events), { createdAt, changedAt }));
    }
  });
}
