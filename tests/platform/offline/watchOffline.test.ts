import { describe, expect, test } from 'vitest';
import { type OfflineState, watchOffline } from '#platform';
import { countLock } from '../../../src/platform/offline/offlineFiles';

const scope = 'https://shop.test/counting/';

class FakeWorker extends EventTarget {
  readonly told: unknown[] = [];
  constructor(public state: string) {
    super();
  }
  postMessage(message: unknown): void {
    this.told.push(message);
  }
  becomes(state: string): void {
    this.state = state;
    this.dispatchEvent(new Event('statechange'));
  }
}

class FakeRegistration extends EventTarget {
  installing: FakeWorker | null = null;
  waiting: FakeWorker | null = null;
  active: FakeWorker | null = null;
  updates = 0;
  async update(): Promise<void> {
    this.updates += 1;
  }
  finds(worker: FakeWorker): void {
    this.installing = worker;
    this.dispatchEvent(new Event('updatefound'));
  }
}

const settled = () => new Promise((resolve) => setTimeout(resolve));

async function watched(
  prepare: (registration: FakeRegistration) => void,
  parts: { version?: string | null; refuses?: boolean; heldElsewhere?: string[] } = {},
) {
  const registration = new FakeRegistration();
  prepare(registration);
  const states: OfflineState[] = [];
  const held = new Set<string>();
  let reloads = 0;
  const page = Object.assign(new EventTarget(), { visibilityState: 'visible' as const });
  const offline = watchOffline({
    container: {
      register: async () => {
        if (parts.refuses) throw new TypeError('refused');
        return registration;
      },
    } as unknown as ServiceWorkerContainer,
    locks: {
      async request(name: string, _mode: LockOptions, work: () => Promise<void>) {
        held.add(name);
        await work();
        held.delete(name);
      },
      query: async () => ({
        held: [...held, ...(parts.heldElsewhere ?? [])].map((name) => ({ name })),
      }),
    } as unknown as LockManager,
    version: parts.version === undefined ? 'one' : parts.version,
    scope,
    document: page as unknown as Document,
    onState: (state) => states.push(state),
    reload: () => {
      reloads += 1;
    },
  });
  await settled();
  return { offline, registration, states, held, page, reloads: () => reloads };
}

describe('becoming ready', () => {
  test('the first time it is worth saying; a page opened later is told nothing new', async () => {
    const worker = new FakeWorker('installing');
    const first = await watched((registration) => {
      registration.installing = worker;
    });
    expect(first.states.at(-1)).toEqual({ stage: 'fetching', justReady: false, update: false });
    worker.becomes('installed');
    worker.becomes('activated');
    expect(first.states.at(-1)).toEqual({ stage: 'ready', justReady: true, update: false });
    const later = await watched((registration) => {
      registration.active = worker;
    });
    expect(later.states.at(-1)).toEqual({ stage: 'ready', justReady: false, update: false });
    expect(worker.told).toEqual(['tidy']);
  });

  test('a file that could not be had, or a browser that refuses, is a failure that is told', async () => {
    const worker = new FakeWorker('installing');
    const { states } = await watched((registration) => {
      registration.installing = worker;
    });
    worker.becomes('redundant');
    expect(states.at(-1)?.stage).toBe('failed');
    expect((await watched(() => undefined, { refuses: true })).states.at(-1)?.stage).toBe('failed');
  });

  test('a page that was not built keeps no files and holds no lock', async () => {
    const { states, held } = await watched(() => undefined, { version: null });
    expect(states).toEqual([]);
    expect(held.size).toBe(0);
  });

  test('shown again, it asks whether there is a newer version', async () => {
    const { registration, page } = await watched((one) => {
      one.active = new FakeWorker('activated');
    });
    page.dispatchEvent(new Event('visibilitychange'));
    expect(registration.updates).toBe(1);
  });
});

describe('a new version', () => {
  async function withNewer(heldElsewhere: string[] = []) {
    const newer = new FakeWorker('installing');
    const all = await watched(
      (registration) => {
        registration.active = new FakeWorker('activated');
      },
      { heldElsewhere },
    );
    all.registration.finds(newer);
    all.registration.waiting = newer;
    newer.becomes('installed');
    return { ...all, newer };
  }

  test('waits until it is asked for, and reloads only the page that asked, once it is active', async () => {
    const { offline, newer, states, reloads } = await withNewer();
    expect(states.at(-1)?.update).toBe(true);
    expect(newer.told).toEqual([]);
    expect(await offline.update()).toBe('reloading');
    expect(newer.told).toEqual(['take over']);
    expect(reloads()).toBe(0);
    newer.becomes('activated');
    expect(reloads()).toBe(1);
  });

  test('asked for by another page, it reloads nothing here', async () => {
    const { newer, reloads } = await withNewer();
    newer.becomes('activated');
    expect(reloads()).toBe(0);
  });

  test('is not taken while a count is open here, and is once it is closed', async () => {
    const { offline, newer } = await withNewer();
    offline.counting(true);
    expect(await offline.update()).toBe('count open');
    expect(newer.told).toEqual([]);
    offline.counting(false);
    await settled();
    expect(await offline.update()).toBe('reloading');
  });

  test('is not taken while a count is open in another window', async () => {
    const { offline } = await withNewer([countLock(scope)]);
    expect(await offline.update()).toBe('count open');
  });

  test('that is not there is nothing to take', async () => {
    const { offline } = await watched(() => undefined);
    expect(await offline.update()).toBe('nothing new');
  });
});
