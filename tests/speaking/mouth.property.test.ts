import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Announcement, Fact } from '#counting';
import { createSpeaker, type Wording } from '#speaking';
import { lineWatchdogMs } from '../../src/speaking/breaths';
import { fakeClock } from '../fakes/clock';
import { fakeSynth, type Manner } from '../fakes/synth';
import { fakeTicker } from '../fakes/ticker';
import { facts, plainContext, tell } from './told';

const SEED = 71_0443;
const RUNS = 2000;

/** What one command may have to tell. */
const BATCHES: Readonly<Record<string, readonly Fact[]>> = {
  count: [facts.counted(3)],
  seat: [facts.howFar],
  countAndSeat: [facts.counted(5), facts.howFar],
  result: [facts.read],
  cylinder: [facts.read, facts.cylinderDone, facts.loose],
  question: [facts.askedBack],
  hands: [facts.handsClear],
  turn: [facts.turn],
  start: [facts.start],
  tick: [facts.torqued],
  doubt: [facts.doubted],
  refused: [facts.refused],
  notKept: [facts.notKept],
  keptAgain: [facts.keptAgain],
};
/** Made by the bench or of no event: they wait for nothing. */
const OFF_LOG = new Set(['doubt', 'refused', 'notKept', 'keptAgain']);

type Step =
  | { readonly do: 'tell'; readonly batch: string; readonly waitMs: number }
  | { readonly do: 'keep' | 'cut' | 'hush' | 'alarm' | 'no alarm'; readonly waitMs: number };

const waitMs = fc.oneof(
  fc.constant(0),
  fc.integer({ min: 1, max: 900 }),
  fc.integer({ min: 900, max: 4000 }),
);
const telling = fc.record({
  do: fc.constant('tell' as const),
  batch: fc.constantFrom(...Object.keys(BATCHES), 'count', 'count', 'count', 'result', 'turn'),
  waitMs,
});
const acting = fc.record({
  do: fc.constantFrom('keep', 'keep', 'keep', 'keep', 'cut', 'cut', 'hush', 'alarm', 'no alarm'),
  waitMs,
}) as fc.Arbitrary<Step>;
const schedule = fc.array(fc.oneof(telling as fc.Arbitrary<Step>, acting), {
  minLength: 5,
  maxLength: 60,
});

const manner: fc.Arbitrary<Manner> = fc.oneof(
  fc.record({
    startsAfterMs: fc.integer({ min: 0, max: 300 }),
    lastsMs: fc.integer({ min: 100, max: 6000 }),
  }),
  fc.record({
    startsAfterMs: fc.integer({ min: 0, max: 1500 }),
    lastsMs: fc.constant(null),
  }),
  fc.record({
    startsAfterMs: fc.constant(0),
    lastsMs: fc.constant(null),
    failsAfterMs: fc.integer({ min: 1, max: 50 }),
  }),
);

interface Told {
  readonly announcement: Announcement;
  readonly text: string;
  readonly at: number;
  /** A hush came while it still waited. */
  hushed: boolean;
  /** A press or a hush came after it was told. */
  stale: boolean;
  saidAt: number | null;
}

test('random schedules: kept before told, one line at a time, results said, turns fresh', () => {
  const met = { said: 0, results: 0, turns: 0, lapsed: 0, byAlarm: 0, hushed: 0, endless: 0 };
  const result = fc.check(
    fc.property(schedule, fc.array(manner, { minLength: 1, maxLength: 8 }), (steps, manners) => {
      const clock = fakeClock(0);
      const synth = fakeSynth(clock);
      const ticker = fakeTicker(clock);
      const told: Told[] = [];
      const textOf = (announcement: Announcement) =>
        told.find((one) => one.announcement === announcement)?.text ?? '';
      const words: Wording = {
        said: (announcement) => (announcement.fact.kind === 'torqued' ? '' : textOf(announcement)),
        caption: textOf,
        lapsed: () => 'not called',
      };
      let seq = 0;
      let kept = 0;
      let alarm = false;
      let lines = 0;
      synth.setManner((text) => {
        // Judged in the moment the voice is asked.
        const line = told.find((one) => one.text === text)!;
        const { keptThrough, perishable } = line.announcement;
        expect(alarm || keptThrough <= kept, `${text} before it was kept`).toBe(true);
        expect(line.hushed, `${text} after 'stop'`).toBe(false);
        expect(line.saidAt, `${text} twice`).toBeNull();
        if (perishable) {
          expect(line.stale, `${text} stale`).toBe(false);
          expect(clock.now() - line.at).toBeLessThanOrEqual(1000);
          met.turns += 1;
        }
        if (keptThrough > kept) met.byAlarm += 1;
        line.saidAt = clock.now();
        met.said += 1;
        return manners[lines++ % manners.length]!;
      });
      const speaker = createSpeaker({ clock, synth, ticker, context: () => plainContext, words });

      let cues = 0;
      const act = (step: Step) => {
        clock.advance(step.waitMs);
        switch (step.do) {
          case 'tell': {
            const batch = BATCHES[step.batch]!.map((fact, i) => {
              if (!OFF_LOG.has(step.batch)) seq += 1;
              return tell(fact, OFF_LOG.has(step.batch) ? 0 : seq, { cue: i === 0 ? 'in' : null });
            });
            cues += 1;
            for (const announcement of batch) {
              const text = `${announcement.fact.kind} ${told.length}`;
              const fresh = { hushed: false, stale: false, saidAt: null };
              told.push({ announcement, text, at: clock.now(), ...fresh });
            }
            speaker.announce(batch);
            break;
          }
          case 'keep':
            kept = seq;
            speaker.kept(seq);
            break;
          case 'cut':
          case 'hush':
            for (const one of told) {
              one.stale = true;
              if (step.do === 'hush' && one.saidAt === null) one.hushed = true;
            }
            speaker[step.do]();
            break;
          default:
            alarm = step.do === 'alarm';
            speaker.alarm(alarm);
        }
        expect(ticker.ticks).toHaveLength(cues);
      };
      for (const step of steps) act(step);
      act({ do: 'keep', waitMs: 0 });
      clock.advance(600_000);

      expect(speaker.state()).toMatchObject({ waiting: 0, saying: null });
      expect(synth.saying()).toBeNull();
      for (const { announcement, saidAt, hushed, text } of told) {
        if (hushed) met.hushed += 1;
        if (announcement.fact.kind !== 'read' || hushed) continue;
        met.results += 1;
        expect(saidAt, `${text} was never said`).not.toBeNull();
      }
      for (const call of synth.calls) {
        if (call.call !== 'over') continue;
        const most = call.text.startsWith('counted') ? 2000 : lineWatchdogMs(call.text, 1);
        expect(call.heardMs, call.text).toBeLessThanOrEqual(most);
        if (call.heardMs === most) met.endless += 1;
      }
      const lapsed = speaker.log().filter(({ outcome }) => outcome === 'lapsed');
      met.lapsed += lapsed.length;
      for (const caption of lapsed) expect(caption.kind).toBe('turn crank');
      const turns = told.filter(({ announcement }) => announcement.perishable);
      const captions = speaker.log().filter(({ kind }) => kind === 'turn crank');
      expect(captions).toHaveLength(turns.length);
    }),
    { seed: SEED, numRuns: RUNS },
  );
  const tally = Object.entries(met).map(([name, times]) => `${name} ${times}`);
  console.info([`mouth: seed ${result.seed}, ${result.numRuns} runs`, ...tally].join(', '));
  expect(result.failed, fc.defaultReportMessage(result)).toBe(false);
  for (const [name, times] of Object.entries(met)) {
    expect(times, `${name} came up too seldom`).toBeGreaterThan(200);
  }
});
