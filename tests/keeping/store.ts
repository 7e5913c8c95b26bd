import { IDBFactory, IDBKeyRange } from 'fake-indexeddb';
import { afterEach } from 'vitest';
import { createKeeping, type Keeping, type KeepingOptions } from '#keeping';
import { done } from './done';

const opened: Keeping[] = [];
let made = 0;

afterEach(() => {
  for (const keeping of opened.splice(0)) keeping.close();
});

/** A device of its own: several windows may be opened on it. */
export interface Device {
  readonly indexedDB: IDBFactory;
  readonly name: string;
  window(options?: KeepingOptions): Keeping;
}

export function device(): Device {
  const indexedDB = new IDBFactory();
  made += 1;
  const name = `keeping-test-${made}`;
  return {
    indexedDB,
    name,
    window(options = {}) {
      const keeping = createKeeping({
        name,
        indexedDB,
        IDBKeyRange,
        locks: null,
        channel: new BroadcastChannel(name),
        ...options,
      });
      opened.push(keeping);
      return keeping;
    },
  };
}

/** Opens the store behind the room's back. */
export function rawStore({ indexedDB, name }: Device): Promise<IDBDatabase> {
  return done(indexedDB.open(name));
}

/** Puts a row straight into the events of the store. */
export async function plantEvent(on: Device, row: object): Promise<void> {
  const db = await rawStore(on);
  await done(db.transaction('events', 'readwrite').objectStore('events').put(row));
  db.close();
}
