import type { Transaction } from 'dexie';
import { evolve, initial, type JobEvent, type JobState, replay } from '#counting';
import { canonicalJson } from './canonicalJson';
import type { KeepingDatabase } from './database';
import { cardOf } from './jobCard';
import { KeepError } from './keepError';
import { keptLogOf } from './keptLog';

/**
 * A job as its kept log folds, so that the next append need not read it all again. Without what could
 * be taken back: the bench remembers that already, and twice would double what a long job takes.
 */
export interface Folded {
  readonly state: JobState;
  readonly createdAt: number;
}

/** How the browser said it would write: 'strict' waits for the disk. Undefined where it won't say. */
export type Durability = 'strict' | 'relaxed' | 'default' | undefined;

/**
 * Adds events to the end of a job's log and renews the job's card, in one transaction: all or none.
 * Events that are already there, to the letter, count as added: a write whose answer was lost may
 * be tried again. Resolves to the job after them once they are on disk.
 *
 * Rejects with KeepError 'conflict' when others stand in their place or behind them, or the log
 * can't be read to its end; 'failed' when the log before them is not there.
 */
export function appendLog(
  db: KeepingDatabase,
  events: readonly JobEvent[],
  known: Folded | null,
  onDurability: (durability: Durability) => void,
): PromiseLike<Folded> {
  return db.transaction('rw', db.events, db.jobs, async (transaction) => {
    onDurability(assertStrict(transaction));
    const { jobId, seq } = firstOf(events);
    const tail = db.events.where('[jobId+seq]').between([jobId, seq - 1], [jobId, Infinity]);
    const rows = await tail.toArray();
    const there = rows.filter((row) => row.seq >= seq);
    if (seq > 1 && rows.length === there.length) throw missing(seq - 1);
    if (!there.every((row, i) => canonicalJson(row) === canonicalJson(events[i]))) {
      throw new KeepError('conflict');
    }
    const before = await foldBefore(db, events, known);
    await db.events.bulkAdd(events.slice(there.length));
    const after = { ...before, state: events.reduce(evolve, before.state) };
    const changedAt = events.at(-1)?.at ?? before.createdAt;
    await db.jobs.put(cardOf(after.state, { createdAt: before.createdAt, changedAt }));
    return { ...after, state: { ...after.state, past: null } };
  });
}

async function foldBefore(
  db: KeepingDatabase,
  events: readonly JobEvent[],
  known: Folded | null,
): Promise<Folded> {
  const { jobId, seq, at } = firstOf(events);
  if (seq === 1) return { state: initial, createdAt: at };
  // Taking back needs what was before, which `known` does not keep.
  const takesBack = events.some(({ type }) => type === 'takenBack');
  if (known?.state.jobId === jobId && known.state.seq === seq - 1 && !takesBack) return known;
  const earlier = db.events.where('[jobId+seq]').between([jobId, 0], [jobId, seq]);
  const log = keptLogOf(await earlier.toArray());
  if (log.readOnly !== null) throw new KeepError('conflict');
  return { state: replay(log.events), createdAt: log.events[0]?.at ?? at };
}

/** The first of a batch that belongs to one job and runs on without a gap. */
function firstOf(events: readonly JobEvent[]): JobEvent {
  const [first] = events;
  const inOrder = events.every(
    ({ jobId, seq }, i) => jobId === first?.jobId && seq === first.seq + i,
  );
  if (first === undefined || !inOrder || first.seq < 1) {
    throw new KeepError('failed', {
      cause: new RangeError('Events appended together belong to one job and follow each other.'),
    });
  }
  return first;
}

function missing(seq: number): KeepError {
  return new KeepError('failed', { cause: new Error(`The log before event ${seq + 1} is gone.`) });
}

/** A browser that tells how it writes must be writing strictly: a kept word rests on it (C10). */
function assertStrict({ idbtrans }: Transaction & { idbtrans?: IDBTransaction }): Durability {
  const durability: Durability = idbtrans?.durability;
  if (durability !== undefined && durability !== 'strict') {
    throw new KeepError('failed', { cause: new Error(`Writing is ${durability}, not strict.`) });
  }
  return durability;
}
