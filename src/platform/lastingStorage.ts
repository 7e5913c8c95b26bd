/** Whether the browser has promised not to clear what is kept here. */
export type Lasting = 'yes' | 'no' | 'not asked' | 'not offered';

type Persistence = Pick<StorageManager, 'persist' | 'persisted'>;

/** The browser's own promise; null where it makes none. */
export function persistence(page: Window): Persistence | null {
  const { navigator } = page;
  return 'storage' in navigator && 'persist' in navigator.storage ? navigator.storage : null;
}

/** Looks, without asking, whether storage lasts. */
export async function storageLasts(storage: Persistence | null): Promise<Lasting> {
  if (storage === null) return 'not offered';
  return (await storage.persisted().catch(() => false)) ? 'yes' : 'not asked';
}

/** Asks the browser to let storage last. Some browsers put the question to the builder. */
export async function askToLast(storage: Persistence | null): Promise<Lasting> {
  if (storage === null) return 'not offered';
  return (await storage.persist().catch(() => false)) ? 'yes' : 'no';
}
