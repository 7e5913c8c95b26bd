import { RECOGNISED_RATE } from './recognition';
import { resampler } from './resampler';

/** A session as it came from the microphone: 16-bit samples at 16 kHz. */
export interface EarRecording {
  readonly v: 1;
  readonly rate: number;
  readonly samples: Int16Array<ArrayBuffer>;
}

/** What is recorded at most, s: ten minutes are 19 MB. */
export const MOST_RECORDED_S = 600;

/** Takes down a stream as it comes, up to the most. */
export interface Recorder {
  take(samples: Float32Array): void;
  /** All that was taken down; null where that is nothing. */
  done(): EarRecording | null;
}

/** A recorder for a stream at this rate. */
export function recorder(rate: number): Recorder {
  const down = resampler(rate, RECOGNISED_RATE);
  const parts: Int16Array<ArrayBuffer>[] = [];
  let length = 0;
  return {
    take(samples) {
      if (length >= MOST_RECORDED_S * RECOGNISED_RATE) return;
      const part = Int16Array.from(down(samples), (sample) =>
        Math.round(Math.max(-1, Math.min(1, sample)) * 32_767),
      );
      parts.push(part);
      length += part.length;
    },
    done() {
      if (length === 0) return null;
      const samples = new Int16Array(length);
      let at = 0;
      for (const part of parts) {
        samples.set(part, at);
        at += part.length;
      }
      return { v: 1, rate: RECOGNISED_RATE, samples };
    },
  };
}

/** Whether something kept is a recording. */
export function isRecording(kept: unknown): kept is EarRecording {
  if (typeof kept !== 'object' || kept === null) return false;
  const { v, rate, samples } = kept as Partial<EarRecording>;
  return v === 1 && typeof rate === 'number' && rate > 0 && samples instanceof Int16Array;
}

/** A recording as a WAV file's bytes, as `npm run ear` reads them. */
export function wavOf({ rate, samples }: EarRecording): Uint8Array<ArrayBuffer> {
  const bytes = new Uint8Array(44 + samples.length * 2);
  const view = new DataView(bytes.buffer);
  const name = (at: number, text: string) => {
    for (let i = 0; i < text.length; i += 1) bytes[at + i] = text.charCodeAt(i);
  };
  name(0, 'RIFF');
  view.setUint32(4, 36 + samples.length * 2, true);
  name(8, 'WAVEfmt ');
  view.setUint32(16, 16, true);
  view.setUint16(20, 1, true);
  view.setUint16(22, 1, true);
  view.setUint32(24, rate, true);
  view.setUint32(28, rate * 2, true);
  view.setUint16(32, 2, true);
  view.setUint16(34, 16, true);
  name(36, 'data');
  view.setUint32(40, samples.length * 2, true);
  for (const [i, sample] of samples.entries()) view.setInt16(44 + i * 2, sample, true);
  return bytes;
}
