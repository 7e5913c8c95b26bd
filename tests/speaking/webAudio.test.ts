import { expect, test } from 'vitest';
import { createTicker, webAudioBeeper } from '#speaking';
import { tickMs } from '../../src/speaking/ticks';
import { fakeClock } from '../fakes/clock';

/** As much of an AudioContext as the beeper uses, writing down what it is told. */
function fakeContext() {
  const done: string[] = [];
  const param = (name: string) => ({
    setValueAtTime: (value: number, at: number) =>
      done.push(`${name} ${value} at ${at.toFixed(3)}`),
    linearRampToValueAtTime: () => {},
    exponentialRampToValueAtTime: (value: number) => done.push(`${name} to ${value}`),
  });
  const context = {
    state: 'suspended',
    currentTime: 2,
    destination: 'out',
    resume() {
      this.state = 'running';
      return Promise.resolve();
    },
    createGain: () => ({ gain: param('gain'), connect: (to: string) => done.push(`to ${to}`) }),
    createOscillator: () => ({
      type: '',
      frequency: param('hz'),
      connect: (to: unknown) => to,
      start: (at: number) => done.push(`start ${at.toFixed(3)}`),
      stop: (at: number) => done.push(`stop ${at.toFixed(3)}`),
    }),
  };
  return { context: context as unknown as AudioContext, done, fake: context };
}

test('a tick sounds from now to its end on the one context, opened by the first gesture', async () => {
  const { context, done } = fakeContext();
  let opened = 0;
  const beeper = webAudioBeeper(() => {
    opened += 1;
    return context;
  });
  const ticker = createTicker({ clock: fakeClock(), beeper });
  ticker.tick('in');
  expect(opened).toBe(0);
  ticker.unlock();
  ticker.unlock();
  await Promise.resolve();
  await Promise.resolve();
  done.length = 0;
  ticker.tick('back');
  expect(opened).toBe(1);
  expect(ticker.last()?.soundsAtS).toBeGreaterThanOrEqual(2);
  const startS = ticker.last()?.soundsAtS ?? 0;
  expect(done).toContain(`hz 1760 at ${startS.toFixed(3)}`);
  expect(done).toContain('hz to 880');
  expect(done).toContain('to out');
  expect(done).toContain(`start ${startS.toFixed(3)}`);
  expect(done).toContain(`stop ${(startS + tickMs('back') / 1000).toFixed(3)}`);
});

test('an interrupted context makes no sound and wakes with the next gesture', async () => {
  const { context, fake } = fakeContext();
  const beeper = webAudioBeeper(() => context);
  await beeper.wake();
  expect(beeper.nowS()).toBe(2);
  fake.state = 'interrupted';
  expect(beeper.nowS()).toBeNull();
  await beeper.wake();
  expect(beeper.nowS()).toBe(2);
});

test('shown again after an interruption it wakes by itself; before a first gesture nothing is opened', async () => {
  const { context, fake } = fakeContext();
  let shownAgain = () => {};
  let opens = 0;
  const beeper = webAudioBeeper(
    () => {
      opens += 1;
      return context;
    },
    (wake) => {
      shownAgain = wake;
    },
  );
  shownAgain();
  expect(opens).toBe(0);
  await beeper.wake();
  fake.state = 'interrupted';
  shownAgain();
  await Promise.resolve();
  expect(beeper.nowS()).toBe(2);
  expect(opens).toBe(1);
});

test.each([
  ['is not there', () => null],
  [
    'throws',
    () => {
      throw new TypeError('no AudioContext');
    },
  ],
])('Web Audio that %s leaves the ticks silent, without an error', async (_, open) => {
  const beeper = webAudioBeeper(open);
  await beeper.wake();
  expect(beeper.nowS()).toBeNull();
});
