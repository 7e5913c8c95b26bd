import { Dexie, type Table } from 'dexie';
import type { JobCard } from './jobCard';
import type { StoredEvent } from './lift';

export interface StoredSetting {
  readonly key: string;
  readonly value: unknown;
}

/** The store on this device. Events are only ever added; cards are a cache of what they fold to. */
export type KeepingDatabase = Dexie & {
  readonly events: Table<StoredEvent, [string, number]>;
  readonly jobs: Table<JobCard, string>;
  readonly settings: Table<StoredSetting, string>;
};

export interface DatabaseOptions {
  readonly name: string;
  readonly indexedDB: IDBFactory | undefined;
  readonly IDBKeyRange: typeof IDBKeyRange | undefined;
  /** Another window runs a newer version of the app and has asked for the store. */
  onSuperseded(): void;
  /** Opening waits for another window to let go. */
  onBlocked(): void;
}

/** Describes the store; it opens at its first use. Writes reach the disk before they resolve. */
export function describeDatabase(options: DatabaseOptions): KeepingDatabase {
  const { indexedDB, IDBKeyRange: keyRange } = options;
  const db = new Dexie(options.name, {
    chromeTransactionDurability: 'strict',
    cache: 'disabled',
    ...(indexedDB === undefined ? {} : { indexedDB }),
    ...(keyRange === undefined ? {} : { IDBKeyRange: keyRange }),
  });
  db.version(1).stores({ events: '[jobId+seq]', jobs: 'id, changedAt', settings: 'key' });
  db.on('blocked', () => {
    options.onBlocked();
    return false;
  });
  db.on('versionchange', (change) => {
    const upgrade = change.newVersion !== null && change.newVersion > 0;
    if (upgrade) options.onSuperseded();
    // Let go at once, or the other window hangs. After a deletion the next use opens an empty store.
    db.close({ disableAutoOpen: upgrade });
    return false;
  });
  return Object.assign(db, {
    events: db.table<StoredEvent, [string, number]>('events'),
    jobs: db.table<JobCard, string>('jobs'),
    settings: db.table<StoredSetting, string>('settings'),
  });
}
