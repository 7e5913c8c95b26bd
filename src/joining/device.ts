import { createStore } from 'zustand/vanilla';
import type { Bench, BenchState } from '#bench';
import { filesVersion, watchOffline } from '#platform';
import type { Device, DeviceState } from '#screens';

interface DeviceParts {
  readonly page: Window;
  readonly bench: Bench;
}

/** The app's own files and their versions joined to the bench, which must not be disturbed. */
export function joinDevice({ page, bench }: DeviceParts): Device {
  const { document, navigator, location } = page;
  const store = createStore<DeviceState>(() => ({
    offline: 'not offered',
    readyNow: false,
    update: 'none',
  }));
  const offline = watchOffline({
    container: 'serviceWorker' in navigator ? navigator.serviceWorker : null,
    locks: 'locks' in navigator ? navigator.locks : null,
    version: filesVersion(document),
    scope: new URL('./', location.href).href,
    document,
    onState({ stage, justReady, update }) {
      store.setState((before) => ({
        offline: stage,
        readyNow: justReady,
        update: update ? (before.update === 'none' ? 'here' : before.update) : 'none',
      }));
    },
    reload: () => location.reload(),
  });

  bench.store.subscribe((now) => {
    const open = mustNotStop(now);
    offline.counting(open);
    if (!open && store.getState().update === 'waits for a count') {
      store.setState({ update: 'here' });
    }
  });

  return {
    store,
    updateApp() {
      void offline.update().then((done) => {
        if (done === 'count open') store.setState({ update: 'waits for a count' });
      });
    },
    readyTold: () => store.setState({ readyNow: false }),
  };
}

/** A valve is being counted, or something counted is not on disk yet. At rest all of it is. */
function mustNotStop({ access, job, keptThrough, resting }: BenchState): boolean {
  const phase = job.open?.phase;
  const counting = !resting && (phase === 'counting' || phase === 'landing');
  return access === 'writer' && (counting || keptThrough < job.seq);
}
