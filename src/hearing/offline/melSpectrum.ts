/** Points of the transform: the next power of two above 25 ms at 16 kHz. */
const POINTS = 512;

/** Power of a stretch of samples at each of 256 frequencies up to half the rate; Hamming's window. */
export function spectrum(samples: Float32Array, from: number, length: number): Float64Array {
  const real = new Float64Array(POINTS);
  const imaginary = new Float64Array(POINTS);
  for (let i = 0; i < Math.min(length, POINTS); i += 1) {
    const now = samples[from + i] ?? 0;
    const before = samples[from + i - 1] ?? now;
    const window = 0.54 - 0.46 * Math.cos((2 * Math.PI * i) / (length - 1));
    // High sounds lifted, as the model has them too.
    real[i] = (now - 0.97 * before) * window;
  }
  transform(real, imaginary);
  return Float64Array.from(
    { length: POINTS / 2 },
    (_, i) => (real[i] ?? 0) ** 2 + (imaginary[i] ?? 0) ** 2,
  );
}

/** Fast Fourier transform in place (J. Cooley, J. Tukey, 1965); length a power of two. */
function transform(real: Float64Array, imaginary: Float64Array): void {
  const n = real.length;
  for (let i = 1, j = 0; i < n; i += 1) {
    let bit = n >> 1;
    for (; j & bit; bit >>= 1) j ^= bit;
    j ^= bit;
    if (i < j) {
      [real[i], real[j]] = [real[j] ?? 0, real[i] ?? 0];
      [imaginary[i], imaginary[j]] = [imaginary[j] ?? 0, imaginary[i] ?? 0];
    }
  }
  for (let size = 2; size <= n; size *= 2) {
    const half = size / 2;
    for (let k = 0; k < half; k += 1) {
      const [cos, sin] = [Math.cos((2 * Math.PI * k) / size), -Math.sin((2 * Math.PI * k) / size)];
      for (let a = k; a < n; a += size) {
        const b = a + half;
        const [rb, ib] = [real[b] ?? 0, imaginary[b] ?? 0];
        const [r, i] = [rb * cos - ib * sin, rb * sin + ib * cos];
        const [ra, ia] = [real[a] ?? 0, imaginary[a] ?? 0];
        [real[a], imaginary[a], real[b], imaginary[b]] = [ra + r, ia + i, ra - r, ia - i];
      }
    }
  }
}

/** Frequency bands evenly apart in mel, each a triangle over its neighbours. */
export function melBands(how: {
  readonly rate: number;
  readonly bands: number;
  readonly fromHz: number;
  readonly toHz: number;
}): (power: Float64Array) => readonly number[] {
  const { rate, bands, fromHz, toHz } = how;
  const melOf = (hz: number) => 2595 * Math.log10(1 + hz / 700);
  const hzOf = (mel: number) => 700 * (10 ** (mel / 2595) - 1);
  const step = (melOf(toHz) - melOf(fromHz)) / (bands + 1);
  const edges = Array.from({ length: bands + 2 }, (_, i) => hzOf(melOf(fromHz) + i * step));
  const weights = Array.from({ length: bands }, (_, band) => {
    const [low, peak, high] = [edges[band] ?? 0, edges[band + 1] ?? 0, edges[band + 2] ?? 0];
    return Float64Array.from({ length: POINTS / 2 }, (_, i) => {
      const hz = (i * rate) / POINTS;
      return Math.max(0, Math.min((hz - low) / (peak - low), (high - hz) / (high - peak)));
    });
  });
  return (power) =>
    weights.map((weight) => power.reduce((sum, one, i) => sum + one * (weight[i] ?? 0), 0));
}
