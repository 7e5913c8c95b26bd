// The ear at work, in plain Node: sound through the app's own pipeline into a real job's rules.
import { readFileSync } from 'node:fs';
import { earPack } from './ear-pack.mjs';
import { loadTs } from './load-ts.mjs';
import { root } from './root.mjs';

/** Handed to the pipeline at a time, as a worklet would, s. */
const BATCH_S = 0.02;

/**
 * @typedef {import('./ear-voices.mjs').Sound} Sound
 * @typedef {{ count48: number, asked: boolean, moved: boolean, delayMs: number | null }} Outcome what a
 *   stretch of sound came to; delay from a moment given to the answer
 */

/** The app's rooms and a job of the demo engine, at zero of a valve. */
async function rooms() {
  const counting = await loadTs('src/counting/index.ts');
  const words = await loadTs('src/words/index.ts');
  const { startPipeline } = await loadTs('src/hearing/offline/pipeline.ts');
  const demo = JSON.parse(readFileSync(`${root}demo-data/harrow-fen-pump-4.json`, 'utf8'));
  let atZero = counting.initial;
  for (const event of demo.events) {
    atZero = counting.evolve(atZero, event);
    if (counting.stageOf(atZero) === 'counting') break;
  }
  return { counting, words, atZero, pipeline: await startPipeline(await earPack()) };
}

/** A bench that hears: a valve at zero, and sound played to it. */
export async function hearingBench() {
  const { counting, words, atZero, pipeline } = await rooms();
  let job = atZero;
  let at = 1e12;
  /** @type {string | null} */
  let carrier = null;

  const follow = () => pipeline.follow(words.grammarFor(job, { carrier }));
  const count48 = () => job.open?.count48 ?? 0;

  /** @param {string} text */
  function submit(text) {
    const hearing = words.hear(text, words.grammarFor(job, { carrier }));
    if (hearing.kind !== 'meaning') return '';
    let came = '';
    for (const meaning of hearing.meanings) {
      if (meaning.kind !== 'command') continue;
      const decision = counting.decide(job, { ...meaning.command, at, by: 'voice' });
      if (decision.kind !== 'events') continue;
      for (const event of decision.events) {
        job = counting.evolve(job, event);
        came += ` ${event.type}`;
      }
    }
    return came;
  }

  return {
    /** @param {{ rate: number, carrier?: string | null }} how */
    open(how) {
      carrier = how.carrier ?? null;
      pipeline.reset(how.rate);
      this.zero();
    },
    /** Back at zero of the valve. */
    zero() {
      job = atZero;
      at += 60_000;
      follow();
    },
    /**
     * Knows these words as in a sound check: each is played by itself, and its print kept.
     * @param {readonly { words: string, sound: Sound }[]} said nothing: no prints
     */
    know(said) {
      pipeline.know(null);
      pipeline.check(true);
      follow();
      const words = said.flatMap(({ words, sound }) => {
        pipeline.reset(sound.rate);
        const print = pipeline
          .take(sound.samples)
          .flatMap((/** @type {any} */ event) =>
            event.type === 'heard' ? (event.print ?? []) : [],
          );
        return print.length === 1 ? [{ words, print: print[0] }] : [];
      });
      pipeline.check(false);
      if (words.length > 0) pipeline.know({ v: 1, db: 0, words });
      return words.length;
    },
    /** What is listened for now. */
    grammar: () => words.grammarFor(job, { carrier }),
    /** At a count already, as if called. @param {number} quarters */
    standAt(quarters) {
      this.zero();
      for (let n = 1; n <= quarters; n += 1) submit(n === 1 ? 'one' : String(n));
      follow();
    },
    /**
     * Plays sound. `endS`: where in it the word ends, for the delay.
     * @param {Sound} sound @param {number} [endS]
     */
    play({ samples, rate }, endS = 0) {
      const batch = Math.round(BATCH_S * rate);
      /** @type {{ text: string, verdict: string, fit: number, came: string, delayMs: number }[]} */
      const heard = [];
      const before = count48();
      // Sound comes as fast as it sounds, and waits while the pipeline is at work.
      let freeAtMs = 0;
      for (let from = 0; from < samples.length; from += batch) {
        const began = performance.now();
        const events = pipeline.take(samples.subarray(from, from + batch));
        const arrivedMs = ((from + batch) / rate) * 1000;
        freeAtMs = Math.max(freeAtMs, arrivedMs) + performance.now() - began;
        at += BATCH_S * 1000;
        for (const event of events) {
          if (event.type !== 'heard' || event.candidate === null) continue;
          const text = event.candidate.branch.words;
          const came = event.verdict === 'taken' ? submit(text) : '';
          if (came !== '') follow();
          const delayMs = freeAtMs - endS * 1000;
          heard.push({ text, verdict: event.verdict, fit: event.candidate.fit, came, delayMs });
        }
      }
      return { heard, before, after: count48() };
    },
  };
}
