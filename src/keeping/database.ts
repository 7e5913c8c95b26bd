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
  /** The store was deleted under the app. */
  onDeleted(): void;
  /** The browser dropped the connection: in the background, or because site data was cleared. */
  onDropped(): void;
  /** Opening waits for another window to let go. */
  onBlocked(): void;
}

/** The version of the store's own schema. */
export const STORE_VERSION = 1;

/** Dexie counts a store's versions in tens. */
const DEXIE_STEP = 10;

/** Describes the store; it opens at its first use. Writes reach the disk before they resolve. */
export function describeDatabase(options: DatabaseOptions): KeepingDatabase {
  const { indexedDB, IDBKeyRange: keyRange } = options;
  const db = new Dexie(options.name, {
    chromeTransactionDurability: 'strict',
    cache: 'disabled',
    ...(indexedDB === undefined ? {} : { indexedDB }),
    ...(keyRange === undefined ? {} : { IDBKeyRange: keyRange }),
  });
  db.version(STORE_VERSION).stores({
    events: '[jobId+seq]',
    jobs: 'id, changedAt',
    settings: 'key',
  });
  db.on(
    'ready',
    () => {
      // Dexie's own event of this name also tells of our closing it.
      db.backendDB().addEventListener('close', () => options.onDropped());
      // Dexie opens a store newer than it knows; what is in there is not ours to write to any more.
      if (db.backendDB().version <= STORE_VERSION * DEXIE_STEP) return;
      options.onSuperseded();
      throw new Dexie.VersionError('A newer version of the app has the store.');
    },
    true,
  );
  db.on('blocked', () => {
    options.onBlocked();
    return false;
  });
  db.on('versionchange', (change) => {
    const upgrade = change.newVersion !== null && change.newVersion > 0;
    // Let go at once, or the other window hangs. After a deletion the next use opens an empty store.
    db.close({ disableAutoOpen: upgrade });
    if (upgrade) options.onSuperseded();
    else options.onDeleted();
    return false;
  });
  return Object.assign(db, {
    events: db.table<StoredEvent, [string, number]>('events'),
    jobs: db.table<JobCard, string>('jobs'),
    settings: db.table<StoredSetting, string>('settings'),
  });
}
