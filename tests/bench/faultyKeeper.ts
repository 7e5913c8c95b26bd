import type { Keeper, KeepFailure } from '#bench';
import type { JobEvent } from '#counting';

/** How a write goes, and when its answer comes: 'late' ones wait until the disk is let go. */
export type Fate =
  | { readonly kind: 'prompt' | 'late' | 'answer late' | 'answer lost' }
  | { readonly kind: 'refused'; readonly failure: Extract<KeepFailure, 'full' | 'failed'> }
  | { readonly kind: 'half'; readonly part: number };

export interface FaultyKeeper extends Keeper {
  /** What is on disk. */
  disk(): readonly JobEvent[];
  /** The fate of the writes to come, each once; then all are prompt. */
  fate(fate: Fate): void;
  /** Every write that hangs goes through now, in order. */
  letGo(): void;
  /** From now on every write is prompt, those that hang too. */
  heal(): void;
  /** The logs are deleted from under the app. */
  empty(): void;
  /** The same, and nobody is told. */
  vanish(): void;
  readonly counts: Record<Fate['kind'] | 'emptied' | 'vanished', number>;
}

/** A keeper of one job, as keeping is, but with a disk that has moods. */
export function faultyKeeper(opened: readonly JobEvent[]): FaultyKeeper {
  let disk: JobEvent[] = [...opened];
  const fates: Fate[] = [];
  const hanging: (() => void)[] = [];
  const watchers: ((what: 'emptied' | 'superseded') => void)[] = [];
  const counts = {
    prompt: 0,
    late: 0,
    'answer late': 0,
    'answer lost': 0,
    refused: 0,
    half: 0,
    emptied: 0,
    vanished: 0,
  };

  /** As keeping appends: what is there already counts as added, a gap is refused. */
  function write(events: readonly JobEvent[]): void {
    const first = events[0]?.seq ?? 1;
    if (first > disk.length + 1) throw fault('failed');
    for (const event of events) {
      const there = disk[event.seq - 1];
      if (there === undefined) disk.push(event);
      else if (there !== event) throw fault('conflict');
    }
  }

  function append(events: readonly JobEvent[]): Promise<void> {
    const next = fates.shift() ?? { kind: 'prompt' };
    counts[next.kind] += 1;
    switch (next.kind) {
      case 'prompt':
        return settle(() => write(events));
      case 'late':
        return new Promise((resolve, reject) => {
          hanging.push(() => settle(() => write(events)).then(resolve, reject));
        });
      case 'answer late': {
        const done = settle(() => write(events));
        return new Promise((resolve, reject) => {
          hanging.push(() => done.then(resolve, reject));
          done.catch(() => undefined);
        });
      }
      case 'answer lost':
        return settle(() => {
          write(events);
          throw fault('failed');
        });
      case 'refused':
        return Promise.reject(fault(next.failure));
      case 'half':
        return settle(() => {
          write(events.slice(0, Math.ceil(events.length * next.part)));
          throw fault('failed');
        });
      default:
        return next satisfies never;
    }
  }

  function letGo(): void {
    for (const go of hanging.splice(0)) go();
  }

  return {
    counts,
    append,
    letGo,
    disk: () => disk,
    fate: (fate) => fates.push(fate),
    heal() {
      fates.length = 0;
      letGo();
    },
    empty() {
      counts.emptied += 1;
      disk = [];
      for (const watcher of watchers) watcher('emptied');
    },
    vanish() {
      counts.vanished += 1;
      disk = [];
    },
    read: async () => ({ events: disk, newer: false }),
    claim: async () => ({ release() {} }),
    takeOver: async () => ({ release() {} }),
    follow: () => () => {},
    watch(onTrouble) {
      watchers.push(onTrouble);
      return () => {};
    },
  };
}

function fault(failure: KeepFailure): Error & { failure: KeepFailure } {
  return Object.assign(new Error(failure), { failure });
}

async function settle(work: () => void): Promise<void> {
  work();
}
