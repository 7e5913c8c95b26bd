import type { Keeper, KeepFailure } from '#bench';
import type { JobEvent } from '#counting';

type Fault = { readonly failure: KeepFailure };

/** A keeper in memory whose writes are settled by the test, one at a time and in order. */
export interface FakeKeeper extends Keeper {
  readonly logs: Map<string, JobEvent[]>;
  /** Writes begun and not settled. */
  pending(): number;
  /** Settles the oldest write: kept, or failed. */
  settle(fault?: Fault['failure']): Promise<void>;
  /** From now on writes settle at once. */
  prompt(): void;
  /** Another window takes the job over. */
  steal(jobId: string): void;
  /** Another window holds the job from the start. */
  holdElsewhere(jobId: string): void;
  /** The logs are deleted from under the app. */
  empty(): void;
  /** A newer version of the app takes the logs. */
  supersede(): void;
  unreadable: boolean;
  newer: boolean;
}

export function fakeKeeper(): FakeKeeper {
  const logs = new Map<string, JobEvent[]>();
  const writes: { events: readonly JobEvent[]; kept(): void; failed(fault: Fault): void }[] = [];
  const lost = new Map<string, () => void>();
  const elsewhere = new Set<string>();
  const followers = new Map<string, () => void>();
  const watchers = new Set<Parameters<Keeper['watch']>[0]>();
  let atOnce = false;

  function keep(events: readonly JobEvent[]): void {
    for (const event of events) {
      logs.set(event.jobId, [...(logs.get(event.jobId) ?? []), event]);
      followers.get(event.jobId)?.();
    }
  }

  const keeper: FakeKeeper = {
    logs,
    unreadable: false,
    newer: false,
    async read(jobId) {
      if (keeper.unreadable) throw new Error('the device cannot be read');
      return { events: logs.get(jobId) ?? [], newer: keeper.newer };
    },
    append(events) {
      if (atOnce) {
        keep(events);
        return Promise.resolve();
      }
      return new Promise<void>((resolve, reject) => {
        writes.push({
          events,
          kept() {
            keep(events);
            resolve();
          },
          failed: (fault) => reject(fault),
        });
      });
    },
    async claim(jobId, onLost) {
      if (elsewhere.has(jobId)) return null;
      lost.set(jobId, onLost);
      return { release: () => lost.delete(jobId) };
    },
    async takeOver(jobId, onLost) {
      elsewhere.delete(jobId);
      lost.set(jobId, onLost);
      return { release: () => lost.delete(jobId) };
    },
    follow(jobId, onChange) {
      followers.set(jobId, onChange);
      return () => followers.delete(jobId);
    },
    watch(onTrouble) {
      watchers.add(onTrouble);
      return () => watchers.delete(onTrouble);
    },
    empty() {
      logs.clear();
      for (const watcher of watchers) watcher('emptied');
    },
    supersede() {
      for (const watcher of watchers) watcher('superseded');
    },
    pending: () => writes.length,
    async settle(fault) {
      const write = writes.shift();
      if (write === undefined) throw new Error('no write is waiting');
      if (fault === undefined) write.kept();
      else write.failed({ failure: fault });
      await settled();
    },
    prompt() {
      atOnce = true;
    },
    steal(jobId) {
      elsewhere.add(jobId);
      lost.get(jobId)?.();
    },
    holdElsewhere(jobId) {
      elsewhere.add(jobId);
    },
  };
  return keeper;
}

/** Lets every promise that is ready run on. */
export async function settled(): Promise<void> {
  for (let i = 0; i < 10; i += 1) await Promise.resolve();
}
