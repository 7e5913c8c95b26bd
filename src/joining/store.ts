import { createStore, type StoreApi } from 'zustand/vanilla';
import type { Keeper } from '#bench';
import { createKeeping, holdUnkept, type Keeping, restoreLog } from '#keeping';
import type { DeviceState } from '#screens';
import type { BackupKeeper, JobKeeper } from '#shelf';

export interface Store {
  readonly keeping: Keeping;
  readonly forBench: Keeper;
  readonly forShelf: Pick<JobKeeper, 'jobs' | 'read' | 'append'>;
  readonly forBackup: Pick<BackupKeeper, 'restoreLog' | 'settings'>;
  /** Whether there is a store to keep in. */
  readonly state: StoreApi<Pick<DeviceState, 'store'>>;
}

/** This device's store, with memory behind it for what it will not take. */
export function joinStore(): Store {
  const state = createStore<Pick<DeviceState, 'store'>>(() => ({ store: 'here' }));
  const keeping = createKeeping({ onBlocked: () => state.setState({ store: 'blocked' }) });
  const logs = holdUnkept(keeping, (here) => state.setState({ store: here ? 'here' : 'none' }));
  keeping.watch((what) => {
    if (what === 'superseded') state.setState({ store: 'newer app' });
  });
  return {
    keeping,
    state,
    forBench: {
      read: logs.read,
      append: logs.append,
      claim: keeping.claim,
      takeOver: keeping.takeOver,
      follow: keeping.follow,
      watch: keeping.watch,
    },
    forBackup: {
      restoreLog: (events) => restoreLog(logs, keeping, events),
      settings: () => keeping.setting('settings'),
    },
    forShelf: {
      jobs: logs.jobs,
      append: logs.appendOrHold,
      // What can't be read at all is told where it is appended to or opened.
      read: (jobId) => logs.read(jobId).catch(() => ({ events: [] })),
    },
  };
}
