import { describe, expect, test } from 'vitest';
import {
  announce,
  announceReply,
  announceReturn,
  decide,
  type EventType,
  evolve,
  initial,
  type JobEvent,
  type JobState,
  type RefusalCode,
  reminders,
  replay,
  setUpOf,
  tellLog,
  UNDOABLE,
} from '#counting';
import { shareOfRuns } from '../shareOfRuns';
import {
  alike,
  alikeAllTheWay,
  alikeNow,
  frozen,
  undoablePart,
  walked,
  wronglyChanged,
} from './property/checks';
import { anyCommand } from './property/commands';
import { type Random, randomFrom } from './property/random';

const LOGS = shareOfRuns(1000);
const COMMANDS = 100;

/** Seeds that once found something wrong stay here. */
const KEPT_SEEDS: readonly number[] = [];

const everyEvent: Readonly<Record<EventType, true>> = {
  jobOpened: true,
  setupChanged: true,
  roundStarted: true,
  pushrodFitted: true,
  cautionsHeard: true,
  handsClear: true,
  positionReached: true,
  overshot: true,
  valveChosen: true,
  valveNamed: true,
  zeroTouched: true,
  counted: true,
  doubted: true,
  askedBack: true,
  seated: true,
  landed: true,
  restarted: true,
  repeatStarted: true,
  readingMoved: true,
  dialRead: true,
  valveLeft: true,
  torqued: true,
  bledDown: true,
  held: true,
  resumed: true,
  takenBack: true,
  noted: true,
  jobDiscarded: true,
  jobRestored: true,
};

const everyRefusal: Readonly<Record<RefusalCode, true>> = {
  'not now': true,
  'nothing to take back': true,
  'past the most': true,
  'clock is off': true,
  'not in this job': true,
  'no such cylinder': true,
  'say which valve': true,
  'already that valve': true,
  'already counted': true,
  'loose after counting': true,
  'landing outside the mark': true,
  'no reading': true,
  'unknown reading': true,
  'already torqued': true,
  'nothing left here': true,
  'bad set-up': true,
  'bad length': true,
  'bad dial reading': true,
};

interface Log {
  readonly events: readonly JobEvent[];
  /** The state before each event, in order, and the last after it. */
  readonly states: readonly JobState[];
}

class Tally {
  readonly met = new Map<string, number>();
  add(name: string): void {
    this.met.set(name, this.of(name) + 1);
  }
  of(name: string): number {
    return this.met.get(name) ?? 0;
  }
  share(name: string): string {
    return `${name} ${this.of(name)}`;
  }
}

/** One log of a hundred commands, held to the rules at every step. */
function anyLog(random: Random, tally: Tally): Log {
  const events: JobEvent[] = [];
  const states: JobState[] = [initial];
  let state = initial;
  let at = 1_700_000_000_000;
  for (let i = 1; i <= COMMANDS; i += 1) {
    at += random.pick([300, 900, 900, 2500, 11_000]);
    const decision = decide(state, anyCommand(state, random, at));
    tally.add(decision.kind);
    if (decision.kind === 'refused') tally.add(decision.refusal.code);
    if (decision.kind !== 'events') {
      frozen(announceReply(state, decision));
      continue;
    }
    for (const event of decision.events) {
      tally.add(event.type);
      const after = frozen(evolve(state, frozen(event)));
      const told = frozen(announce(state, event, after));
      if (told.some(({ fact }) => fact.kind === 'turn crank'))
        expect(mayTurn(state, event)).toBe(true);
      expect(wronglyChanged(state, event, after), event.type).toEqual([]);
      if (event.type === 'counted') expect(state.open?.phase).toBe('counting');
      expect(after.seq).toBe(state.seq + 1);
      events.push(event);
      states.push(after);
      state = after;
    }
    if (i % 10 === 0) expect(alikeNow(replay(events), state)).toBe(true);
  }
  frozen(announceReturn(state, at));
  frozen(reminders(state, at));
  return { events, states };
}

/** The crank is named only on a fresh answer with a helper, and never on coming back to a job. */
function mayTurn(before: JobState, { type }: JobEvent): boolean {
  if (type === 'resumed' || type === 'takenBack' || type === 'jobRestored') return false;
  return setUpOf(before)?.hands !== 'with helper' || type === 'handsClear';
}

/** Takes back again and again: each time the state is as it was before the event undone. */
function takenBackThrough({ events, states }: Log, times: number, tally: Tally): void {
  let state = states.at(-1) ?? initial;
  let at = (events.at(-1)?.at ?? 0) + 60_000;
  if (state.status === 'discarded') state = after(state, { type: 'restore' }, at);
  for (let i = 0; i < times && state.past !== null; i += 1) {
    at += 1000;
    const { seq } = state.past.event;
    state = after(state, { type: 'takeBack' }, at);
    const was = states[seq - 1] ?? initial;
    expect(alike(undoablePart(state), undoablePart(was)), `undoing event ${seq}`).toBe(true);
    tally.add('undone');
  }
}

function after(state: JobState, body: { type: 'restore' | 'takeBack' }, at: number): JobState {
  const decision = decide(state, { ...body, at, by: 'key' });
  return decision.kind === 'events' ? decision.events.reduce(evolve, state) : state;
}

function shuffled(events: readonly JobEvent[], random: Random): readonly JobEvent[] {
  return events
    .map((event) => ({ event, key: random.next() }))
    .toSorted((a, b) => a.key - b.key)
    .map(({ event }, i) => ({ ...event, seq: i + 1 }));
}

const seeds = [...KEPT_SEEDS, Number(process.env.SEED ?? Math.floor(Math.random() * 2 ** 31))];

describe.each(seeds)('many logs of a hundred commands, seed %d', (seed) => {
  test('C1 to C8: every log replays to its state, and no rule is broken on the way', () => {
    const random = randomFrom(seed);
    const tally = new Tally();
    for (let n = 0; n < LOGS; n += 1) {
      const log = anyLog(random, tally);
      const last = log.states.at(-1) ?? initial;
      expect(alikeAllTheWay(replay(log.events), last)).toBe(true);
      expect(walked(log.events)).toEqual({ early: 0, readings: last.readings.length });
      takenBackThrough(log, n % 10 === 0 ? COMMANDS : 5, tally);
      frozen(tellLog(shuffled(log.events, random)));
    }
    report(seed, tally);
    expect(tally.of('events')).toBeGreaterThanOrEqual((LOGS * COMMANDS) / 2);
    const types = Object.keys(everyEvent);
    expect(types.filter((type) => tally.of(type) < shareOfRuns(500))).toEqual([]);
    expect(Object.keys(everyRefusal).filter((code) => tally.of(code) < shareOfRuns(50))).toEqual(
      [],
    );
    expect([...UNDOABLE].filter((type) => !types.includes(type))).toEqual([]);
  });
});

function report(seed: number, tally: Tally): void {
  const names = [...tally.met].toSorted((a, b) => b[1] - a[1]).map(([name]) => tally.share(name));
  console.info(`seed ${seed}: ${names.join(', ')}`);
}
