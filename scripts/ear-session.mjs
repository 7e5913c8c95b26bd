// npm run ear -- --session FILE: a recorded session of the ear played through the app's own pipeline
// into a job at zero of a valve, and what came of it, as it came.
import { existsSync } from 'node:fs';
import { readWav } from './ear-voices.mjs';
import { hearingBench } from './ear-work.mjs';

/** @param {string} file a WAV file, as saved under Settings, Ear @param {string | null} carrier */
export async function replaySession(file, carrier) {
  if (!existsSync(file)) {
    console.error(`There is no file ${file}. Save a recording under Settings, Ear.`);
    process.exit(2);
  }
  const { samples, rate } = readWav(file);
  const bench = await hearingBench();
  bench.open({ rate, carrier });
  for (let from = 0; from < samples.length; from += rate) {
    const { heard, after } = bench.play({ samples: samples.subarray(from, from + rate), rate });
    for (const { text, verdict, fit, came } of heard) {
      const what = came === '' ? verdict : `${verdict}:${came}, at ${after / 12}`;
      console.log(
        `${(from / rate).toFixed(0).padStart(5)} s  '${text}' (${fit.toFixed(2)}) ${what}`,
      );
    }
  }
}
