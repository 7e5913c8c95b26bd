import { cacheName, cachesOf, filesLock, type OfflineFiles, PAGE } from './offlineFiles';

/** What the store of files needs of the worker it lives in. */
export interface FileStoreParts {
  /** The folder's address, with a slash at its end. */
  readonly scope: string;
  readonly offline: OfflineFiles;
  readonly caches: Pick<CacheStorage, 'open' | 'keys' | 'delete'>;
  readonly fetch: (request: Request) => Promise<Response>;
  /** Names of all locks held anywhere on this origin, with whose they are. */
  readonly locksHeld: () => Promise<readonly LockInfo[]>;
  /** How many pages are open on this folder. */
  readonly pagesOpen: () => Promise<number>;
}

export interface FileStore {
  /** Fetches every file, held to its integrity. Rejects when one is missing or another's. */
  takeIn(): Promise<void>;
  /** The answer from what was taken in; null when the request is none of its business. */
  answer(request: Request): Promise<Response> | null;
  /** Drops the files of versions no page uses any more. */
  tidy(): Promise<void>;
}

/** One version's files on this device, and those of older versions as long as a page uses them. */
export function createFileStore(parts: FileStoreParts): FileStore {
  const { scope, offline, caches } = parts;
  const own = cacheName(scope, offline.version);
  const listed = new Set(offline.files.map(({ path }) => path));

  async function takeIn(): Promise<void> {
    const cache = await caches.open(own);
    await Promise.all(
      offline.files.map(async ({ path, integrity }) => {
        const request = new Request(addressOf(scope, path), { cache: 'no-cache', integrity });
        const response = await parts.fetch(request);
        if (!response.ok) throw new Error(`${path} was answered ${response.status}.`);
        await cache.put(addressOf(scope, path), response);
      }),
    );
  }

  function answer(request: Request): Promise<Response> | null {
    const path = pathBelow(scope, request);
    return path === null ? null : find(path, request);
  }

  /** This version's file; an older page's own; and the server's where neither is there. */
  async function find(path: string, request: Request): Promise<Response> {
    const names = await caches.keys();
    const older = names.filter((name) => name.startsWith(cachesOf(scope)) && name !== own);
    for (const name of listed.has(path) ? [own, ...older] : older) {
      const cache = await caches.open(name);
      const kept = await cache.match(addressOf(scope, path));
      if (kept !== undefined) return kept;
    }
    return parts.fetch(request);
  }

  async function tidy(): Promise<void> {
    const [names, held, pages] = await Promise.all([
      caches.keys(),
      parts.locksHeld(),
      parts.pagesOpen(),
    ]);
    const pageLocks = held.filter(({ name }) => name?.startsWith(filesLock(scope, '')));
    // A page that has not said yet which version it is may be any.
    if (pageLocks.length < pages) return;
    const used = new Set(pageLocks.map(({ name }) => name));
    for (const name of names) {
      if (!name.startsWith(cachesOf(scope)) || name === own) continue;
      const version = name.slice(cachesOf(scope).length);
      if (!used.has(filesLock(scope, version))) await caches.delete(name);
    }
  }

  return { takeIn, answer, tidy };
}

/** The page goes by the folder's address: a host may send index.html elsewhere. */
function addressOf(scope: string, path: string): string {
  return new URL(path === PAGE ? './' : path, scope).href;
}

/** The file a request asks for; null for another origin, another folder, or more than a look. */
function pathBelow(scope: string, request: Request): string | null {
  const address = new URL(request.url);
  address.hash = '';
  address.search = '';
  if (request.method !== 'GET' || !address.href.startsWith(scope)) return null;
  return decodeURIComponent(address.href.slice(scope.length)) || PAGE;
}
