import { describe, expect, test } from 'vitest';
import { createBench } from '#bench';
import { type CommandBody, decide, initial, setUpOf, stageOf } from '#counting';
import { fakeClock } from '../fakes/clock';
import { fakeKeeper, settled } from '../fakes/keeper';
import { oneCylinder } from '../fakes/setUps';
import { fakeVoice } from '../fakes/voice';

const JOB = 'job-1';

async function openedBench(prepare: (keeper: ReturnType<typeof fakeKeeper>) => void = () => {}) {
  const clock = fakeClock();
  const keeper = fakeKeeper();
  const voice = fakeVoice();
  const opened = decide(initial, {
    type: 'openJob',
    jobId: JOB,
    setUp: oneCylinder(),
    app: { version: '0', commit: 'test' },
    at: clock.now(),
    by: 'touch',
  });
  if (opened.kind !== 'events') throw new Error('the job did not open');
  keeper.logs.set(JOB, [...opened.events]);
  prepare(keeper);
  const bench = createBench({ clock, keeper, voice });
  await bench.open(JOB);
  const state = () => bench.store.getState();
  const press = (body: CommandBody) => bench.submit(body, 'key');
  return { bench, clock, keeper, voice, state, press };
}

/** Awake, cautions heard, crank there, at zero: the next press counts. */
async function countingBench() {
  const all = await openedBench();
  all.keeper.prompt();
  for (let i = 0; i < 4; i += 1) {
    all.press({ type: 'advance' });
    await settled();
  }
  expect(stageOf(all.state().job)).toBe('counting');
  return all;
}

describe('C13: after opening, the bench rests', () => {
  test('C13: the first press wakes it, says where we are and counts nothing', async () => {
    const { press, state, voice, clock } = await openedBench();
    expect(state().resting).toBe(true);
    expect(state().awakeSince).toBeNull();
    press({ type: 'step', size: 'step' });
    expect(state().resting).toBe(false);
    expect(state().awakeSince).toBe(clock.now());
    expect(state().job.seq).toBe(1);
    expect(voice.calls).toContain('unlock');
    expect(voice.take()).toEqual(['back at']);
  });

  test('C13: a number spoken while resting is answered, not taken, and does not wake it', async () => {
    const { bench, state, voice } = await openedBench();
    bench.submit({ type: 'step', size: 'step' }, 'voice', { id: 'u1', beganAt: 0 });
    expect(state().resting).toBe(true);
    expect(state().job.seq).toBe(1);
    expect(voice.take()).toEqual(['back at']);
  });

  test('C13: a form is no press: it is taken while the bench rests, and leaves it resting', async () => {
    const { bench, state, voice } = await openedBench();
    bench.fillIn({
      type: 'changeSetUp',
      setUp: oneCylinder({ name: 'Renamed' }),
      appliesTo: 'all',
    });
    expect(state().resting).toBe(true);
    expect(setUpOf(state().job)?.name).toBe('Renamed');
    expect(voice.take()).toEqual(['set-up changed']);
  });

  test('C13: a question still open is asked again on waking', async () => {
    const first = await countingBench();
    first.press({ type: 'call', to48: 108 as never, form: 'bare' });
    await settled();
    expect(first.state().job.asked).not.toBeNull();
    await first.bench.open(JOB);
    first.voice.take();
    first.press({ type: 'step', size: 'step' });
    expect(first.voice.take()).toEqual(['back at', 'asked back']);
  });
});

describe('C10: shown at once, kept in order, said when kept', () => {
  test('C10: a count shows before it is kept', async () => {
    const { press, state, keeper, bench, clock, voice } = await openedBench();
    press({ type: 'advance' });
    press({ type: 'advance' });
    expect(state().job.cautionsHeard).toBe(true);
    expect(state().keptThrough).toBe(1);
    expect(voice.calls).not.toContain('kept 2');
    await keeper.settle();
    expect(state().keptThrough).toBe(2);
    expect(voice.calls).toContain('kept 2');
    bench.close();
    expect(clock.waiting()).toBe(0);
  });

  test('C10: what arrives during a write goes together in the next, in order', async () => {
    const { press, state, keeper } = await openedBench();
    for (let i = 0; i < 5; i += 1) press({ type: 'advance' });
    expect(keeper.pending()).toBe(1);
    await keeper.settle();
    expect(state().keptThrough).toBe(2);
    expect(keeper.pending()).toBe(1);
    await keeper.settle();
    expect(state().keptThrough).toBe(state().job.seq);
    expect(keeper.logs.get(JOB)?.map(({ seq }) => seq)).toEqual([1, 2, 3, 4, 5]);
  });

  test('C10: no answer in 1.5 s is an alarm that stands until all is kept', async () => {
    const { press, state, keeper, clock, voice } = await openedBench();
    voice.calls.length = 0;
    press({ type: 'advance' });
    press({ type: 'advance' });
    clock.advance(1499);
    expect(state().alarm).toBeNull();
    clock.advance(1);
    expect(state().alarm).toBe('slow');
    expect(voice.take()).toContain('not kept');
    await keeper.settle();
    expect(state().alarm).toBeNull();
    expect(voice.take()).toContain('kept again');
    expect(voice.calls.filter((call) => call.startsWith('alarm'))).toEqual([
      'alarm true',
      'alarm false',
    ]);
  });

  test('C10: a failed write is an alarm at once, is tried again, and loses nothing', async () => {
    const { press, state, keeper, clock, voice } = await openedBench();
    press({ type: 'advance' });
    press({ type: 'advance' });
    press({ type: 'advance' });
    await keeper.settle('full');
    expect(state().alarm).toBe('full');
    expect(voice.take()).toContain('not kept');
    expect(state().job.seq).toBe(3);
    clock.advance(2000);
    await settled();
    expect(keeper.pending()).toBe(1);
    await keeper.settle();
    expect(state().keptThrough).toBe(3);
    expect(state().alarm).toBeNull();
    expect(keeper.logs.get(JOB)?.map(({ seq }) => seq)).toEqual([1, 2, 3]);
  });

  test('C10: when the disk lost the log, all of it is written again', async () => {
    const { press, state, keeper, clock } = await openedBench();
    press({ type: 'advance' });
    press({ type: 'advance' });
    press({ type: 'advance' });
    keeper.logs.clear();
    await keeper.settle('failed');
    clock.advance(2000);
    await settled();
    await keeper.settle();
    expect(state().keptThrough).toBe(3);
    expect(keeper.logs.get(JOB)?.map(({ seq }) => seq)).toEqual([1, 2, 3]);
  });

  test('C10: the log deleted from under it is noticed at once, said, and all written again', async () => {
    const { press, state, keeper, voice } = await openedBench();
    press({ type: 'advance' });
    press({ type: 'advance' });
    await keeper.settle();
    voice.take();
    keeper.empty();
    expect(state()).toMatchObject({ keptThrough: 0, alarm: 'failed' });
    expect(voice.take()).toEqual(['not kept']);
    press({ type: 'advance' });
    await keeper.settle();
    await keeper.settle();
    expect(state()).toMatchObject({ keptThrough: 3, alarm: null });
    expect(voice.take().at(-1)).toBe('kept again');
    expect(keeper.logs.get(JOB)?.map(({ seq }) => seq)).toEqual([1, 2, 3]);
  });

  test('C10: deleted while a write is under way, all is written again whatever became of that', async () => {
    const { press, state, keeper } = await openedBench();
    press({ type: 'advance' });
    press({ type: 'advance' });
    expect(keeper.pending()).toBe(1);
    keeper.empty();
    await keeper.settle();
    keeper.logs.clear();
    expect(state().alarm).toBe('failed');
    await keeper.settle();
    expect(state()).toMatchObject({ keptThrough: 2, alarm: null });
    expect(keeper.logs.get(JOB)?.map(({ seq }) => seq)).toEqual([1, 2]);
  });

  test('C10: a job closed while a write is under way: what waited is written all the same', async () => {
    const { bench, press, state, keeper } = await openedBench();
    for (let i = 0; i < 3; i += 1) press({ type: 'advance' });
    expect(keeper.pending()).toBe(1);
    bench.close();
    await keeper.settle();
    while (keeper.pending() > 0) await keeper.settle();
    expect(new Set(keeper.logs.get(JOB)?.map(({ seq }) => seq))).toEqual(new Set([1, 2, 3]));
    expect(state().access).toBe('closed');
  });

  test('C10: a log that is held in part opens whole, is told as kept no further, and is written on', async () => {
    const first = await openedBench();
    first.keeper.prompt();
    for (let i = 0; i < 4; i += 1) first.press({ type: 'advance' });
    await settled();
    const whole = first.keeper.logs.get(JOB) ?? [];
    const { bench, keeper, state, voice } = await openedBench();
    keeper.logs.set(JOB, whole.slice(0, 2));
    keeper.read = async () => ({ events: whole, newer: false, keptThrough: 2 });
    await bench.open(JOB);
    expect(state()).toMatchObject({ keptThrough: 2, job: { seq: 4 } });
    expect(voice.calls.at(-1)).toBe('kept 2');
    await keeper.settle();
    expect(state().keptThrough).toBe(4);
    expect(keeper.logs.get(JOB)).toEqual(whole);
  });

  test('C10: after a conflict the log is read again and this window only looks on', async () => {
    const { press, state, keeper, voice } = await openedBench();
    press({ type: 'advance' });
    press({ type: 'advance' });
    await keeper.settle('conflict');
    expect(state().access).toBe('other window');
    expect(state().job.seq).toBe(1);
    expect(voice.take()).toContain('read only');
  });
});

describe('one writer', () => {
  test('another window holds the job: this one shows it, and refuses in words', async () => {
    const { press, state, voice } = await openedBench((keeper) => keeper.holdElsewhere(JOB));
    expect(state().access).toBe('other window');
    expect(setUpOf(state().job)?.name).toBe('Pump 3');
    press({ type: 'advance' });
    expect(voice.take()).toEqual(['read only']);
    expect(state().job.seq).toBe(1);
  });

  test('taken over by another window: said, and nothing more is written', async () => {
    const { press, state, keeper, voice } = await countingBench();
    keeper.steal(JOB);
    await settled();
    expect(state().access).toBe('other window');
    const { seq } = state().job;
    press({ type: 'step', size: 'step' });
    expect(state().job.seq).toBe(seq);
    expect(voice.take().at(-1)).toBe('read only');
  });

  test('taking over makes this window the writer, at rest where the log stands', async () => {
    const { bench, press, state } = await openedBench((keeper) => keeper.holdElsewhere(JOB));
    await bench.takeOver();
    expect(state().access).toBe('writer');
    expect(state().resting).toBe(true);
    press({ type: 'advance' });
    press({ type: 'advance' });
    expect(state().job.cautionsHeard).toBe(true);
  });

  test.each(['at once', 'at the next write'])(
    'a newer version has the logs: said %s, shown, and nothing more is written',
    async (when) => {
      const { press, state, keeper, voice } = await openedBench();
      press({ type: 'advance' });
      press({ type: 'advance' });
      voice.take();
      if (when === 'at once') keeper.supersede();
      else await keeper.settle('superseded');
      expect(state()).toMatchObject({ access: 'newer app', alarm: null });
      expect(state().job.seq).toBe(2);
      press({ type: 'advance' });
      expect(voice.take()).toEqual(['read only', 'read only']);
      expect(voice.told.at(-1)?.fact).toMatchObject({ why: 'newer app' });
      expect(state().job.seq).toBe(2);
    },
  );

  test('a log of a newer version opens read-only', async () => {
    const { press, state } = await openedBench((keeper) => {
      keeper.newer = true;
    });
    expect(state().access).toBe('newer log');
    press({ type: 'advance' });
    expect(state().job.seq).toBe(1);
  });

  test('a job that is not on this device says so', async () => {
    const { state } = await openedBench((keeper) => keeper.logs.clear());
    expect(state().access).toBe('unknown');
  });

  test('a device that cannot be read says so', async () => {
    const { state } = await openedBench((keeper) => {
      keeper.unreadable = true;
    });
    expect(state().access).toBe('unreadable');
  });
});

describe('commands', () => {
  test('a press cuts the line being said; a refusal changes nothing and is told', async () => {
    const { press, state, voice } = await countingBench();
    voice.take();
    const { seq } = state().job;
    press({ type: 'carryOn' });
    expect(state().job.seq).toBe(seq);
    expect(voice.take()).toEqual(['refused']);
    expect(voice.calls.at(-1)).toBe('cut');
  });

  test('two valves by presses alone are read and kept', async () => {
    const { press, state, keeper } = await countingBench();
    const valve = () => {
      for (let i = 0; i < 4; i += 1) press({ type: 'step', size: 'step' });
      press({ type: 'advance' });
      press({ type: 'step', size: 'step' });
      press({ type: 'advance' });
    };
    valve();
    press({ type: 'advance' });
    valve();
    await settled();
    expect(stageOf(state().job)).toBe('all read');
    expect(
      state().job.readings.map((r) =>
        r.kind === 'counted' ? [r.count48, r.landing?.past48] : r.kind,
      ),
    ).toEqual([
      [48, 3],
      [48, 3],
    ]);
    expect(state().keptThrough).toBe(state().job.seq);
    expect(keeper.logs.get(JOB)?.length).toBe(state().job.seq);
  });
});
