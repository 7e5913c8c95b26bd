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
  type JobEvent,
  type Utterance,
} from '#counting';
import type { BenchState } from './benchState';
import { closed, createOpenLog } from './openLog';
import type { Keeper, Voice } from './ports';

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

export function createBench({ clock, keeper, voice }: BenchParts): Bench {
  const store = createStore<BenchState>(() => closed);

  function tell(told: readonly Announcement[]): void {
    if (told.length === 0) return;
    store.setState({ told });
    voice.announce(told);
  }

  const log = createOpenLog({ clock, keeper, voice, store, tell });

  function submit(body: CommandBody, by: By, utterance?: Utterance): void {
    if (by !== 'voice') {
      voice.unlock();
      voice.cut();
    }
    if (!log.mayWrite()) return;
    const { job, resting } = store.getState();
    if (resting) {
      if (by !== 'voice') store.setState({ resting: false, awakeSince: clock.now() });
      tell(announceReturn(job, clock.now()));
      return;
    }
    order({ ...body, at: clock.now(), by, ...(utterance ? { utterance } : {}) });
  }

  function fillIn(body: CommandBody): void {
    if (log.mayWrite()) order({ ...body, at: clock.now(), by: 'touch' });
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
    store.setState({ job });
    tell(told);
    log.add(events);
  }

  return {
    store,
    open: log.open,
    takeOver: log.takeOver,
    submit,
    fillIn,
    hush: () => voice.hush(),
    close: log.close,
  };
}
