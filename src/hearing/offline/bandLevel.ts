/** Where speech has most of its power, Hz. */
const FROM_HZ = 250;
const TO_HZ = 3600;
/** What silence is told as, dB of full scale. */
export const QUIETEST_DB = -100;

/** The level of a stream, frame by frame, in the band of speech, dB of full scale. */
export function bandLevel(rate: number): (frame: Float32Array) => number {
  const high = biquad(FROM_HZ, rate, 'high');
  const low = biquad(Math.min(TO_HZ, rate * 0.45), rate, 'low');
  return (frame) => {
    let power = 0;
    for (const sample of frame) {
      const banded = low(high(sample));
      power += banded * banded;
    }
    return Math.max(QUIETEST_DB, 10 * Math.log10(power / frame.length + 1e-12));
  };
}

/** A Butterworth filter of second order, by the bilinear transform (R. Bristow-Johnson's forms). */
function biquad(hz: number, rate: number, kind: 'high' | 'low'): (sample: number) => number {
  const w = (2 * Math.PI * hz) / rate;
  const alpha = Math.sin(w) * Math.SQRT1_2;
  const cos = Math.cos(w);
  const a0 = 1 + alpha;
  const edge = (kind === 'high' ? 1 + cos : 1 - cos) / 2 / a0;
  const middle = (kind === 'high' ? -2 : 2) * edge;
  const [a1, a2] = [(-2 * cos) / a0, (1 - alpha) / a0];
  let [x1, x2, y1, y2] = [0, 0, 0, 0];
  return (x) => {
    const y = edge * x + middle * x1 + edge * x2 - a1 * y1 - a2 * y2;
    [x2, x1, y2, y1] = [x1, x, y1, y];
    return y;
  };
}
