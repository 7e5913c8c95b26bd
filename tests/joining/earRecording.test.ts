import { expect, test } from 'vitest';
import * as recorder from '../../src/hearing/offline/recorder';
import { joinEarRecording } from '../../src/joining/earRecording';

const made = { v: 1, rate: 16_000, samples: new Int16Array(32_000) } as const;

function rig({ broken = false } = {}) {
  const kept = new Map<string, unknown>();
  const saved: [string, number][] = [];
  const keeping = {
    setting: async (key: string) => kept.get(key),
    async putSetting(key: string, value: unknown) {
      if (broken) throw new Error('full');
      kept.set(key, value);
    },
  };
  const join = () =>
    joinEarRecording(
      keeping,
      (name, bytes) => saved.push([name, bytes.length]),
      async () => recorder,
    );
  const settle = () => new Promise((resolve) => setTimeout(resolve, 50));
  return { join, kept, saved, settle };
}

test('one session is taken down when asked for, kept, handed out and deleted', async () => {
  const { join, kept, saved, settle } = rig();
  const { service, store, keep } = join();
  expect(store.getState().wanted).toBe(false);
  service.want(true);
  keep(made);
  expect(store.getState()).toMatchObject({ wanted: false, seconds: 2 });
  await settle();
  const later = join();
  later.service.look();
  await expect.poll(() => later.store.getState().seconds).toBe(2);
  later.service.hand();
  await expect.poll(() => saved).toEqual([['turncaller-ear-session.wav', 64_044]]);
  later.service.forget();
  await settle();
  expect([...kept.values()]).toEqual([null]);
  expect(later.store.getState().seconds).toBeNull();
});

test('what the device will not keep is told, and can still be saved', async () => {
  const { join, saved, settle } = rig({ broken: true });
  const { service, store, keep } = join();
  keep(made);
  await settle();
  expect(store.getState()).toMatchObject({ seconds: 2, unkept: true });
  service.hand();
  await expect.poll(() => saved.length).toBe(1);
});
