/** The loudest stretch is brought to this level (root mean square of full scale). */
const LOUDEST_RMS = 0.08;
/** How long that stretch is, samples at 16 kHz: 100 ms. */
const LOUDEST_OVER = 1600;
/** Noise laid under everything: the model has never met digital silence. */
const UNDER_RMS = 0.005;
/** No louder than this many times. */
const MOST_GAIN = 300;

/** Samples as the decoder likes them: at one loudness, with a little pink noise beneath. */
export function conditioned(samples: Float32Array): Float32Array {
  const loudest = loudestRms(samples);
  const gain = loudest > 0 ? Math.min(MOST_GAIN, LOUDEST_RMS / loudest) : 1;
  return samples.map((sample, i) => clip(sample * gain + (NOISE[i % NOISE.length] ?? 0)));
}

const clip = (sample: number) => Math.max(-1, Math.min(1, sample));

function loudestRms(samples: Float32Array): number {
  const over = Math.min(LOUDEST_OVER, samples.length);
  let power = 0;
  let most = 0;
  for (let i = 0; i < samples.length; i += 1) {
    const [newest, oldest] = [samples[i] ?? 0, i < over ? 0 : (samples[i - over] ?? 0)];
    power += newest * newest - oldest * oldest;
    most = Math.max(most, power);
  }
  return over === 0 ? 0 : Math.sqrt(most / over);
}

/** Four seconds of pink noise (P. Kellet's filter), always the same. */
const NOISE: Float32Array = pinkNoise(64_000, UNDER_RMS);

function pinkNoise(length: number, rms: number): Float32Array {
  let seed = 20_251;
  const white = () => {
    // A linear congruential generator (Numerical Recipes' constants).
    seed = (Math.imul(seed, 1_664_525) + 1_013_904_223) >>> 0;
    return seed / 2 ** 31 - 1;
  };
  let [b0, b1, b2] = [0, 0, 0];
  const pink = Float32Array.from({ length }, () => {
    const w = white();
    b0 = 0.99765 * b0 + w * 0.099046;
    b1 = 0.963 * b1 + w * 0.2965164;
    b2 = 0.57 * b2 + w * 1.0526913;
    return b0 + b1 + b2 + w * 0.1848;
  });
  const power = pink.reduce((sum, sample) => sum + sample * sample, 0) / length;
  return pink.map((sample) => (sample * rms) / Math.sqrt(power));
}
