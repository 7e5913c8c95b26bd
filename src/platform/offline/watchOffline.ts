import { countLock, filesLock } from './offlineFiles';

/** How far the app is from opening without its server. */
export type OfflineStage = 'not offered' | 'fetching' | 'ready' | 'failed';

export interface OfflineState {
  readonly stage: OfflineStage;
  /** It became ready while this page was open: worth saying, once. */
  readonly justReady: boolean;
  /** A new version is on this device and waits to be asked for. */
  readonly update: boolean;
}

export interface OfflineParts {
  /** Null where the browser has none: over plain http, or in a private window of some. */
  readonly container: ServiceWorkerContainer | null;
  readonly locks: LockManager | null;
  /** Null for a page that was not built: it has no files to keep. */
  readonly version: string | null;
  /** The folder's address, with a slash at its end. */
  readonly scope: string;
  readonly document: Pick<Document, 'visibilityState' | 'addEventListener'>;
  onState(state: OfflineState): void;
  reload(): void;
}

export interface Offline {
  /** A valve is being counted, or no longer. While one is, in any window, nothing is updated. */
  counting(open: boolean): void;
  /** Takes the new version and reloads, unless a count is open. */
  update(): Promise<'reloading' | 'count open' | 'nothing new'>;
}

/** Keeps the app's files on the device, and tells how that goes. Never reloads unless asked. */
export function watchOffline(parts: OfflineParts): Offline {
  const { container, locks, version, scope } = parts;
  let state: OfflineState = { stage: 'not offered', justReady: false, update: false };
  let registration: ServiceWorkerRegistration | null = null;
  let endCount: (() => void) | null = null;

  function tell(change: Partial<OfflineState>): void {
    state = { ...state, ...change };
    parts.onState(state);
  }

  function follow(worker: ServiceWorker, first: boolean): void {
    worker.addEventListener('statechange', () => {
      if (worker.state === 'installed' && !first) tell({ update: true });
      if (worker.state === 'activated') tell({ stage: 'ready', justReady: first, update: false });
      if (worker.state === 'redundant' && first) tell({ stage: 'failed' });
    });
  }

  async function register(from: ServiceWorkerContainer): Promise<void> {
    tell({ stage: 'fetching' });
    try {
      registration = await from.register(new URL('offline.js', scope).href, {
        scope,
        updateViaCache: 'none',
      });
    } catch {
      tell({ stage: 'failed' });
      return;
    }
    const { active, waiting, installing } = registration;
    if (active !== null) tell({ stage: 'ready', update: waiting !== null });
    const first = active === null;
    if (installing !== null) follow(installing, first);
    if (first && waiting !== null) follow(waiting, first);
    registration.addEventListener('updatefound', () => {
      if (registration?.installing) follow(registration.installing, registration.active === null);
    });
    active?.postMessage('tidy');
    parts.document.addEventListener('visibilitychange', () => {
      if (parts.document.visibilityState !== 'visible') return;
      registration?.update().catch(() => undefined);
    });
  }

  /** Held as long as the page lives. */
  function hold(name: string): () => void {
    let letGo: () => void = () => undefined;
    const held = new Promise<void>((resolve) => {
      letGo = resolve;
    });
    locks?.request(name, { mode: 'shared' }, () => held).catch(() => undefined);
    return letGo;
  }

  async function countOpen(): Promise<boolean> {
    if (endCount !== null) return true;
    const held = (await locks?.query())?.held ?? [];
    return held.some(({ name }) => name === countLock(scope));
  }

  if (version !== null) hold(filesLock(scope, version));
  if (container !== null && version !== null) void register(container);

  return {
    counting(open) {
      if (open === (endCount !== null)) return;
      endCount?.();
      endCount = open ? hold(countLock(scope)) : null;
    },
    async update() {
      const waiting = registration?.waiting ?? null;
      if (waiting === null) return 'nothing new';
      if (await countOpen()) return 'count open';
      waiting.addEventListener('statechange', () => {
        if (waiting.state === 'activated') parts.reload();
      });
      waiting.postMessage('take over');
      return 'reloading';
    },
  };
}

/** The version the build wrote into the page; null in a page that was not built. */
export function filesVersion(document: Pick<Document, 'querySelector'>): string | null {
  return document.querySelector('meta[name="files"]')?.getAttribute('content') ?? null;
}
