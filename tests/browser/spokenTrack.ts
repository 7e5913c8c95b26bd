import { writeFile } from 'node:fs/promises';
import { ensureProgram, fliteSays, wavBytes } from '../../scripts/ear-voices.mjs';

/** A phrase and the silence before it. */
export interface SpokenPhrase {
  readonly afterMs: number;
  readonly text: string;
}

const RATE = 16_000;
/** A room is never quite silent. */
const ROOM = 0.0008;

/** Writes a sound file with the phrases spoken one after the other; gives its length, ms. */
export async function writeTrack(path: string, phrases: readonly SpokenPhrase[]): Promise<number> {
  if (!ensureProgram('flite', ['flite'])) {
    throw new Error("The ear's browser test speaks with flite: sudo apt-get install flite");
  }
  const pieces = phrases.flatMap(({ afterMs, text }) => [
    new Float32Array((afterMs * RATE) / 1000),
    fliteSays(text, 'rms').samples,
  ]);
  const samples = [...pieces, new Float32Array(RATE)].flatMap((piece) => [...piece]);
  let seed = 1;
  const noisy = samples.map((sample) => {
    seed = (Math.imul(seed, 1_664_525) + 1_013_904_223) >>> 0;
    return sample + (seed / 2 ** 31 - 1) * ROOM;
  });
  await writeFile(path, wavBytes({ samples: Float32Array.from(noisy), rate: RATE }));
  return (samples.length * 1000) / RATE;
}
