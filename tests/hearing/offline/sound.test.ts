import { describe, expect, test } from 'vitest';
import { bandLevel } from '../../../src/hearing/offline/bandLevel';
import { conditioned } from '../../../src/hearing/offline/conditioned';
import { type EarPack, packEar, unpackEar } from '../../../src/hearing/offline/earPack';
import { framesOf } from '../../../src/hearing/offline/frames';
import { resampler } from '../../../src/hearing/offline/resampler';

const tone = (hz: number, rate: number, seconds: number, size = 0.5) =>
  Float32Array.from(
    { length: rate * seconds },
    (_, i) => size * Math.sin((2 * Math.PI * hz * i) / rate),
  );

const levelOf = (samples: Float32Array, rate: number) => bandLevel(rate)(samples);

describe('sound', () => {
  test.each([8000, 11_025, 16_000, 22_050, 44_100, 48_000, 96_000])(
    'at %i a second comes through at its pitch and level, in any batches',
    (rate) => {
      const to48 = resampler(rate, 48_000);
      const to16 = resampler(48_000, 16_000);
      const source = tone(1000, rate, 1);
      const parts: number[] = [];
      for (let from = 0; from < source.length; from += 777) {
        parts.push(...to16(to48(source.subarray(from, from + 777))));
      }
      expect(parts.length / 16_000).toBeGreaterThan(0.98);
      expect(parts.length / 16_000).toBeLessThan(1.01);
      const middle = Float32Array.from(parts.slice(2000, 14_000));
      expect(levelOf(middle, 16_000)).toBeCloseTo(levelOf(tone(1000, 16_000, 0.75), 16_000), 0);
      const crossings = middle.filter(
        (sample, i) => i > 0 && sample >= 0 && (middle[i - 1] ?? 0) < 0,
      );
      expect(Math.abs(crossings.length - 750)).toBeLessThan(4);
    },
  );

  test('no rate is refused', () => {
    for (const rate of [0, -1, Number.NaN, Number.POSITIVE_INFINITY]) {
      expect(() => resampler(rate, 48_000)).toThrow(RangeError);
    }
  });

  test('is cut into frames without a sample lost', () => {
    const cut = framesOf(480);
    const source = Float32Array.from({ length: 5000 }, (_, i) => i);
    const frames = [0, 100, 1000, 4999].flatMap((from, i, all) => [
      ...cut(source.subarray(from, all[i + 1] ?? 5000)),
    ]);
    expect(frames).toHaveLength(10);
    expect(frames.flatMap((frame) => [...frame])).toEqual([...source.subarray(0, 4800)]);
  });

  test('is brought to one loudness, never silent, never clipped, never beyond full scale', () => {
    const quiet = conditioned(tone(500, 16_000, 1, 0.002));
    const loud = conditioned(tone(500, 16_000, 1, 0.9));
    expect(levelOf(quiet, 16_000)).toBeCloseTo(levelOf(loud, 16_000), 0);
    const silence = conditioned(new Float32Array(16_000));
    expect(levelOf(silence, 16_000)).toBeGreaterThan(-80);
    expect(silence.every(Number.isFinite)).toBe(true);
    expect(
      Math.max(...conditioned(Float32Array.from({ length: 800 }, () => 1))),
    ).toBeLessThanOrEqual(1);
    expect(conditioned(new Float32Array(0))).toHaveLength(0);
  });
});

describe('the pack', () => {
  const bytes = (...values: number[]) => new Uint8Array(values);
  const pack: EarPack = {
    decoderWasm: bytes(1),
    denoiserWasm: bytes(2, 2),
    mdef: bytes(),
    means: bytes(4),
    variances: bytes(5),
    sendump: bytes(6, 6, 6),
    transitions: bytes(7),
    dictionary: bytes(8),
    fillers: bytes(9),
    features: bytes(10),
  };

  test('comes out as it went in', () => {
    expect(unpackEar(packEar(pack))).toEqual(pack);
  });

  test('cut short, or with anything added, it is refused', () => {
    const packed = packEar(pack);
    expect(() => unpackEar(packed.slice(0, -1))).toThrow(RangeError);
    expect(() => unpackEar(new Uint8Array([...packed, 0]))).toThrow(RangeError);
    expect(() => unpackEar(new Uint8Array(3))).toThrow(RangeError);
  });
});
