import { beforeAll, describe, expect, test } from 'vitest';
import { grammarFor } from '#words';
import { earPack } from '../../../scripts/ear-pack.mjs';
import { ensureProgram, fliteSays, type Sound } from '../../../scripts/ear-voices.mjs';
import { packEar, unpackEar } from '../../../src/hearing/offline/earPack';
import {
  type Pipeline,
  type PipelineEvent,
  startPipeline,
} from '../../../src/hearing/offline/pipeline';
import { resampler } from '../../../src/hearing/offline/resampler';
import { benchAt } from '../bench';

/** One pipeline for all: what one test leaves behind must not matter to the next. */
let pipeline: Pipeline;
let five: Sound;

beforeAll(async () => {
  if (!ensureProgram('flite', ['flite'])) {
    throw new Error("The ear's tests speak with flite: sudo apt-get install flite");
  }
  pipeline = await startPipeline(await earPack());
  five = fliteSays('five', 'rms');
}, 60_000);

/** White noise from a seed, root mean square of full scale. */
function noise(length: number, rms: number, seed = 7): Float32Array {
  let state = seed;
  return Float32Array.from({ length }, () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return (state / 2 ** 31 - 1) * rms * Math.sqrt(3);
  });
}

/** Sound between two silences, in a room that is never quite silent. */
function inRoom({ samples, rate }: Sound, gain = 1): Sound {
  const made = noise(samples.length + 3 * rate, 0.0003);
  for (const [i, sample] of samples.entries()) {
    const at = i + 1.5 * rate;
    made[at] = Math.max(-1, Math.min(1, (made[at] ?? 0) + gain * sample));
  }
  return { samples: made, rate };
}

function at(rate: number, sound: Sound): Sound {
  const filter = resampler(sound.rate, rate);
  return { samples: filter(sound.samples), rate };
}

/** Played as a worklet hands it over, at four quarters of a valve. */
function heard({ samples, rate }: Sound): readonly (PipelineEvent & { type: 'heard' })[] {
  pipeline.reset(rate);
  pipeline.follow(grammarFor(benchAt('counting').state(), { carrier: null }));
  const events: PipelineEvent[] = [];
  for (let from = 0; from < samples.length; from += 1024) {
    events.push(...pipeline.take(samples.slice(from, from + 1024)));
  }
  for (const event of events) {
    if (event.type !== 'level') continue;
    expect(Number.isFinite(event.db) && Number.isFinite(event.noiseDb)).toBe(true);
  }
  return events.filter((event) => event.type === 'heard');
}

const taken = (sound: Sound) =>
  heard(sound)
    .filter(({ verdict }) => verdict === 'taken')
    .map(({ candidate }) => candidate?.branch.words);

describe('whatever sound comes', () => {
  test.each([8000, 11_025, 16_000, 22_050, 32_000, 44_100, 48_000, 88_200, 96_000])(
    'the count is heard at %i a second',
    (rate) => {
      expect(taken(at(rate, inRoom(five)))).toEqual(['five']);
    },
    30_000,
  );

  test('it is heard clipped, and from a whisper of a microphone', () => {
    expect(taken(inRoom(five, 3))).toEqual(['five']);
    expect(taken(inRoom(five, 0.05))).toEqual(['five']);
  });

  test('clipped past knowing it is never another count', () => {
    for (const gain of [10, 30, 100]) {
      for (const words of taken(inRoom(five, gain))) expect(words).toBe('five');
    }
  });

  test.each([
    ['digital silence', 0],
    ['a room', 0.002],
    ['a loud steady room', 0.2],
    ['full scale', 0.57],
  ])(
    '%s is nothing',
    (_, rms) => {
      expect(taken({ samples: noise(10 * 16_000, rms), rate: 16_000 })).toEqual([]);
    },
    30_000,
  );

  test('samples that are no numbers are taken for silence, and what comes after is heard', () => {
    const { samples, rate } = inRoom(five);
    const broken = Float32Array.from({ length: rate }, (_, i) =>
      i % 3 === 0 ? Number.NaN : Number.POSITIVE_INFINITY,
    );
    const whole = new Float32Array(broken.length + samples.length);
    whole.set(broken);
    whole.set(samples, broken.length);
    expect(taken({ samples: whole, rate })).toEqual(['five']);
  });

  test('a microphone opened anew at another rate is heard', () => {
    heard({ samples: noise(16_000, 0.05), rate: 16_000 });
    expect(taken(at(44_100, inRoom(five)))).toEqual(['five']);
  });

  test('a word cut off by the microphone going is not heard with the next', () => {
    const { samples, rate } = inRoom(fliteSays('four', 'rms'));
    expect(taken({ samples: samples.slice(0, 2 * rate), rate })).toEqual([]);
    expect(taken(inRoom(five))).toEqual(['five']);
  });
});

test('speech before anything is listened for is nothing, and what comes after is heard', async () => {
  const fresh = await startPipeline(await earPack());
  const { samples, rate } = inRoom(five);
  fresh.reset(rate);
  expect(fresh.take(samples).filter(({ type }) => type === 'heard')).toMatchObject([
    { verdict: 'nothing', candidate: null },
  ]);
  fresh.follow(grammarFor(benchAt('counting').state(), { carrier: null }));
  expect(fresh.take(samples).filter(({ type }) => type === 'heard')).toMatchObject([
    { verdict: 'taken' },
  ]);
}, 60_000);

test('in minutes of noise with words in it memory does not grow', () => {
  const { samples, rate } = inRoom(five);
  const loud = noise(samples.length, 0.02, 99);
  const minute = Float32Array.from(samples, (sample, i) => sample + (loud[i] ?? 0));
  const rounds = (count: number) => {
    for (let i = 0; i < count; i += 1) heard({ samples: minute, rate });
    return process.memoryUsage().arrayBuffers;
  };
  const after = rounds(4);
  expect(rounds(16)).toBeLessThan(after * 1.5);
}, 120_000);

describe('a pack that is not what was built', () => {
  test('cut short or lengthened is none', async () => {
    const packed = packEar(await earPack());
    expect(() => unpackEar(packed.slice(0, 20))).toThrow(RangeError);
    expect(() => unpackEar(packed.slice(0, -1))).toThrow(RangeError);
    expect(() => unpackEar(new Uint8Array([...packed.slice(0, 2000), 0]))).toThrow(RangeError);
  });

  test.each(['decoderWasm', 'denoiserWasm', 'mdef', 'dictionary'] as const)(
    'with a %s of rubbish is refused, not begun',
    async (part) => {
      const pack = { ...(await earPack()), [part]: new Uint8Array(64).fill(7) };
      await expect(startPipeline(pack)).rejects.toBeDefined();
    },
  );
});
