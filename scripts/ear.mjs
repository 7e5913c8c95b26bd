// npm run ear -- [FOLDER] [--walks N] [--valves N] [--minutes N] [--speakers a,b] [--noises clean,…]: plays speech and noise through
// the app's own offline ear, in plain Node, and prints how much of it was heard rightly. FOLDER holds
// files SPEAKER-NUMBER-TAKE.wav of spoken numbers; Debian's prompts and voices are added where they
// are, or may be installed; --session FILE plays one recorded session instead. With --checked each speaker
// has a sound check first, by the first take of each number. With --beside the distribution's pocketsphinx hears the same. Everything random comes of one seed, which is printed.
import { existsSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { ensureInstalled } from './installed.mjs';

ensureInstalled();
const { loadTs } = await import('./load-ts.mjs');
const { clicks, pink, random, shop } = await import('./ear-noise.mjs');
const { speakers, talk } = await import('./ear-speech.mjs');
const { besides, isBeside } = await import('./ear-beside.mjs');
const { replaySession } = await import('./ear-session.mjs');
const { hearingBench } = await import('./ear-work.mjs');

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    walks: { type: 'string', default: '1' },
    valves: { type: 'string', default: '16' },
    minutes: { type: 'string', default: '5' },
    speakers: { type: 'string' },
    noises: { type: 'string' },
    seed: { type: 'string', default: '20251' },
    verbose: { type: 'boolean', default: false },
    beside: { type: 'boolean', default: false },
    checked: { type: 'boolean', default: false },
    session: { type: 'string' },
    carrier: { type: 'boolean', default: false },
  },
});
if (values.session !== undefined) {
  await replaySession(values.session, values.carrier ? 'count' : null);
  process.exit(0);
}
const [folder] = positionals;
if (folder !== undefined && !existsSync(folder)) {
  console.error(`There is no folder ${folder}. Usage: npm run ear FOLDER`);
  process.exit(2);
}
const seed = Number(values.seed);
const { bandLevel } = await loadTs('src/hearing/offline/bandLevel.ts');
let bench = await hearingBench();

/** @type {readonly { name: string, noise: import('./ear-noise.mjs').Noise | null, snrDb: number }[]} */
const CONDITIONS = [
  { name: 'clean', noise: null, snrDb: 50 },
  { name: 'pink 20', noise: pink, snrDb: 20 },
  { name: 'pink 10', noise: pink, snrDb: 10 },
  { name: 'shop 20', noise: shop, snrDb: 20 },
  { name: 'shop 10', noise: shop, snrDb: 10 },
];
/** Speech is brought to this level in the band of speech, dB of full scale. */
const SPEECH_DB = -26;
const BEFORE_S = 0.7;
const AFTER_S = 0.7;
const NUMBERS = 'one two three four five six seven eight nine ten eleven twelve'.split(' ');

/** @param {Float32Array} samples @param {number} rate @param {number} db */
function atLevel(samples, rate, db) {
  const gain = 10 ** ((db - bandLevel(rate)(samples)) / 20);
  return samples.map((sample) => sample * gain);
}

/** @param {(typeof CONDITIONS)[number]} condition @param {number} seconds @param {number} rate @param {() => number} chance */
function room({ noise, snrDb }, seconds, rate, chance) {
  return atLevel(
    (noise ?? pink)(Math.round(seconds * rate), rate, chance),
    rate,
    SPEECH_DB - snrDb,
  );
}

/** @type {{ sound: import('./ear-voices.mjs').Sound, number: number }[]} */
let besideSaid = [];

/** @typedef {{ right: number, wrong: number, asked: number, missed: number, delays: number[] }} Tally */
/** @returns {Tally} */
const nothing = () => ({ right: 0, wrong: 0, asked: 0, missed: 0, delays: [] });

/**
 * Walks over the valves of an engine, each counted from one to four, five or six, in one stream.
 * @param {import('./ear-speech.mjs').Speaker} speaker @param {(typeof CONDITIONS)[number]} condition
 */
function walk(speaker, condition) {
  const tally = nothing();
  const chance = random(seed + speaker.name.length + condition.name.length);
  const rate = [...speaker.takes.values()][0]?.[0]?.rate ?? 8000;
  bench.know(values.checked ? checkOf(speaker, rate, chance) : []);
  bench.open({ rate });
  bench.play({ samples: room(condition, 2, rate, chance), rate });
  for (let valve = 0; valve < Number(values.walks) * Number(values.valves); valve += 1) {
    bench.zero();
    const most = 4 + Math.floor(chance() * 5);
    for (let number = 1; number <= most; number += 1) {
      const takes = speaker.takes.get(number) ?? [];
      // What was said in the sound check is not said again at work.
      const first = values.checked ? 1 : 0;
      const take = takes[first + Math.floor(chance() * (takes.length - first))];
      if (take === undefined) continue;
      const lengthS = take.samples.length / rate;
      const sound = room(condition, BEFORE_S + lengthS + AFTER_S, rate, chance);
      const said = atLevel(take.samples, rate, SPEECH_DB);
      const from = Math.round(BEFORE_S * rate);
      for (const [i, sample] of said.entries()) sound[from + i] = (sound[from + i] ?? 0) + sample;
      if (values.beside) besideSaid.push({ sound: { samples: sound, rate }, number });
      const { heard, before, after } = bench.play({ samples: sound, rate }, BEFORE_S + lengthS);
      const kind = verdictOf(before, after, number, heard);
      tally[kind] += 1;
      if (kind === 'right') tally.delays.push(heard.find(({ came }) => came !== '')?.delayMs ?? 0);
      if (values.verbose && kind !== 'right') {
        const made = heard.map(({ text, verdict, fit }) => `${text} ${verdict} ${fit.toFixed(2)}`);
        console.log(
          `${speaker.name} ${condition.name}: ${number} at ${before / 12} ${kind}: ${made}`,
        );
      }
    }
  }
  return tally;
}

/** The first take of each number, in a quiet room. @param {import('./ear-speech.mjs').Speaker} speaker @param {number} rate @param {() => number} chance */
function checkOf({ takes }, rate, chance) {
  const [quiet] = CONDITIONS;
  return [...takes].flatMap(([number, [take]]) => {
    const words = NUMBERS[number - 1];
    if (take === undefined || words === undefined || quiet === undefined) return [];
    const sound = room(quiet, 2 + take.samples.length / rate + 1, rate, chance);
    const said = atLevel(take.samples, rate, SPEECH_DB);
    for (const [i, sample] of said.entries()) {
      sound[2 * rate + i] = (sound[2 * rate + i] ?? 0) + sample;
    }
    return [{ words, sound: { samples: sound, rate } }];
  });
}

/**
 * @param {number} before @param {number} after @param {number} number
 * @param {readonly { came: string }[]} heard
 * @returns {"right" | "wrong" | "asked" | "missed"}
 */
function verdictOf(before, after, number, heard) {
  if (after === number * 12) return 'right';
  if (after !== before) return 'wrong';
  if (heard.some(({ came }) => came.includes('askedBack'))) return 'asked';
  return heard.some(({ came }) => came !== '') ? 'wrong' : 'missed';
}

/** @param {readonly Tally[]} tallies @returns {Tally} */
function sumOf(tallies) {
  return tallies.reduce(
    (sum, one) => ({
      right: sum.right + one.right,
      wrong: sum.wrong + one.wrong,
      asked: sum.asked + one.asked,
      missed: sum.missed + one.missed,
      delays: [...sum.delays, ...one.delays],
    }),
    nothing(),
  );
}

/** @param {Tally} tally */
function row({ right, wrong, asked, missed }) {
  const all = Math.max(1, right + wrong + asked + missed);
  const part = (/** @type {number} */ n) => `${((n / all) * 100).toFixed(1)} %`.padStart(8);
  return `${part(right)}${part(wrong)}${part(asked)}${part(missed)}${String(all).padStart(7)}`;
}

/** @param {readonly number[]} sorted @param {number} part */
const quantile = (sorted, part) => sorted[Math.floor((sorted.length - 1) * part)] ?? 0;

/**
 * Counts moved by sound in which no number was said, an hour.
 * @param {string} name @param {Float32Array} samples @param {number} rate
 */
function phantoms(name, samples, rate) {
  for (const carrier of [null, 'count']) {
    bench.open({ rate, carrier });
    bench.standAt(2);
    let moved = 0;
    let other = 0;
    for (let from = 0; from < samples.length; from += rate * 10) {
      const { heard, before, after } = bench.play({
        samples: samples.subarray(from, from + rate * 10),
        rate,
      });
      const came = heard.filter((one) => one.came !== '');
      if (values.verbose && came.length > 0) {
        console.log(`${name}: ${came.map(({ text, fit }) => `${text} ${fit.toFixed(2)}`)}`);
      }
      if (after !== before) moved += 1;
      else if (came.length > 0) other += 1;
      bench.standAt(2);
    }
    const hours = samples.length / rate / 3600;
    const how = carrier === null ? 'bare' : 'carrier';
    console.log(
      `${name.padEnd(18)}${how.padEnd(9)}${(hours * 60).toFixed(1).padStart(6)} min${String(moved).padStart(6)} counts${(moved / hours).toFixed(0).padStart(6)} an hour${String(other).padStart(6)} other`,
    );
  }
}

/** Sounds one after the other with a breath between, at 8 kHz. @param {readonly import('./ear-voices.mjs').Sound[]} sounds @param {number} seconds */
function inOneGo(sounds, seconds) {
  const rate = 8000;
  const made = new Float32Array(seconds * rate);
  const chance = random(seed);
  let at = 0;
  while (at < made.length && sounds.length > 0) {
    const sound = sounds[Math.floor(chance() * sounds.length)];
    if (sound === undefined) break;
    const step = sound.rate / rate;
    const length = Math.floor(sound.samples.length / step);
    const spoken = Float32Array.from(
      { length },
      (_, i) => sound.samples[Math.floor(i * step)] ?? 0,
    );
    made.set(atLevel(spoken, rate, SPEECH_DB).subarray(0, made.length - at), at);
    at += length + Math.round((0.2 + chance() * 0.5) * rate);
  }
  const quiet = atLevel(pink(made.length, rate, chance), rate, SPEECH_DB - 40);
  return made.map((sample, i) => sample + (quiet[i] ?? 0));
}

console.log(`seed ${seed}; signal to noise in 250-3600 Hz\n`);
const wanted = values.speakers?.split(',');
const all = speakers(folder).filter(({ name }) => wanted?.includes(name) ?? true);
console.log(`${'speaker'.padEnd(12)}${'noise'.padEnd(10)}   right   wrong   asked  missed  words`);
/** @type {number[]} */
const delays = [];
const noises = values.noises?.split(',');
for (const condition of CONDITIONS.filter(({ name }) => noises?.includes(name) ?? true)) {
  const tallies = [];
  for (const speaker of all) {
    // The ear settles on a voice: each speaker has one that has heard no other.
    bench = await hearingBench();
    tallies.push({ speaker, tally: walk(speaker, condition) });
  }
  if (values.beside && isBeside()) {
    bench.standAt(2);
    const { right, wrong, missed } = await besides(besideSaid, bench.grammar());
    const beside = { right, wrong, asked: 0, missed, delays: [] };
    console.log(`${'pocketsphinx'.padEnd(13)}${condition.name.padEnd(9)}${row(beside)}`);
  }
  besideSaid = [];
  for (const { speaker, tally } of tallies) {
    console.log(`${speaker.name.padEnd(12)}${condition.name.padEnd(10)}${row(tally)}`);
    delays.push(...tally.delays);
  }
  for (const human of [true, false]) {
    const some = tallies.filter(({ speaker }) => speaker.human === human);
    if (some.length < 2) continue;
    const name = human ? 'human' : 'synthetic';
    console.log(
      `${name.padEnd(12)}${condition.name.padEnd(10)}${row(sumOf(some.map((one) => one.tally)))}`,
    );
  }
}
delays.sort((a, b) => a - b);
console.log(
  `\nend of word to the answer: p50 ${quantile(delays, 0.5).toFixed(0)} ms, p95 ${quantile(delays, 0.95).toFixed(0)} ms`,
);
const seconds = Math.round(Number(values.minutes) * 60);
if (seconds > 0) {
  console.log('\nno number said:');
  const chance = random(seed);
  phantoms(
    'clicks, ratchets',
    atLevel(clicks(seconds * 16_000, 16_000, chance), 16_000, SPEECH_DB),
    16_000,
  );
  phantoms('shop', atLevel(shop(seconds * 16_000, 16_000, chance), 16_000, SPEECH_DB - 10), 16_000);
  phantoms('talk, no pause', inOneGo(talk(), seconds), 8000);
}
