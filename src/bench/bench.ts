import { createStore, type StoreApi } from 'zustand/vanilla';
import type { Clock } from '#clock';
import {
  type Announcement,
  announce,
  announceReply,
  announceReturn,
  type By,
  type Command,
  type CommandBody,
  decide,
  evolve,
  initial,
  type JobEvent,
  replay,
  type Utterance,
} from '#counting';
import type { Access, BenchState } from './benchState';
import { benchFact } from './facts';
import type { Keeper, Voice, WriterClaim } from './ports';
import { createWriteQueue, type WriteQueue } from './writeQueue';

export interface BenchParts {
  readonly clock: Clock;
  readonly keeper: Keeper;
  readonly voice: Voice;
}

/** One open job: a queue of commands, each decided, kept, shown and said. */
export interface Bench {
  readonly store: StoreApi<BenchState>;
  /** Opens a job from its log and lets the bench rest there. */
  open(jobId: string): Promise<void>;
  /** Takes over writing from another window, which then becomes read-only. */
  takeOver(): Promise<void>;
  /** Decides a command now. While the bench rests, the first press wakes it and does no more. */
  submit(body: CommandBody, by: By, utterance?: Utterance): void;
  /** Decides a command filled in on a form. It is no press: a resting bench takes it and rests on. */
  fillIn(body: CommandBody): void;
  /** Ends the app's talk and any pending turn of the crank. */
  hush(): void;
  close(): void;
}

const closed: BenchState = {
  jobId: null,
  access: 'closed',
  job: initial,
  keptThrough: 0,
  resting: true,
  awakeSince: null,
  alarm: null,
  told: [],
};

export function createBench({ clock, keeper, voice }: BenchParts): Bench {
  const store = createStore<BenchState>(() => closed);
  let queue: WriteQueue | null = null;
  let claim: WriterClaim | null = null;
  let unfollow: (() => void) | null = null;
  /** The open job's log, so that all of it can be written again if the disk lost it. */
  let log: JobEvent[] = [];

  function tell(told: readonly Announcement[]): void {
    if (told.length === 0) return;
    store.setState({ told });
    voice.announce(told);
  }

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

  /** Whether this window may write; told if not. */
  function mayWrite(): boolean {
    if (store.getState().access === 'writer' && queue !== null) return true;
    const { access } = store.getState();
    tell([benchFact({ kind: 'read only', ...(access === 'newer app' ? { why: access } : {}) })]);
    return false;
  }

  function submit(body: CommandBody, by: By, utterance?: Utterance): void {
    if (by !== 'voice') {
      voice.unlock();
      voice.cut();
    }
    if (!mayWrite()) return;
    const { job, resting } = store.getState();
    if (resting) {
      if (by !== 'voice') store.setState({ resting: false, awakeSince: clock.now() });
      tell(announceReturn(job, clock.now()));
      return;
    }
    order({ ...body, at: clock.now(), by, ...(utterance ? { utterance } : {}) });
  }

  function fillIn(body: CommandBody): void {
    if (mayWrite()) order({ ...body, at: clock.now(), by: 'touch' });
  }

  function order(command: Command): void {
    const { job } = store.getState();
    const decision = decide(job, command);
    if (decision.kind === 'events') take(decision.events);
    else tell(announceReply(job, decision));
  }

  function take(events: readonly JobEvent[]): void {
    let job = store.getState().job;
    const told: Announcement[] = [];
    for (const event of events) {
      const next = evolve(job, event);
      told.push(...announce(job, event, next));
      job = next;
    }
    log.push(...events);
    store.setState({ job });
    tell(told);
    queue?.add(events);
  }

  function close(): void {
    queue?.handOver();
    dropWriting();
    voice.alarm(false);
    voice.hush();
    store.setState(closed);
  }

  return { store, open, takeOver, submit, fillIn, hush: () => voice.hush(), close };
}
