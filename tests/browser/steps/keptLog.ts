import type { Page } from 'playwright-core';

/** One event as it lies in the store. */
export interface KeptEvent {
  readonly seq: number;
  readonly type: string;
  readonly to48?: number;
}

/** The events of all jobs as they lie on disk, read behind the app's back; null where there is no store. */
export function keptLog(page: Page): Promise<readonly KeptEvent[] | null> {
  return page.evaluate(
    () =>
      new Promise<KeptEvent[] | null>((resolve, reject) => {
        const opening = indexedDB.open('turncaller');
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const db = opening.result;
          if (!db.objectStoreNames.contains('events')) {
            db.close();
            resolve(null);
            return;
          }
          const all = db.transaction('events').objectStore('events').getAll();
          all.onsuccess = () => {
            db.close();
            resolve(all.result);
          };
          all.onerror = () => reject(all.error);
        };
      }),
  );
}
