import { expect, test } from 'vitest';
import { LEVEL_EVERY_MS, levelDb, measureRoom } from '#hearing';
import { fakeClock } from '../fakes/clock';
import { settled } from './rig';

const tone = (peak: number) =>
  Float32Array.from({ length: 2048 }, (_, i) => peak * Math.sin((2 * Math.PI * i) / 64));

test.each([
  ['a full tone', tone(1), -3.01],
  ['a tenth of it', tone(0.1), -23.01],
  ['silence', new Float32Array(2048), -100],
  ['no samples', new Float32Array(0), -100],
])('the level of %s', (_, samples, db) => {
  expect(levelDb(samples)).toBeCloseTo(db, 2);
});

test('the level is told a few times a second until it is stopped, and the microphone closed', async () => {
  const clock = fakeClock();
  const told: number[] = [];
  let closes = 0;
  const room = measureRoom({
    clock,
    openMicrophone: async () => ({ samples: () => tone(1), close: () => (closes += 1) }),
    onLevel: (db) => told.push(db),
  });
  await settled();
  clock.advance(4 * LEVEL_EVERY_MS);
  expect(told).toHaveLength(5);
  room.stop();
  clock.advance(60_000);
  expect(told).toHaveLength(5);
  expect([closes, clock.waiting()]).toEqual([1, 0]);
});

test('stopped while the microphone opens, it is closed again; without one nothing is told', async () => {
  const clock = fakeClock();
  const told: number[] = [];
  let closes = 0;
  measureRoom({
    clock,
    openMicrophone: async () => ({ samples: () => tone(1), close: () => (closes += 1) }),
    onLevel: (db) => told.push(db),
  }).stop();
  measureRoom({
    clock,
    openMicrophone: () => Promise.reject(new Error('not allowed')),
    onLevel: (db) => told.push(db),
  });
  await settled();
  clock.advance(60_000);
  expect(told).toEqual([]);
  expect(closes).toBe(1);
});
