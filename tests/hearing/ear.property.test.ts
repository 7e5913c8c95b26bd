import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type EarInput, type EarState, reduceEar, replayEar, shutEar } from '#hearing';
import { grammarFor } from '#words';
import { walked } from './bench';

const TEXTS = ['five', 'for', '5', 'five and', 'five and a half', 'one more', 'rocker seated'];
const TALK = ['five rocker seated', 'stop', 'ear shut', 'scratch that', 'what a day', 'half', ''];
const CODES = [
  'no-speech',
  'aborted',
  'network',
  'language-not-supported',
  'phrases-not-supported',
];

type Untimed<T> = T extends unknown ? Omit<T, 'at'> : never;

const sessionEvent = fc.oneof(
  {
    weight: 6,
    arbitrary: fc.record({
      type: fc.constant('result' as const),
      index: fc.nat(4),
      final: fc.boolean(),
      alternatives: fc.constantFrom(...TEXTS, ...TALK).map((text) => [{ text, confidence: 0.5 }]),
    }),
  },
  {
    weight: 2,
    arbitrary: fc.constantFrom(
      { type: 'audio started' as const },
      { type: 'speech started' as const },
      { type: 'ended' as const },
    ),
  },
  {
    weight: 1,
    arbitrary: fc.constantFrom(...CODES).map((code) => ({ type: 'error' as const, code })),
  },
);

const input: fc.Arbitrary<Untimed<EarInput> | 'session'> = fc.oneof(
  {
    weight: 3,
    arbitrary: fc.constantFrom<Untimed<EarInput>>(
      { type: 'open' },
      { type: 'hold', on: true },
      { type: 'hold', on: false },
      { type: 'place', place: 'elsewhere', asksFirst: false },
      { type: 'place', place: 'on device', asksFirst: false },
    ),
  },
  { weight: 1, arbitrary: fc.constant<Untimed<EarInput>>({ type: 'shut' }) },
  {
    weight: 2,
    arbitrary: fc.constantFrom<Untimed<EarInput>>(
      { type: 'mouth', saying: 'Four, seventy-eight.' },
      { type: 'mouth', saying: null },
      { type: 'level', db: -10 },
      { type: 'level', db: -50 },
      { type: 'time' },
      { type: 'grammar', grammar: grammarFor(walked('counting'), { carrier: null }) },
      { type: 'grammar', grammar: grammarFor(walked('landing'), { carrier: null }) },
    ),
  },
  { weight: 12, arbitrary: fc.constant('session' as const) },
);

const steps = fc.array(
  fc.record({
    ms: fc.integer({ min: 0, max: 2500 }),
    input,
    event: sessionEvent,
    stale: fc.nat(9),
  }),
  { minLength: 20, maxLength: 80 },
);

test('whatever happens to an ear: shut it stays shut, and its log replays', () => {
  const seen = { inputs: 0, submits: 0, starts: 0, doubts: 0, shuts: 0 };
  const seed = 7_301;
  fc.assert(
    fc.property(steps, (plan) => {
      let at = 1_700_000_000_000;
      let state: EarState = {
        ...shutEar,
        settings: { headset: false, mayLeave: true, listens: 'open' },
        grammar: grammarFor(walked('counting'), { carrier: null }),
      };
      const from = state;
      const inputs: EarInput[] = [];
      const done: unknown[] = [];
      let asked = false;
      for (const step of plan) {
        at += step.ms;
        const session = state.session === null ? 1 : state.session.id - (step.stale === 0 ? 1 : 0);
        const untimed: Untimed<EarInput> =
          step.input === 'session' ? { type: 'session', session, event: step.event } : step.input;
        const timed = { ...untimed, at } as EarInput;
        const outcome = reduceEar(state, timed);
        inputs.push(timed);
        done.push(...outcome.effects);
        if (timed.type === 'open' || (timed.type === 'hold' && timed.on)) asked = true;
        for (const effect of outcome.effects) {
          if (effect.do === 'start' || effect.do === 'submit') expect(asked).toBe(true);
          if (effect.do === 'start') seen.starts += 1;
          if (effect.do === 'submit') seen.submits += 1;
          if (effect.do === 'submit' && effect.body.type === 'doubt') seen.doubts += 1;
        }
        if (timed.type === 'shut') {
          asked = false;
          seen.shuts += 1;
          expect([outcome.state.phase, outcome.state.session]).toEqual(['shut', null]);
        }
        if (outcome.wakeAt !== undefined) expect(outcome.wakeAt).toBeGreaterThan(at);
        if (outcome.state.phase === 'open') expect(outcome.state.session?.audioAt).not.toBeNull();
        state = outcome.state;
        seen.inputs += 1;
      }
      const replayed = replayEar(JSON.parse(JSON.stringify({ from, inputs })));
      expect(replayed).toEqual({ state, effects: done });
    }),
    { seed, numRuns: 300 },
  );
  console.info(
    `seed ${seed}: ${seen.inputs} inputs, ${seen.starts} sessions, ${seen.shuts} times shut, ` +
      `${seen.submits} commands, ${seen.doubts} of them doubts`,
  );
  expect(Math.min(seen.submits, seen.starts, seen.shuts, seen.doubts)).toBeGreaterThan(50);
});
