import { melBands, spectrum } from './melSpectrum';

/** What a word sounded like: the shape of its spectrum, frame by frame, 10 ms apart. Plain data. */
export interface WordPrint {
  /** Frames one after the other, `PRINT_SHAPE` figures each. */
  readonly shape: readonly number[];
}

/** Figures to a frame. */
export const PRINT_SHAPE = 12;
const RATE = 16_000;
const HOP = 160;
const WINDOW = 400;
const BANDS = 20;
const FROM_HZ = 130;
const TO_HZ = 3700;
/** Frames more than this below the loudest are no part of the word, in nats of power. */
const BELOW_LOUDEST = 6;
/** As mel cepstra are weighted for comparing (B.-H. Juang, L. Rabiner, J. Wilpon, 1987). */
const LIFTER = 22;

const BANK = melBands({ rate: RATE, bands: BANDS, fromHz: FROM_HZ, toHz: TO_HZ });
/** A figure is kept to this many parts of one. */
const KEPT_TO = 100;

/** The print of samples at 16 kHz, -1 to 1, silence at its ends left out; null for next to nothing. */
export function wordPrint(samples: Float32Array): WordPrint | null {
  const frames = Math.floor((samples.length - WINDOW) / HOP) + 1;
  if (frames < 1) return null;
  const logs = Array.from({ length: frames }, (_, i) =>
    BANK(spectrum(samples, i * HOP, WINDOW)).map((power) => Math.log(power + 1e-9)),
  );
  const loud = logs.map((bands) => Math.max(...bands));
  const least = loud.reduce((most, one) => Math.max(most, one), -Infinity) - BELOW_LOUDEST;
  const from = loud.findIndex((one) => one >= least);
  const to = loud.findLastIndex((one) => one >= least);
  const cepstra = logs.slice(from, to + 1).map(cepstrumOf);
  return { shape: centred(cepstra).flat() };
}

/** Cosine transform of the bands' logarithms, its mean left out. */
function cepstrumOf(bands: readonly number[]): readonly number[] {
  return Array.from({ length: PRINT_SHAPE }, (_, k) => {
    const at = (Math.PI * (k + 1)) / bands.length;
    const sum = bands.reduce((all, band, i) => all + band * Math.cos(at * (i + 0.5)), 0);
    const lift = 1 + (LIFTER / 2) * Math.sin((Math.PI * (k + 1)) / LIFTER);
    return (sum * lift * Math.sqrt(2 / bands.length)) / 10;
  });
}

/** Without what is the same all through: the microphone, the distance. */
function centred(frames: readonly (readonly number[])[]): readonly (readonly number[])[] {
  const mean = Array.from(
    { length: PRINT_SHAPE },
    (_, k) => frames.reduce((sum, frame) => sum + (frame[k] ?? 0), 0) / Math.max(1, frames.length),
  );
  return frames.map((frame) =>
    frame.map((figure, k) => Math.round((figure - (mean[k] ?? 0)) * KEPT_TO) / KEPT_TO),
  );
}
