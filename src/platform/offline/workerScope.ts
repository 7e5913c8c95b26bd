interface Lasting {
  waitUntil(work: Promise<unknown>): void;
}

interface Asked extends Lasting {
  readonly request: Request;
  respondWith(answer: Promise<Response>): void;
}

interface Told extends Lasting {
  readonly data: unknown;
}

/** The part of a service worker's global scope that is used; its types can't stand beside a page's. */
export interface WorkerScope {
  readonly registration: { readonly scope: string };
  readonly caches: CacheStorage;
  readonly navigator: { readonly locks: LockManager };
  readonly clients: {
    claim(): Promise<void>;
    matchAll(of: { type: 'window'; includeUncontrolled: boolean }): Promise<readonly unknown[]>;
  };
  fetch(request: Request): Promise<Response>;
  skipWaiting(): Promise<void>;
  addEventListener(type: 'install' | 'activate', then: (event: Lasting) => void): void;
  addEventListener(type: 'fetch', then: (event: Asked) => void): void;
  addEventListener(type: 'message', then: (event: Told) => void): void;
}
