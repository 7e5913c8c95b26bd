import { expect, test } from 'vitest';
import { createBench } from '#bench';
import { createSettings } from '#settings';
import { joinPractice, joinPracticeLog } from '../../src/joining/practice';
import { fakeClock } from '../fakes/clock';
import { openedJob } from '../fakes/countedJob';
import { fakeKeeper, settled } from '../fakes/keeper';

const app = { version: '1', commit: 'abc' };
const voice = {
  unlock() {},
  announce() {},
  kept() {},
  alarm() {},
  cut() {},
  hush() {},
};

test('a practice run is counted and kept nowhere, and the job before it comes back', async () => {
  const clock = fakeClock();
  const keeper = fakeKeeper();
  keeper.prompt();
  await keeper.append(openedJob().events);
  const kept = JSON.stringify([...keeper.logs]);
  const settings = createSettings({ load: async () => null, save: async () => {} });
  const log = joinPracticeLog(keeper, clock, app);
  const bench = createBench({ clock, keeper: log.keeper, voice });
  const practice = joinPractice(bench, log, settings);
  await bench.open('job');

  practice.begin();
  await settled();
  expect(bench.store.getState()).toMatchObject({ access: 'writer', resting: true });
  expect(settings.store.getState().settings.practised).toBe(true);
  bench.submit({ type: 'advance' }, 'key');
  bench.submit({ type: 'zero' }, 'key');
  bench.submit({ type: 'step', size: 'step' }, 'key');
  await settled();
  const { job, keptThrough, jobId } = bench.store.getState();
  expect(job.open?.count48).toBe(12);
  // A word waits for what it tells to be kept: in memory that is at once.
  expect(keptThrough).toBe(job.seq);

  practice.begin();
  await settled();
  expect(bench.store.getState().jobId).not.toBe(jobId);
  expect(bench.store.getState().job.open?.phase).toBe('to start');
  practice.leave();
  await settled();
  expect(bench.store.getState()).toMatchObject({ jobId: 'job', access: 'writer' });
  expect(JSON.stringify([...keeper.logs])).toBe(kept);
});
