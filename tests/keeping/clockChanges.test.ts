import { afterEach, expect, test, vi } from 'vitest';
import { createBench } from '#bench';
import { type CommandBody, decide, initial, type JobState } from '#counting';
import { fakeClock } from '../fakes/clock';
import { settled } from '../fakes/keeper';
import { oneCylinder } from '../fakes/setUps';
import { fakeVoice } from '../fakes/voice';
import { device } from './store';

afterEach(() => {
  vi.unstubAllEnvs();
});

const HOUR_MS = 3_600_000;
const JOB = 'job-clock';

const presses: readonly CommandBody[] = [
  { type: 'advance' },
  { type: 'advance' },
  { type: 'advance' },
  { type: 'advance' },
  ...Array.from({ length: 4 }, (): CommandBody => ({ type: 'step', size: 'step' })),
  { type: 'takeBack' },
  { type: 'step', size: 'step' },
  { type: 'seat', loose: false },
  { type: 'land', word: 'half' },
  { type: 'next', cylinder: false },
];

/** Counts one valve on a device's store while the wall clock is set by so much before each press, ms. */
async function countedWith(setBy: (press: number) => number) {
  const on = device();
  const real = fakeClock();
  let offset = 0;
  const clock = { now: () => real.now() + offset, after: real.after };
  const opened = decide(initial, {
    type: 'openJob',
    jobId: JOB,
    setUp: oneCylinder(),
    app: { version: '0', commit: 'test' },
    at: clock.now(),
    by: 'touch',
  });
  if (opened.kind !== 'events') throw new Error('the job did not open');
  const keeping = on.window();
  await keeping.append(opened.events);
  const bench = createBench({ clock, keeper: keeping, voice: fakeVoice() });
  await bench.open(JOB);
  for (const [nth, press] of presses.entries()) {
    real.advance(900);
    offset += setBy(nth);
    bench.submit(press, 'key');
    await settled();
  }
  const { job } = bench.store.getState();
  await expect.poll(() => bench.store.getState().keptThrough).toBe(job.seq);
  bench.close();
  const { events } = await on.window().read(JOB);
  return { job, events };
}

const readings = (job: JobState) =>
  job.readings.map((reading) => ({ ...reading, at: 0, startedAt: 0 }));

test.each([
  ['put back an hour at every press', () => -HOUR_MS],
  ['put on an hour at every press', () => HOUR_MS],
  [
    'changed with the seasons in the middle of a count',
    (nth: number) => (nth === 6 ? -HOUR_MS : 0),
  ],
  ['set right by years while counting', (nth: number) => (nth === 7 ? -9 * 8766 * HOUR_MS : 0)],
])('a clock %s moves no event and changes no reading', async (_, setBy) => {
  const steady = await countedWith(() => 0);
  const { job, events } = await countedWith(setBy);
  expect(events.map(({ seq }) => seq)).toEqual(events.map((_event, index) => index + 1));
  expect(events.map(({ type }) => type)).toEqual(steady.events.map(({ type }) => type));
  expect(readings(job)).toEqual(readings(steady.job));
  expect(readings(job)).toHaveLength(1);
});

test('a device carried into another time zone reads the same log in the same order', async () => {
  const steady = await countedWith(() => 0);
  const zones = ['Pacific/Apia', 'Europe/London', 'America/Adak'];
  const offsets = new Set<number>();
  const moved = await countedWith((nth) => {
    vi.stubEnv('TZ', zones[nth % zones.length]);
    offsets.add(new Date().getTimezoneOffset());
    return 0;
  });
  expect(offsets.size).toBe(zones.length);
  expect(moved.events).toEqual(steady.events);
});
