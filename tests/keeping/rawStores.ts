import { done } from './done';
import type { Device } from './store';

type Where = Pick<Device, 'indexedDB' | 'name'>;

/** A store as some version of the app left it: its schema, its rows. */
export interface StoreDump {
  /** As IndexedDB counts it. */
  readonly version: number;
  readonly stores: readonly {
    readonly name: string;
    readonly keyPath: string | readonly string[];
    readonly indexes: readonly {
      readonly name: string;
      readonly keyPath: string | readonly string[];
    }[];
    readonly rows: readonly object[];
  }[];
}

/** Everything in the store on a device, read behind the app's back. */
export async function dumpOf(on: Where): Promise<StoreDump> {
  const db = await done(on.indexedDB.open(on.name));
  const names = [...db.objectStoreNames];
  const stores = await Promise.all(
    names.map(async (name) => {
      const store = db.transaction(name).objectStore(name);
      const indexes = [...store.indexNames].map((index) => ({
        name: index,
        keyPath: store.index(index).keyPath,
      }));
      const keyPath = store.keyPath ?? [];
      return { name, keyPath, indexes, rows: await done(store.getAll()) };
    }),
  );
  db.close();
  return { version: db.version, stores };
}

/** Lays a dump on a device as if that version of the app had run there. */
export async function layOn(on: Where, { version, stores }: StoreDump): Promise<void> {
  const opening = on.indexedDB.open(on.name, version);
  opening.onupgradeneeded = () => {
    for (const { name, keyPath, indexes, rows } of stores) {
      const store = opening.result.createObjectStore(name, { keyPath: keyOf(keyPath) });
      for (const index of indexes) store.createIndex(index.name, keyOf(index.keyPath));
      for (const row of rows) store.add(row);
    }
  };
  (await done(opening)).close();
}

function keyOf(path: string | readonly string[]): string | string[] {
  return typeof path === 'string' ? path : [...path];
}
