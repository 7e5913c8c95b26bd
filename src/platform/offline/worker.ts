import { createFileStore } from './fileStore';
import type { OfflineFiles } from './offlineFiles';
import type { WorkerScope } from './workerScope';

/** Put here by the build, once every file is written. */
declare const __OFFLINE_FILES__: OfflineFiles;

const worker = self as unknown as WorkerScope;
const store = createFileStore({
  scope: worker.registration.scope,
  offline: __OFFLINE_FILES__,
  caches: worker.caches,
  fetch: (request) => worker.fetch(request),
  locksHeld: async () => (await worker.navigator.locks.query()).held ?? [],
  pagesOpen: async () =>
    (await worker.clients.matchAll({ type: 'window', includeUncontrolled: true })).length,
});

// A new version waits here until it is asked for: no page changes under the builder's hands.
worker.addEventListener('install', (event) => event.waitUntil(store.takeIn()));

worker.addEventListener('activate', (event) =>
  event.waitUntil(worker.clients.claim().then(() => store.tidy())),
);

worker.addEventListener('fetch', (event) => {
  const answer = store.answer(event.request);
  if (answer !== null) event.respondWith(answer);
});

worker.addEventListener('message', (event) => {
  if (event.data === 'take over') void worker.skipWaiting();
  if (event.data === 'tidy') event.waitUntil(store.tidy());
});
