import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Keymap, Press, PressInput, PressState } from '#pressing';
import {
  defaultKeymap,
  initialPressState,
  meaningOf,
  reduce,
  withListen,
  withPedal,
} from '#pressing';
import { DEBOUNCE_MS } from '../../src/pressing/timings';
import { pressText } from './run';

const SEED = 48_1206;
const RUNS = 2000;

const keymaps: readonly Keymap[] = [
  withListen(defaultKeymap, 'KeyL'),
  withListen(withPedal(defaultKeymap, { codes: ['F5', 'Escape'], sendsKeyUp: true }), 'KeyL'),
  withListen(withPedal(defaultKeymap, { codes: ['PageDown'], sendsKeyUp: false }), 'KeyL'),
];

const CODES = [
  'PageDown',
  'PageDown',
  'F5',
  'Escape',
  'Space',
  'KeyH',
  'KeyL',
  'KeyQ',
  'Numpad0',
  'Numpad1',
  'Numpad4',
  'Digit8',
  'NumpadAdd',
  'NumpadSubtract',
  'NumpadMultiply',
  'NumpadDivide',
];

/** A press as a foot or finger makes it: held a while, perhaps bouncing, repeating, or with its key-up lost. */
const physical = fc.record({
  code: fc.constantFrom(...CODES),
  gapMs: fc.oneof(fc.integer({ min: 0, max: 60 }), fc.integer({ min: 80, max: 1500 })),
  heldMs: fc.oneof(
    fc.integer({ min: 1, max: 400 }),
    fc.integer({ min: 600, max: 1499 }),
    fc.integer({ min: 1500, max: 3400 }),
  ),
  bounces: fc.integer({ min: 0, max: 2 }),
  repeats: fc.boolean(),
  end: fc.constantFrom('up', 'up', 'up', 'up', 'lost', 'blur'),
});

const key = (type: 'down' | 'up', code: string, at: number, repeat = false): PressInput => ({
  type,
  code,
  repeat,
  at,
});

type Physical = typeof physical extends fc.Arbitrary<infer T> ? T : never;

function inputsOf(press: Physical, start: number): readonly PressInput[] {
  const { code, heldMs, bounces, repeats, end } = press;
  const inputs: PressInput[] = [key('down', code, start)];
  for (let n = 0; n < bounces; n += 1) {
    inputs.push(key('up', code, start + 4 * n + 2), key('down', code, start + 4 * n + 4));
  }
  for (let ms = 500; repeats && ms < heldMs; ms += 300)
    inputs.push(key('down', code, start + ms, true));
  const endAt = start + Math.max(heldMs, 20);
  if (end === 'blur') inputs.push({ type: 'blur', at: endAt });
  if (end === 'up') inputs.push(key('up', code, endAt));
  for (let n = 0; n < bounces && end === 'up'; n += 1) {
    inputs.push(key('down', code, endAt + 6 * n + 3), key('up', code, endAt + 6 * n + 6));
  }
  return inputs;
}

/** The key a press came from; '' where it is one that had been waiting for something else. */
function madeBy(input: PressInput, press: Press, prior: PressState, keymap: Keymap): string {
  if (!('code' in input)) return '';
  if (press.kind === 'number' && prior.waiting !== null && !prior.waiting.taken) return '';
  if (press.kind === 'step' && prior.hold !== null && prior.hold.upAt !== null) return '';
  return meaningOf(keymap, input.code) === 'pedal' ? 'pedal' : input.code;
}

test('random presses: one press each at most, nothing left after a blur', () => {
  const kinds = new Map<string, number>();
  let blurs = 0;
  let presses = 0;
  let physicalPresses = 0;

  fc.assert(
    fc.property(
      fc.constantFrom(...keymaps),
      fc.array(physical, { minLength: 1, maxLength: 20 }),
      fc.boolean(),
      (keymap, list, timers) => {
        let state = initialPressState;
        let wakeAt: number | undefined;
        let count = 0;
        let now = 0;
        let listening = false;
        const made: { readonly at: number; readonly key: string; readonly text: string }[] = [];

        function feed(input: PressInput): void {
          const withinStep = (value: number) => value === count || value === count + 1;
          const result = reduce(state, input, { keymap, active: true, withinStep });
          const prior = state;
          state = result.state;
          wakeAt = result.wakeAt;
          for (const press of result.presses) {
            const text = pressText(press);
            kinds.set(press.kind, (kinds.get(press.kind) ?? 0) + 1);
            presses += 1;
            if (press.kind === 'listen') {
              expect(press.on).toBe(!listening);
              listening = press.on;
              continue;
            }
            if (press.kind === 'step') count += 1;
            if (press.kind === 'number') {
              expect(Number.isInteger(press.value) && press.value >= 1 && press.value <= 99).toBe(
                true,
              );
              if (press.value <= 40) count = press.value;
            }
            made.push({ at: input.at, key: madeBy(input, press, prior, keymap), text });
          }
          if (input.type === 'blur') {
            blurs += 1;
            expect(state).toMatchObject({ hold: null, waiting: null, listening: null });
            expect(result.wakeAt).toBeUndefined();
            expect(listening).toBe(false);
          }
        }

        function wakeUntil(at: number): void {
          while (timers && wakeAt !== undefined && wakeAt <= at) {
            const asked = wakeAt;
            feed({ type: 'time', at: asked });
            expect(wakeAt === undefined || wakeAt > asked).toBe(true);
          }
        }

        let meant = 0;
        for (const press of list) {
          const before = made.length;
          const waited = state.waiting !== null && !state.waiting.taken ? 1 : 0;
          const settling = state.hold !== null && state.hold.upAt !== null ? 1 : 0;
          for (const input of inputsOf(press, now + press.gapMs)) {
            wakeUntil(input.at);
            feed(input);
            now = Math.max(now, input.at);
          }
          meant += 1;
          physicalPresses += 1;
          // Its own press, and what an earlier key had left waiting.
          expect(made.length - before).toBeLessThanOrEqual(1 + waited + settling);
          if (meaningOf(keymap, press.code) === null) {
            expect(made.length - before).toBeLessThanOrEqual(waited + settling);
          }
        }
        wakeUntil(Number.POSITIVE_INFINITY);
        expect(made.length).toBeLessThanOrEqual(meant);

        const last = new Map<string, number>();
        for (const { at, key } of made) {
          if (key === '') continue;
          const before = last.get(key);
          if (before !== undefined) expect(at - before).toBeGreaterThanOrEqual(DEBOUNCE_MS);
          last.set(key, at);
        }
        feed({ type: 'blur', at: now + 10_000 });
      },
    ),
    { seed: SEED, numRuns: RUNS },
  );

  const table = [...kinds]
    .sort()
    .map(([kind, times]) => `${kind} ${times}`)
    .join(', ');
  console.log(
    `presses: seed ${SEED}, ${RUNS} runs, ${physicalPresses} physical presses, ${blurs} blurs, ${presses} presses: ${table}`,
  );
  for (const kind of [
    'step',
    'half',
    'number',
    'take back',
    'next stage',
    'zero',
    'seat and accept',
    'say again',
    'ear',
    'listen',
  ]) {
    expect(kinds.get(kind) ?? 0, kind).toBeGreaterThanOrEqual(50);
  }
});

test('any jumble of events, in any order of times, never throws and ends clean', () => {
  const event: fc.Arbitrary<PressInput> = fc.oneof(
    fc.record({
      type: fc.constantFrom('down' as const, 'up' as const),
      code: fc.oneof(fc.constantFrom(...CODES, '', '__proto__', 'constructor'), fc.string()),
      repeat: fc.boolean(),
      at: fc.integer({ min: 0, max: 5000 }),
    }),
    fc.record({
      type: fc.constantFrom('time' as const, 'blur' as const),
      at: fc.integer({ min: 0, max: 5000 }),
    }),
  );
  fc.assert(
    fc.property(
      fc.constantFrom(...keymaps),
      fc.array(event, { maxLength: 60 }),
      fc.func(fc.boolean()),
      (keymap, events, withinStep) => {
        let state = initialPressState;
        let downs = 0;
        let presses = 0;
        for (const input of events) {
          const result = reduce(state, input, { keymap, active: true, withinStep });
          state = result.state;
          if (input.type === 'down' && !input.repeat) downs += 1;
          presses += result.presses.filter((press) => press.kind !== 'listen').length;
        }
        expect(presses).toBeLessThanOrEqual(downs);
        const ended = reduce(
          state,
          { type: 'blur', at: 9000 },
          { keymap, active: true, withinStep },
        );
        expect(ended.wakeAt).toBeUndefined();
      },
    ),
    { seed: SEED, numRuns: RUNS },
  );
});
