import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { readWav } from '../../../scripts/ear-voices.mjs';
import {
  isRecording,
  MOST_RECORDED_S,
  recorder,
  wavOf,
} from '../../../src/hearing/offline/recorder';

const tone = (length: number, rate: number) =>
  Float32Array.from({ length }, (_, i) => 0.5 * Math.sin((2 * Math.PI * 440 * i) / rate));

describe('a recorded session', () => {
  test('is the sound that came, at 16 kHz, and a file that npm run ear reads', () => {
    const taken = recorder(48_000);
    for (let i = 0; i < 100; i += 1) taken.take(tone(480, 48_000));
    const recording = taken.done();
    if (recording === null) throw new Error('nothing was taken down');
    expect(isRecording(structuredClone(recording))).toBe(true);
    expect(recording.samples.length / 16_000).toBeCloseTo(1, 1);
    const folder = mkdtempSync(join(tmpdir(), 'turncaller-recorded-'));
    try {
      const path = join(folder, 'session.wav');
      writeFileSync(path, wavOf(recording));
      const { samples, rate } = readWav(path);
      expect(rate).toBe(16_000);
      expect(samples.length).toBe(recording.samples.length);
      expect(Math.max(...samples)).toBeCloseTo(0.5, 1);
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  });

  test('ends at ten minutes, and clips what is too loud', () => {
    const taken = recorder(16_000);
    const loud = new Float32Array(16_000).fill(3);
    for (let s = 0; s < MOST_RECORDED_S + 20; s += 1) taken.take(loud);
    const { samples } = taken.done() ?? { samples: new Int16Array(0) };
    expect(samples.length / 16_000).toBeLessThanOrEqual(MOST_RECORDED_S + 1);
    expect(samples[5]).toBe(32_767);
  });

  test('of nothing is none, and nothing else is taken for one', () => {
    expect(recorder(48_000).done()).toBeNull();
    for (const kept of [null, {}, { v: 1, rate: 16_000, samples: [1, 2] }, { v: 2 }]) {
      expect(isRecording(kept)).toBe(false);
    }
  });
});
