import { createStore } from 'zustand/vanilla';
import type { Bench, BenchState } from '#bench';
import { askToLast, filesVersion, persistence, storageLasts, watchOffline } from '#platform';
import { type Device, type DeviceState, isPractice } from '#screens';
import type { Store } from './store';

interface DeviceParts {
  readonly page: Window;
  readonly bench: Bench;
  readonly kept: Pick<Store, 'state'>;
}

/** The app's own files and their versions joined to the bench, which must not be disturbed. */
export function joinDevice({ page, bench, kept }: DeviceParts): Device {
  const { document, navigator, location } = page;
  const store = createStore<DeviceState>(() => ({
    offline: 'not offered',
    readyNow: false,
    update: 'none',
    store: kept.state.getState().store,
    lasting: 'not asked',
  }));
  kept.state.subscribe((state) => store.setState(state));
  const storage = persistence(page);
  let asked = false;
  void storageLasts(storage).then((lasting) => store.setState({ lasting }));
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

  bench.store.subscribe((now, before) => {
    if (!asked && store.getState().lasting === 'not asked' && newlyKeptReading(now, before)) {
      asked = true;
      void askToLast(storage).then((lasting) => store.setState({ lasting }));
    }
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

/** The first reading on disk is when there is something to lose, and the builder's hand is free. */
function newlyKeptReading(now: BenchState, before: BenchState): boolean {
  if (isPractice(now.jobId)) return false;
  const kept = now.keptThrough >= now.job.seq && now.job.readings.length > 0;
  const { phase } = now.job.open ?? { phase: 'read' };
  return kept && before.keptThrough < now.keptThrough && before.keptThrough > 0 && phase === 'read';
}
