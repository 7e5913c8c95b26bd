import { EVENT_VERSION, type JobEvent } from '#counting';
import { appendLog, type Durability, type Folded } from './appendLog';
import { changeNotes, type OnChange } from './changeNotes';
import { connect, type StoreTrouble } from './connection';
import { type KeepingDatabase, STORE_VERSION } from './database';
import type { JobCard } from './jobCard';
import type { KeptLog } from './keptLog';
import { logOf, rebuildCards } from './rebuildCards';
import { type WriterLocks, writerLocks } from './writerLock';

/** What the browser lends. Left out, the browser's own is used; null stands for 'has none'. */
export interface KeepingOptions {
  /** The store's name: 'turncaller'. */
  readonly name?: string;
  readonly indexedDB?: IDBFactory;
  readonly IDBKeyRange?: typeof IDBKeyRange;
  readonly locks?: Pick<LockManager, 'request'> | null;
  readonly channel?: BroadcastChannel | null;
  /** Opening waits for another window that still has the store. */
  readonly onBlocked?: () => void;
}

/** The logs, the list of jobs and the settings on this device. All it rejects with is a KeepError. */
export interface Keeping extends WriterLocks {
  /** A job's log in order, lifted; no events for an unknown job. */
  read(jobId: string): Promise<KeptLog>;
  /**
   * Adds events that follow each other to the end of one job's log. Resolves once they are on disk,
   * strictly; all or none. Calls are carried out in the order they were made. One that failed may
   * be made again, also with more events: what did get written is not written twice.
   */
  append(events: readonly JobEvent[]): Promise<void>;
  /** Calls back when another window has added to this job's log. Returns how to stop. */
  follow(jobId: string, onChange: (seq: number) => void): () => void;
  /** As `follow`, for every job. */
  followAll(onChange: OnChange): () => void;
  /**
   * Calls back when the logs are gone from under the app, or a newer version of it has the store and
   * nothing more is read or written here. Returns how to stop.
   */
  watch(onTrouble: (what: StoreTrouble) => void): () => void;
  /** The cards of all jobs, discarded ones too, last changed first. */
  jobs(): Promise<readonly JobCard[]>;
  /** Folds every log anew and replaces the cards. */
  rebuildCards(): Promise<void>;
  /** A setting as it was put; undefined when it never was. Its shape is the caller's matter. */
  setting(key: string): Promise<unknown>;
  putSetting(key: string, value: unknown): Promise<void>;
  /** How the browser said it made the last write to a log; undefined before one, or where it won't say. */
  lastDurability(): Durability;
  close(): void;
}

/** Opens this device's store at its first use. Touches no browser service before it is called. */
export function createKeeping(options: KeepingOptions = {}): Keeping {
  const name = options.name ?? 'turncaller';
  const connection = connect({
    name,
    indexedDB: options.indexedDB ?? globalThis.indexedDB,
    IDBKeyRange: options.IDBKeyRange ?? globalThis.IDBKeyRange,
    onBlocked: options.onBlocked ?? (() => undefined),
    onTrouble: (what) => {
      if (what === 'emptied') known = null;
      for (const watcher of [...watchers]) watcher(what);
    },
  });
  const watchers = new Set<(what: StoreTrouble) => void>();
  const schema = { store: STORE_VERSION, events: EVENT_VERSION };
  const notes = changeNotes(
    options.channel === undefined ? ownChannel(name) : options.channel,
    (other) => {
      if (other.store > schema.store || other.events > schema.events) connection.supersede();
    },
  );
  notes.introduce(schema);
  let known: Folded | null = null;
  let durability: Durability;
  let lastWrite: Promise<unknown> = Promise.resolve();

  /** One write after another, so that a lost connection can't let a later one overtake. */
  function inTurn<T>(write: (db: KeepingDatabase) => PromiseLike<T>): Promise<T> {
    const done = lastWrite.then(() => connection.run(write));
    lastWrite = done.catch(() => undefined);
    return done;
  }

  /** Cards written by an older version lack what was added since: they are only a cache. */
  function listed(): Promise<readonly JobCard[]> {
    return connection.run((db) => db.jobs.orderBy('changedAt').reverse().toArray());
  }

  return {
    ...writerLocks(options.locks === undefined ? ownLocks() : options.locks),
    read: (jobId) => connection.run((db) => logOf(db, jobId)),
    async append(events) {
      const last = events.at(-1);
      if (last === undefined) return;
      known = await inTurn((db) =>
        appendLog(db, events, known, (how) => {
          durability = how;
        }),
      );
      notes.post(last.jobId, last.seq);
    },
    follow: (jobId, onChange) =>
      notes.listen((changed, seq) => {
        if (changed === jobId) onChange(seq);
      }),
    followAll: notes.listen,
    watch(onTrouble) {
      watchers.add(onTrouble);
      return () => watchers.delete(onTrouble);
    },
    async jobs() {
      const cards = await listed();
      if (cards.every((card) => 'recipe' in card)) return cards;
      await inTurn(rebuildCards);
      return listed();
    },
    rebuildCards: () => inTurn(rebuildCards),
    setting: (key) => connection.run(async (db) => (await db.settings.get(key))?.value),
    putSetting: (key, value) =>
      inTurn(async (db) => {
        await db.settings.put({ key, value });
      }),
    lastDurability: () => durability,
    close() {
      notes.close();
      connection.close();
    },
  };
}

/** Missing on a page over plain http. */
function ownLocks(): LockManager | null {
  const { navigator } = globalThis;
  return navigator !== undefined && 'locks' in navigator ? navigator.locks : null;
}

function ownChannel(name: string): BroadcastChannel | null {
  return 'BroadcastChannel' in globalThis ? new BroadcastChannel(name) : null;
}
