import type { JobEvent } from '#counting';
import { cardOfLog, type JobCard } from './jobCard';
import { KeepError } from './keepError';
import type { Keeping } from './keeping';
import type { KeptLog } from './keptLog';

/** A job's log with what of it this page still has to get onto the disk. */
export interface HeldLog extends KeptLog {
  /** On disk through this seq; what follows is held in memory. */
  readonly keptThrough: number;
}

/** Logs on disk, and in memory what the disk would not take, until it does or the page is closed. */
export interface HeldLogs {
  /** As keeping's, with what is held behind it. Rejects only where nothing of the job is held either. */
  read(jobId: string): Promise<HeldLog>;
  /** As keeping's; what it rejects is held. */
  append(events: readonly JobEvent[]): Promise<void>;
  /**
   * As `append`, but where the device has no store at all (storage blocked, some private windows)
   * it resolves with the events held, so that there can be a job to count.
   */
  appendOrHold(events: readonly JobEvent[]): Promise<void>;
  /** As keeping's, those held alone among them. Rejects only where the disk can't be read and none is held. */
  jobs(): Promise<readonly JobCard[]>;
}

/** Puts memory behind the disk. `onStore` is told whether there is a store, each time that is seen anew. */
export function holdUnkept(keeping: Keeping, onStore: (here: boolean) => void): HeldLogs {
  /** By job, in order of seq without a gap: the end of its log that is not known to be on disk. */
  const held = new Map<string, readonly JobEvent[]>();
  let here: boolean | null = null;

  function seen(now: boolean): void {
    if (here === now) return;
    here = now;
    onStore(now);
  }

  function hold(events: readonly JobEvent[]): void {
    const [first] = events;
    if (first === undefined) return;
    const before = (held.get(first.jobId) ?? []).filter(({ seq }) => seq < first.seq);
    held.set(first.jobId, [...before, ...events]);
  }

  function letGo(jobId: string, through: number): void {
    const left = (held.get(jobId) ?? []).filter(({ seq }) => seq > through);
    if (left.length === 0) held.delete(jobId);
    else held.set(jobId, left);
  }

  async function append(events: readonly JobEvent[]): Promise<void> {
    const last = events.at(-1);
    if (last === undefined) return;
    hold(events);
    try {
      await keeping.append(events);
    } catch (error) {
      // Another window's log stands, or a newer app's: what was held here can never follow it.
      if (error instanceof KeepError && error.failure === 'conflict') held.delete(last.jobId);
      throw error;
    }
    seen(true);
    letGo(last.jobId, last.seq);
  }

  async function readDisk(jobId: string): Promise<KeptLog | null> {
    try {
      const log = await keeping.read(jobId);
      seen(true);
      return log;
    } catch (error) {
      if (superseded(error)) throw error;
      seen(false);
      if (!held.has(jobId)) throw error;
      return null;
    }
  }

  return {
    append,
    async read(jobId) {
      const disk = await readDisk(jobId);
      const kept = disk?.events ?? [];
      const behind = (held.get(jobId) ?? []).filter(({ seq }) => seq > kept.length);
      const follows = behind[0]?.seq === kept.length + 1 && disk?.readOnly == null;
      return {
        events: follows ? [...kept, ...behind] : kept,
        newer: disk?.newer ?? false,
        readOnly: disk?.readOnly ?? null,
        keptThrough: kept.length,
      };
    },
    async appendOrHold(events) {
      try {
        await append(events);
      } catch (error) {
        const [first] = events;
        const noStore =
          first !== undefined &&
          (await keeping.jobs().then(
            () => false,
            (why: unknown) => !superseded(why),
          ));
        if (!noStore) {
          if (first !== undefined) letGo(first.jobId, Number.POSITIVE_INFINITY);
          throw error;
        }
        seen(false);
      }
    },
    async jobs() {
      const alone = [...held.values()].filter(([first]) => first?.seq === 1).map(cardOfLog);
      try {
        const cards = await keeping.jobs();
        seen(true);
        const ids = new Set(cards.map(({ id }) => id));
        return [...alone.filter(({ id }) => !ids.has(id)), ...cards];
      } catch (error) {
        if (!superseded(error)) seen(false);
        if (alone.length === 0) throw error;
        return alone;
      }
    },
  };
}

function superseded(error: unknown): boolean {
  return error instanceof KeepError && error.failure === 'superseded';
}
