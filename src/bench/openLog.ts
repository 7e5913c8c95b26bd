import type { StoreApi } from 'zustand/vanilla';
import type { Clock } from '#clock';
import { type Announcement, initial, type JobEvent, replay } from '#counting';
import type { Access, BenchState } from './benchState';
import { benchFact } from './facts';
import type { Keeper, Voice, WriterClaim } from './ports';
import { createWriteQueue, type WriteQueue } from './writeQueue';

export interface OpenLogParts {
  readonly clock: Clock;
  readonly keeper: Keeper;
  readonly voice: Voice;
  readonly store: StoreApi<BenchState>;
  tell(told: readonly Announcement[]): void;
}

/** The log of the one open job: who may write it, what of it is on disk, and what befalls it. */
export interface OpenLog {
  open(jobId: string): Promise<void>;
  takeOver(): Promise<void>;
  /** Whether this window may write; told if not. */
  mayWrite(): boolean;
  /** Adds to the log, and to what is on its way to the disk. */
  add(events: readonly JobEvent[]): void;
  close(): void;
}

/** What the bench shows while no job is open. */
export const closed: BenchState = {
  jobId: null,
  access: 'closed',
  job: initial,
  keptThrough: 0,
  resting: true,
  awakeSince: null,
  alarm: null,
  told: [],
};

export function createOpenLog({ clock, keeper, voice, store, tell }: OpenLogParts): OpenLog {
  let queue: WriteQueue | null = null;
  let claim: WriterClaim | null = null;
  let unfollow: (() => void) | null = null;
  /** All of it, so that it can be written again if the disk lost it. */
  let log: JobEvent[] = [];

  function startQueue(): WriteQueue {
    return createWriteQueue({
      clock,
      append: (events) => keeper.append(events),
      whole: () => log,
      onKept(seq) {
        store.setState({ keptThrough: seq });
        voice.kept(seq);
      },
      onAlarm(why) {
        store.setState({ alarm: why });
        voice.alarm(true);
        tell([benchFact({ kind: 'not kept', why })]);
      },
      onRecovered() {
        store.setState({ alarm: null });
        voice.alarm(false);
        tell([benchFact({ kind: 'kept again' })]);
      },
      onConflict: () => void reload('other window'),
      onSuperseded: superseded,
    });
  }

  keeper.watch((what) => {
    if (what === 'superseded') superseded();
    else emptied();
  });

  /** A newer version of the app writes now: this window shows what it has and writes no more. */
  function superseded(): void {
    if (store.getState().access !== 'writer' && store.getState().access !== 'other window') return;
    dropWriting();
    voice.alarm(false);
    store.setState({ access: 'newer app', alarm: null });
    tell([benchFact({ kind: 'read only', why: 'newer app' })]);
  }

  /** The log is no longer on the device: only this window still has it. */
  function emptied(): void {
    if (queue === null) return;
    store.setState({ keptThrough: 0 });
    queue.rewrite();
  }

  async function reload(access: Access): Promise<void> {
    const { jobId } = store.getState();
    if (jobId === null) return;
    dropWriting();
    const kept = await readOrNull(jobId);
    if (store.getState().jobId !== jobId) return;
    voice.alarm(false);
    if (kept === null) {
      store.setState({ access: 'unreadable', alarm: null });
      return;
    }
    const job = replay(kept.events);
    store.setState({ job, keptThrough: job.seq, access, alarm: null });
    voice.kept(job.seq);
    follow(jobId);
    tell([benchFact({ kind: 'read only' })]);
  }

  function dropWriting(): void {
    queue?.stop();
    queue = null;
    claim?.release();
    claim = null;
    unfollow?.();
    unfollow = null;
  }

  /** Shows what the writing window adds to the log. */
  function follow(jobId: string): void {
    unfollow = keeper.follow(jobId, () => {
      void keeper.read(jobId).then(({ events }) => {
        if (store.getState().jobId !== jobId || queue !== null) return;
        const job = replay(events);
        store.setState({ job, keptThrough: job.seq });
      });
    });
  }

  async function open(jobId: string): Promise<void> {
    close();
    store.setState({ ...closed, jobId, access: 'opening' });
    const kept = await readOrNull(jobId);
    if (store.getState().jobId !== jobId) return;
    if (kept === null) {
      store.setState({ access: 'unreadable' });
      return;
    }
    if (kept.events.length === 0) {
      store.setState({ access: 'unknown' });
      return;
    }
    const job = replay(kept.events);
    log = [...kept.events];
    const got = kept.newer ? null : await keeper.claim(jobId, () => void reload('other window'));
    if (store.getState().jobId !== jobId) {
      got?.release();
      return;
    }
    claim = got;
    if (got === null) follow(jobId);
    else queue = startQueue();
    const access: Access = got !== null ? 'writer' : kept.newer ? 'newer log' : 'other window';
    const keptThrough = kept.keptThrough ?? job.seq;
    store.setState({ job, keptThrough, access });
    voice.kept(keptThrough);
    queue?.add(kept.events.slice(keptThrough));
  }

  async function readOrNull(jobId: string) {
    try {
      return await keeper.read(jobId);
    } catch {
      return null;
    }
  }

  async function takeOver(): Promise<void> {
    const { jobId, access } = store.getState();
    if (jobId === null || access !== 'other window') return;
    const got = await keeper.takeOver(jobId, () => void reload('other window'));
    const { events } = await keeper.read(jobId);
    unfollow?.();
    unfollow = null;
    claim = got;
    queue = startQueue();
    const job = replay(events);
    log = [...events];
    store.setState({
      job,
      keptThrough: job.seq,
      access: 'writer',
      resting: true,
      awakeSince: null,
    });
    voice.kept(job.seq);
  }

  function mayWrite(): boolean {
    if (store.getState().access === 'writer' && queue !== null) return true;
    const { access } = store.getState();
    tell([benchFact({ kind: 'read only', ...(access === 'newer app' ? { why: access } : {}) })]);
    return false;
  }

  function add(events: readonly JobEvent[]): void {
    log.push(...events);
    queue?.add(events);
  }

  function close(): void {
    queue?.handOver();
    dropWriting();
    voice.alarm(false);
    voice.hush();
    store.setState(closed);
  }

  return { open, takeOver, mayWrite, add, close };
}
