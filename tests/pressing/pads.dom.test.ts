import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { bindKeys, bindLearning, defaultKeymap, type LearnState, withPedal } from '#pressing';
import { fakeClock } from '../fakes/clock';
import { pressText } from './run';

let asked = 0;
let pads: (number[] | null)[] = [];

beforeEach(() => {
  asked = 0;
  pads = [];
  vi.stubGlobal('navigator', {
    ...navigator,
    getGamepads: () => {
      asked += 1;
      return pads.map((down) =>
        down === null
          ? null
          : { buttons: [0, 1, 2, 3].map((index) => ({ pressed: down.includes(index) })) },
      );
    },
  });
});

afterEach(() => vi.unstubAllGlobals());

/** The pad is plugged in: the browser tells of it at its first press. */
function connect(...down: number[]): void {
  pads = [down];
  window.dispatchEvent(new Event('gamepadconnected'));
}

test('buttons of a gamepad are pressed like keys; no pad, nothing is asked', () => {
  const clock = fakeClock();
  const presses: string[] = [];
  const keymap = withPedal(defaultKeymap, { codes: ['Gamepad1'], sendsKeyUp: true });
  const binding = bindKeys({
    window,
    clock,
    context: () => ({ keymap, active: true, withinStep: () => false }),
    onPress: (press) => presses.push(pressText(press)),
    onCue: () => undefined,
  });
  expect(asked).toBe(1);
  clock.advance(5000);
  expect(asked).toBe(1);

  // The press that connected it is held from before: it counts nothing.
  connect(0);
  clock.advance(100);
  pads = [[]];
  clock.advance(200);
  expect(presses).toEqual([]);
  pads = [[0]];
  clock.advance(150);
  pads = [[]];
  clock.advance(200);
  expect(presses).toEqual(['step']);
  pads = [[0]];
  clock.advance(800);
  pads = [[]];
  clock.advance(200);
  expect(presses).toEqual(['step', 'next stage']);

  // Unplugged it is not asked again, and stopped not listened for.
  pads = [null];
  clock.advance(100);
  const before = asked;
  clock.advance(5000);
  expect(asked).toBe(before);
  binding.stop();
  connect();
  clock.advance(100);
  expect(asked).toBe(before);
});

test('a gamepad button is learned as the pedal: pressed, then held', () => {
  const clock = fakeClock();
  const states: LearnState[] = [];
  pads = [[]];
  bindLearning({
    window,
    clock,
    target: 'pedal',
    keymap: defaultKeymap,
    onState: (state) => states.push(state),
  });
  for (const heldMs of [150, 1200]) {
    pads = [[2]];
    clock.advance(heldMs);
    pads = [[]];
    clock.advance(500);
  }
  expect(states.at(-1)).toMatchObject({
    step: 'done',
    learned: { codes: ['Gamepad3'], sendsKeyUp: true, problems: [] },
  });
});
