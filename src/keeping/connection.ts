import { type DatabaseOptions, describeDatabase, type KeepingDatabase } from './database';
import { connectionLost, KeepError, keepErrorFrom } from './keepError';

/** What befell the store: its logs are gone, or a newer version of the app has it. */
export type StoreTrouble = 'emptied' | 'superseded';

export interface Connection {
  /** Runs work on the store; opens it again and runs once more where the connection was lost. */
  run<T>(work: (db: KeepingDatabase) => PromiseLike<T>): Promise<T>;
  /** A newer version of the app is open: nothing more is read or written here. */
  supersede(): void;
  close(): void;
}

interface ConnectionOptions
  extends Omit<DatabaseOptions, 'onSuperseded' | 'onDeleted' | 'onDropped'> {
  onTrouble(what: StoreTrouble): void;
}

/** The store with its connection looked after. Everything it rejects with is a KeepError. */
export function connect({ onTrouble, ...options }: ConnectionOptions): Connection {
  /** Why nothing more is to be read or written here; null while all is well. */
  let ended: 'superseded' | 'closed' | null = null;
  const db = describeDatabase({
    ...options,
    onSuperseded: supersede,
    onDeleted: () => {
      if (ended === null) onTrouble('emptied');
    },
    onDropped: () => void lookAgain(),
  });

  function supersede(): void {
    if (ended !== null) return;
    ended = 'superseded';
    db.close();
    onTrouble('superseded');
  }

  /** A dropped connection is opened anew at its next use; whether the logs went with it is looked at now. */
  async function lookAgain(): Promise<void> {
    if (ended !== null) return;
    const left = await run((db) => db.events.count()).catch(() => null);
    if (left === 0) onTrouble('emptied');
  }

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
    if (ended === 'superseded') throw new KeepError('superseded');
    if (ended === 'closed') {
      throw new KeepError('failed', { cause: new Error('The store was closed.') });
    }
    return await work(db);
  }

  return {
    run,
    supersede,
    close() {
      ended ??= 'closed';
      db.close();
    },
  };
}
