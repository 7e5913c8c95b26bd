import { forceCloseDatabase } from 'fake-indexeddb';
import { describe, expect, test } from 'vitest';
import type { Keeper } from '#bench';
import type { JobEvent } from '#counting';
import type { Keeping } from '#keeping';
import type { JobKeeper } from '#shelf';
import { done } from './done';
import { journeys } from './journeys';
import { device, plantEvent, rawStore } from './store';

const walk = journeys.walk!;
const dayTwo = journeys['day-two']!;
const batch = (from: number, to: number): readonly JobEvent[] => walk.slice(from - 1, to);
const seqs = (events: readonly JobEvent[]): readonly number[] => events.map(({ seq }) => seq);

/** What a call rejected with: its failure and what caused it. */
async function failureOf(call: Promise<unknown>): Promise<unknown> {
  try {
    await call;
    return 'kept';
  } catch (error) {
    return error instanceof Error && 'failure' in error ? error.failure : error;
  }
}

test('keeping is what the bench and the shelf ask of a keeper', () => {
  const keeping: Keeping = device().window();
  const keeper: Keeper = keeping;
  const jobs: Pick<JobKeeper, 'jobs' | 'read' | 'append'> = keeping;
  expect(keeper).toBe(jobs);
});

describe('given nothing kept', () => {
  test('when a job is read, then it has no events and may be written', async () => {
    const keeping = device().window();
    expect(await keeping.read('unknown')).toEqual({ events: [], newer: false, readOnly: null });
    expect(await keeping.jobs()).toEqual([]);
  });

  test('when appends are called without waiting, then all are kept in the order of the calls', async () => {
    const on = device();
    const keeping = on.window();
    await Promise.all(walk.map((event) => keeping.append([event])));
    expect((await keeping.read('job-walk')).events).toEqual(walk);
    expect(await on.window().read('job-walk')).toEqual({
      events: walk,
      newer: false,
      readOnly: null,
    });
  });

  test('when nothing is appended, then nothing happens', async () => {
    const keeping = device().window();
    await keeping.append([]);
    expect(await keeping.jobs()).toEqual([]);
  });

  test('when two jobs are kept, then neither log holds the other’s events', async () => {
    const keeping = device().window();
    await Promise.all([keeping.append(walk), keeping.append(dayTwo)]);
    expect((await keeping.read('job-walk')).events).toEqual(walk);
    expect((await keeping.read('job-day-two')).events).toEqual(dayTwo);
  });

  test('when a batch has a gap or two jobs in it, then it fails and nothing is written', async () => {
    const keeping = device().window();
    const gap = [...batch(1, 3), ...batch(5, 6)];
    const mixed = [...batch(1, 1), ...dayTwo.slice(1, 2)];
    expect(await failureOf(keeping.append(gap))).toBe('failed');
    expect(await failureOf(keeping.append(mixed))).toBe('failed');
    expect((await keeping.read('job-walk')).events).toEqual([]);
  });

  test('when a log is begun in its middle, then it fails: no log has a hole', async () => {
    const keeping = device().window();
    expect(await failureOf(keeping.append(batch(4, 6)))).toBe('failed');
    expect((await keeping.read('job-walk')).events).toEqual([]);
  });
});

describe('given a log through event 6', () => {
  async function given() {
    const on = device();
    const keeping = on.window();
    await keeping.append(batch(1, 6));
    return { on, keeping };
  }

  test('when another window writes 7 first, then 7 is a conflict and the log is the other’s', async () => {
    const { on, keeping } = await given();
    await on.window().append(batch(7, 8));
    const other: JobEvent = { ...batch(7, 7)[0]!, at: 1 };
    expect(await failureOf(keeping.append([other]))).toBe('conflict');
    expect((await keeping.read('job-walk')).events).toEqual(batch(1, 8));
  });

  test('when an event of a batch is in conflict, then none of the batch is written', async () => {
    const { on, keeping } = await given();
    await on.window().append(batch(7, 7));
    const other = batch(7, 9).map((event) => ({ ...event, at: event.at + 1 }));
    expect(await failureOf(keeping.append(other))).toBe('conflict');
    expect((await keeping.read('job-walk')).events).toEqual(batch(1, 7));
  });

  test('when an event can’t be stored, then none of its batch is, and the card stands as it was', async () => {
    const { keeping } = await given();
    const before = await keeping.jobs();
    const unstorable: JobEvent = Object.assign({ ...batch(8, 8)[0]! }, { odd: () => 0 });
    expect(await failureOf(keeping.append([...batch(7, 7), unstorable]))).toBe('failed');
    expect((await keeping.read('job-walk')).events).toEqual(batch(1, 6));
    expect(await keeping.jobs()).toEqual(before);
  });

  test('when a write is tried again after its answer was lost, then it counts as kept, once', async () => {
    const { keeping } = await given();
    await keeping.append(batch(7, 8));
    expect(await failureOf(keeping.append(batch(7, 8)))).toBe('kept');
    expect(await failureOf(keeping.append(batch(7, 11)))).toBe('kept');
    expect((await keeping.read('job-walk')).events).toEqual(batch(1, 11));
  });

  test('when an older event comes again with later ones behind it, then it is a conflict', async () => {
    const { keeping } = await given();
    expect(await failureOf(keeping.append(batch(3, 4)))).toBe('conflict');
    expect((await keeping.read('job-walk')).events).toEqual(batch(1, 6));
  });

  test('when a failed append is followed by a good one, then the good one is kept', async () => {
    const { keeping } = await given();
    const results = await Promise.all([
      failureOf(keeping.append(batch(9, 9))),
      failureOf(keeping.append(batch(7, 7))),
    ]);
    expect(results).toEqual(['failed', 'kept']);
  });

  test('when the window closes and another opens, then it reads and goes on', async () => {
    const { on, keeping } = await given();
    keeping.close();
    const again = on.window();
    expect(seqs((await again.read('job-walk')).events)).toEqual([1, 2, 3, 4, 5, 6]);
    await again.append(batch(7, 34));
    expect((await again.read('job-walk')).events).toEqual(walk);
    expect(await failureOf(keeping.append(dayTwo))).toBe('failed');
    expect(await failureOf(keeping.read('job-walk'))).toBe('failed');
    expect((await again.read('job-day-two')).events).toEqual([]);
  });

  test('when the browser drops the connection, then the next write opens it again', async () => {
    const { on, keeping } = await given();
    const open: IDBDatabase[] = [];
    const { open: original } = on.indexedDB;
    on.indexedDB.open = (...args) => {
      const request = original.apply(on.indexedDB, args);
      request.addEventListener('success', () => open.push(request.result));
      return request;
    };
    const dropped = on.window();
    const troubles: string[] = [];
    dropped.watch((what) => troubles.push(what));
    await dropped.append(batch(7, 7));
    for (const db of open) {
      (forceCloseDatabase as (db: unknown) => void)(db);
    }
    const both = [dropped.append(batch(8, 8)), dropped.append(batch(9, 9))];
    expect(await Promise.all(both.map(failureOf))).toEqual(['kept', 'kept']);
    expect((await keeping.read('job-walk')).events).toEqual(batch(1, 9));
    expect(open.length).toBeGreaterThan(1);
    expect(troubles).toEqual([]);
  });

  test('when the browser drops the connection and the logs with it, then that is told', async () => {
    const { on } = await given();
    const open: IDBDatabase[] = [];
    const { open: original } = on.indexedDB;
    on.indexedDB.open = (...args) => {
      const request = original.apply(on.indexedDB, args);
      request.addEventListener('success', () => open.push(request.result));
      return request;
    };
    const keeping = on.window();
    await keeping.append(batch(7, 7));
    const told = new Promise<string>((resolve) => keeping.watch(resolve));
    const raw = await rawStore(on);
    await done(raw.transaction('events', 'readwrite').objectStore('events').clear());
    raw.close();
    for (const db of open) (forceCloseDatabase as (db: unknown) => void)(db);
    expect(await told).toBe('emptied');
    expect(await failureOf(keeping.append(batch(1, 7)))).toBe('kept');
  });

  test('when the store is deleted under it, then going on fails; the whole log again is kept', async () => {
    const { on, keeping } = await given();
    const troubles: string[] = [];
    keeping.watch((what) => troubles.push(what));
    await done(on.indexedDB.deleteDatabase(on.name));
    expect(troubles).toEqual(['emptied']);
    expect(await failureOf(keeping.append(batch(7, 7)))).toBe('failed');
    expect((await keeping.read('job-walk')).events).toEqual([]);
    expect(await failureOf(keeping.append(batch(1, 7)))).toBe('kept');
    expect((await keeping.read('job-walk')).events).toEqual(batch(1, 7));
  });

  test('when a newer version of the app takes the store, then this window lets go and writes no more', async () => {
    const { on, keeping } = await given();
    const troubles: string[] = [];
    keeping.watch((what) => troubles.push(what));
    const upgrade = on.indexedDB.open(on.name, 20);
    const newer = await done(upgrade);
    expect(newer.version).toBe(20);
    const refused = keeping.append(batch(7, 7));
    expect(await failureOf(refused)).toBe('superseded');
    expect(troubles).toEqual(['superseded']);
    expect(await failureOf(on.window().append(batch(7, 7)))).toBe('superseded');
    expect(await done(newer.transaction('events').objectStore('events').count())).toBe(6);
    newer.close();
  });

  test('when the disk is full, then it says so and the log stands as it was', async () => {
    const { on, keeping } = await given();
    const full = on.window({ indexedDB: fullDisk(on.indexedDB) });
    expect(await failureOf(full.append(batch(7, 8)))).toBe('full');
    expect((await keeping.read('job-walk')).events).toEqual(batch(1, 6));
  });

  test('when it was written, then strictly: the browser’s transaction says so', async () => {
    const { keeping } = await given();
    expect(keeping.lastDurability()).toBe('strict');
    expect(device().window().lastDurability()).toBeUndefined();
  });

  test('when many are appended at once, then one is finished before the next is begun', async () => {
    const { on } = await given();
    let open = 0;
    let most = 0;
    let begun = 0;
    const watched = on.window({
      indexedDB: withTransactions(on.indexedDB, (db, stores, mode, options) => {
        const transaction = db.transaction(stores, mode, options);
        if (mode !== 'readwrite') return transaction;
        begun += 1;
        open += 1;
        most = Math.max(most, open);
        transaction.addEventListener('complete', () => {
          open -= 1;
        });
        return transaction;
      }),
    });
    await Promise.all(batch(7, 34).map((event) => watched.append([event])));
    expect({ begun, most }).toEqual({ begun: 28, most: 1 });
  });

  test('when events are written, then by add alone: the store itself refuses to write over one', async () => {
    const { on } = await given();
    const calls: string[] = [];
    const watched = on.window({
      indexedDB: withTransactions(on.indexedDB, (db, stores, mode, options) => {
        const transaction = db.transaction(stores, mode, options);
        if (mode !== 'readwrite') return transaction;
        const { objectStore } = transaction;
        transaction.objectStore = (name) => {
          const store = objectStore.call(transaction, name);
          if (Object.hasOwn(store, 'add')) return store;
          for (const method of ['add', 'put', 'delete', 'clear'] as const) {
            const own: (...args: never[]) => unknown = store[method];
            Object.defineProperty(store, method, {
              value: (...args: never[]) => {
                calls.push(`${method} ${name}`);
                return own.apply(store, args);
              },
            });
          }
          return store;
        };
        return transaction;
      }),
    });
    await watched.append(batch(7, 8));
    expect(calls).toEqual(['add events', 'add events', 'put jobs']);
  });

  test('when the browser says it writes loosely all the same, then nothing counts as kept', async () => {
    const { on, keeping } = await given();
    const loose = on.window({
      indexedDB: withTransactions(on.indexedDB, (db, ...args) => db.transaction(args[0], args[1])),
    });
    expect(await failureOf(loose.append(batch(7, 7)))).toBe('failed');
    expect((await keeping.read('job-walk')).events).toEqual(batch(1, 6));
  });
});

describe('given a log that this version can’t read to its end', () => {
  const cases = [
    ['an event of a newer version', { ...batch(7, 7)[0]!, v: 99 }, 'newer event'],
    [
      'an event of a type it does not know',
      { ...batch(7, 7)[0]!, type: 'polished' },
      'unknown event',
    ],
    ['an event without its time', { ...batch(7, 7)[0]!, at: 'noon' }, 'damaged event'],
    ['a hole', { ...batch(8, 8)[0]! }, 'missing event'],
  ] as const;

  test.each(cases)(
    '%s: it opens read-only up to there and is not written',
    async (_name, row, why) => {
      const on = device();
      await on.window().append(batch(1, 6));
      await plantEvent(on, row);
      const keeping = on.window();
      expect(await keeping.read('job-walk')).toEqual({
        events: batch(1, 6),
        newer: true,
        readOnly: { why, seq: 7 },
      });
      expect(await failureOf(keeping.append(batch(7, 7)))).toBe('conflict');
      const db = await rawStore(on);
      expect(await done(db.transaction('events').objectStore('events').count())).toBe(7);
      db.close();
    },
  );

  test('an event damaged in the middle: nothing is added behind it either', async () => {
    const on = device();
    await on.window().append(batch(1, 6));
    await plantEvent(on, { ...batch(3, 3)[0]!, v: 'one' });
    const keeping = on.window();
    expect(await keeping.read('job-walk')).toMatchObject({
      events: batch(1, 2),
      readOnly: { why: 'damaged event', seq: 3 },
    });
    expect(await failureOf(keeping.append(batch(7, 7)))).toBe('conflict');
    expect(await failureOf(keeping.append(batch(3, 3)))).toBe('conflict');
  });

  test('an event whose type is a name every object has is unknown too', async () => {
    const on = device();
    await on.window().append(batch(1, 6));
    await plantEvent(on, { ...batch(7, 7)[0]!, type: 'constructor' });
    expect((await on.window().read('job-walk')).readOnly).toEqual({ why: 'unknown event', seq: 7 });
  });
});

test('given no IndexedDB at all, then reading and writing fail as values of KeepError', async () => {
  const broken = {
    open: () => {
      throw new DOMException('denied', 'SecurityError');
    },
  };
  const keeping = device().window({ indexedDB: Object.assign(device().indexedDB, broken) });
  expect(await failureOf(keeping.read('job-walk'))).toBe('failed');
  expect(await failureOf(keeping.append(batch(1, 1)))).toBe('failed');
});

type MakeTransaction = (
  db: IDBDatabase,
  stores: string | string[],
  mode: IDBTransactionMode,
  options?: IDBTransactionOptions,
) => IDBTransaction;

/** The same device through a window whose transactions are made otherwise. */
function withTransactions(indexedDB: IDBFactory, make: MakeTransaction): IDBFactory {
  const open = (name: string, version?: number) => {
    const request = indexedDB.open(name, version);
    request.addEventListener('success', () => {
      const db = request.result;
      const own = Object.getPrototypeOf(db).transaction;
      const plain = Object.create(db, { transaction: { value: own.bind(db) } });
      Object.defineProperty(db, 'transaction', {
        value: (stores: string[], mode: IDBTransactionMode, options: IDBTransactionOptions) =>
          make(plain, stores, mode, options),
      });
    });
    return request;
  };
  return Object.assign(Object.create(indexedDB), { open });
}

/** Every write to the events aborts its transaction as a full disk does: at the end, without a request's error. */
function fullDisk(indexedDB: IDBFactory): IDBFactory {
  return withTransactions(indexedDB, (db, stores, mode, options) => {
    const transaction = db.transaction(stores, mode, options);
    if (mode !== 'readwrite') return transaction;
    const full = new DOMException('The disk is full.', 'QuotaExceededError');
    const { objectStore } = transaction;
    transaction.objectStore = (store) => {
      const found = objectStore.call(transaction, store);
      if (store === 'jobs') {
        found.put = (...args) => {
          const request = Object.getPrototypeOf(found).put.apply(found, args);
          request.addEventListener('success', () => {
            Object.defineProperty(transaction, 'error', { value: full });
            transaction.abort();
          });
          return request;
        };
      }
      return found;
    };
    return transaction;
  });
}
