/** Turns a stream at one rate into the same sound at another; what is left over waits for more. */
export type Resampler = (samples: Float32Array) => Float32Array;

/** Half the length of the filter, in periods of the slower of the two rates. */
const HALF_PERIODS = 12;
/** Where the filter starts to cut, as a part of half the slower rate. */
const EDGE = 0.92;
/** Places between two samples the filter is worked out for. */
const PHASES = 256;

/**
 * A stream's resampler, by a windowed sinc (Hann), rates per second. Delays by `HALF_PERIODS` of the
 * slower rate. Throws a RangeError where a rate is no rate.
 */
export function resampler(from: number, to: number): Resampler {
  if (!(from > 0 && to > 0 && Number.isFinite(from + to))) throw new RangeError('not a rate');
  if (from === to) return (samples) => samples;
  const cut = (Math.min(from, to) / from) * EDGE;
  const half = Math.ceil(HALF_PERIODS / Math.min(1, to / from));
  const filter = phasesOf(half, cut);
  const step = from / to;
  let kept = new Float32Array(2 * half);
  /** Where the next sample lies in what is kept. */
  let next = half;
  return (samples) => {
    const all = new Float32Array(kept.length + samples.length);
    all.set(kept);
    all.set(samples, kept.length);
    const made: number[] = [];
    while (next + half + 1 < all.length) {
      const whole = Math.floor(next);
      const phase = filter[Math.round((next - whole) * PHASES)] ?? [];
      let sum = 0;
      for (let i = 0; i < 2 * half; i += 1) {
        sum += (all[whole - half + 1 + i] ?? 0) * (phase[i] ?? 0);
      }
      made.push(sum);
      next += step;
    }
    const drop = Math.max(0, Math.floor(next) - half);
    kept = all.slice(drop);
    next -= drop;
    return Float32Array.from(made);
  };
}

function phasesOf(half: number, cut: number): readonly Float32Array[] {
  return Array.from({ length: PHASES + 1 }, (_, phase) => {
    const taps = Float32Array.from({ length: 2 * half }, (_, i) => {
      const t = i - half + 1 - phase / PHASES;
      const window = Math.abs(t) < half ? 0.5 + 0.5 * Math.cos((Math.PI * t) / half) : 0;
      return cut * sinc(cut * t) * window;
    });
    const sum = taps.reduce((all, tap) => all + tap, 0);
    return taps.map((tap) => tap / sum);
  });
}

function sinc(x: number): number {
  return x === 0 ? 1 : Math.sin(Math.PI * x) / (Math.PI * x);
}
