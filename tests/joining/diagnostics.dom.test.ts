import { expect, test } from 'vitest';
import { createStore } from 'zustand/vanilla';
import { createBench } from '#bench';
import { decide, initial } from '#counting';
import { joinDiagnostics } from '#joining';
import type { DeviceState, EarShown } from '#screens';
import { fakeClock } from '../fakes/clock';
import { fakeKeeper, settled } from '../fakes/keeper';
import { oneCylinder } from '../fakes/setUps';
import { fakeVoice } from '../fakes/voice';

const SECRET = 'Harrow Fen, the mill’s own engine';

test('a file of versions, features and notices, without a name or anything heard', async () => {
  const clock = fakeClock();
  const keeper = fakeKeeper();
  const opened = decide(initial, {
    type: 'openJob',
    jobId: 'secret-id',
    setUp: oneCylinder({ name: SECRET }),
    app: { version: '0', commit: 'test' },
    at: clock.now(),
    by: 'touch',
  });
  if (opened.kind !== 'events') throw new Error('the job did not open');
  keeper.logs.set('secret-id', [...opened.events]);
  const bench = createBench({ clock, keeper, voice: fakeVoice() });
  const device = createStore<DeviceState>(() => ({
    offline: 'fetching',
    readyNow: false,
    update: 'none',
    store: 'here',
    lasting: 'not asked',
  }));
  const ear = createStore<EarShown>(() => ({
    state: 'shut',
    why: 'asked',
    byKey: false,
    place: null,
    ghost: null,
    captions: [],
    level: null,
    fetched: null,
    tooNoisy: false,
  }));
  const diagnostics = joinDiagnostics({
    page: window,
    build: { version: '1.2.3', commit: 'abc1234' },
    bench,
    device,
    ear,
  });

  await bench.open('secret-id');
  bench.submit({ type: 'advance' }, 'key');
  bench.submit({ type: 'advance' }, 'key');
  await keeper.settle('full');
  await settled();
  device.setState({ offline: 'ready' });
  ear.setState({ state: 'dead', why: 'network' });
  window.dispatchEvent(new ErrorEvent('error', { error: new RangeError(SECRET) }));

  const text = await diagnostics();
  expect(text).not.toMatch(/Harrow|mill|secret-id/);
  const file = JSON.parse(text);
  expect(file).toMatchObject({
    format: 'turncaller diagnostics',
    app: { version: '1.2.3', commit: 'abc1234' },
    log: { events: 2, keptThrough: 1 },
    device: { offline: 'ready' },
  });
  expect(file.features.length).toBeGreaterThan(5);
  const notices: string[] = file.notices.map(({ what }: { what: string }) => what);
  for (const what of [
    'bench: writer',
    'bench: awake',
    'writing: full',
    'offline: ready',
    'ear: dead, network',
  ]) {
    expect(notices).toContain(what);
  }
  expect(notices.at(-1)).toMatch(/^fault: RangeError/);
});
