import { type DatabaseOptions, describeDatabase, type KeepingDatabase } from './database';
import { connectionLost, KeepError, keepErrorFrom } from './keepError';

export interface Connection {
  /** Runs work on the store; opens it again and runs once more where the connection was lost. */
  run<T>(work: (db: KeepingDatabase) => PromiseLike<T>): Promise<T>;
  close(): void;
}

/** The store with its connection looked after. Everything it rejects with is a KeepError. */
export function connect(options: Omit<DatabaseOptions, 'onSuperseded'>): Connection {
  /** Why nothing more is to be read or written here; null while all is well. */
  let ended: string | null = null;
  const db = describeDatabase({
    ...options,
    onSuperseded: () => {
      ended = 'A newer version of the app has the store: reload the page.';
    },
  });

  async function run<T>(work: (db: KeepingDatabase) => PromiseLike<T>): Promise<T> {
    try {
      return await attempt(work);
    } catch (error) {
      if (ended !== null || !connectionLost(error)) throw keepErrorFrom(error);
    }
    try {
      db.close({ disableAutoOpen: false });
      await db.open();
      return await attempt(work);
    } catch (error) {
      throw keepErrorFrom(error);
    }
  }

  async function attempt<T>(work: (db: KeepingDatabase) => PromiseLike<T>): Promise<T> {
    if (ended !== null) throw new KeepError('failed', { cause: new Error(ended) });
    return await work(db);
  }

  return {
    run,
    close() {
      ended ??= 'The store was closed.';
      db.close();
    },
  };
}
