// Speech to measure the ear with: a folder of the caller's, Debian's recorded prompts, and its voices.
import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { ensureProgram, festivalSays, fliteSays, readWav } from './ear-voices.mjs';

/**
 * @typedef {{ name: string, human: boolean, takes: ReadonlyMap<number, readonly Sound[]> }} Speaker
 *   numbers a speaker says, each in one or more takes
 * @typedef {import('./ear-voices.mjs').Sound} Sound
 */

const PROMPTS = '/usr/share/asterisk/sounds/en_US_f_Allison';
const VOICES = ['slt', 'rms', 'awb', 'kal16'];
const FESTIVAL = /** @type {const} */ ([
  ['hts', 'cmu_us_slt_arctic_hts'],
  ['kal', 'kal_diphone'],
  ['ked', 'ked_diphone'],
]);
const WORDS = 'one two three four five six seven eight nine ten eleven twelve'.split(' ');

/** Silence cut off both ends. @param {Sound} sound @returns {Sound} */
function trimmed({ samples, rate }) {
  const loudest = samples.reduce((most, sample) => Math.max(most, Math.abs(sample)), 0);
  const loud = (/** @type {number} */ sample) => Math.abs(sample) > loudest * 0.03;
  const from = samples.findIndex(loud);
  const to = samples.findLastIndex(loud);
  return { samples: samples.slice(Math.max(0, from), to + 1), rate };
}

/**
 * Speakers in a folder of files SPEAKER-NUMBER-TAKE.wav.
 * @param {string} folder @returns {Speaker[]}
 */
function inFolder(folder) {
  /** @type {Map<string, Map<number, Sound[]>>} */
  const found = new Map();
  for (const file of readdirSync(folder).sort()) {
    const [, name, number] = /^([^-]+)-(\d+)-[^-]+\.wav$/.exec(file) ?? [];
    if (name === undefined) continue;
    const takes = found.get(name) ?? new Map();
    found.set(name, takes);
    takes.set(Number(number), [
      ...(takes.get(Number(number)) ?? []),
      trimmed(readWav(join(folder, file))),
    ]);
  }
  return [...found].map(([name, takes]) => ({ name, human: true, takes }));
}

/** @returns {Speaker[]} Debian's recorded prompts, one speaker, one take; none where not installed */
function prompts() {
  ensureProgram('flite', ['flite', 'asterisk-core-sounds-en-wav']);
  const folder = join(PROMPTS, 'digits');
  if (!existsSync(folder)) return [];
  const takes = new Map(
    WORDS.map((_, i) => [i + 1, [trimmed(readWav(join(folder, `${i + 1}.wav`)))]]),
  );
  return [{ name: 'prompts', human: true, takes }];
}

/** @returns {Speaker[]} */
function voices() {
  if (!ensureProgram('flite', ['flite'])) return [];
  return VOICES.map((voice) => ({
    name: voice,
    human: false,
    takes: new Map(WORDS.map((word, i) => [i + 1, [trimmed(fliteSays(word, voice))]])),
  }));
}

/** Festival's voices, where they are installed. @returns {Speaker[]} */
function festivals() {
  return FESTIVAL.flatMap(([name, voice]) => {
    const said = WORDS.map((word) => festivalSays(word, voice));
    const takes = said.flatMap((sound, i) =>
      sound === null ? [] : [/** @type {const} */ ([i + 1, [trimmed(sound)]])],
    );
    return takes.length === 0 ? [] : [{ name, human: false, takes: new Map(takes) }];
  });
}

/** @param {string | undefined} folder @returns {Speaker[]} */
export function speakers(folder) {
  return [
    ...(folder === undefined ? [] : inFolder(folder)),
    ...prompts(),
    ...voices(),
    ...festivals(),
  ];
}

/** Talk that is not for the ear: recorded prompts that say no number, and made-up sentences. */
export function talk() {
  const said = existsSync(PROMPTS)
    ? readdirSync(PROMPTS)
        .filter((file) => /^(conf|demo|vm|queue|pbx|priv|dir)-.*\.wav$/.test(file))
        .map((file) => trimmed(readWav(join(PROMPTS, file))))
    : [];
  const spoken = ensureProgram('flite', ['flite'])
    ? SENTENCES.map((text, i) => trimmed(fliteSays(text, VOICES[i % VOICES.length] ?? 'slt')))
    : [];
  return [...said, ...spoken];
}

const SENTENCES = [
  'did you order the head gaskets for the other engine',
  'the pump man said he would be round before dinner',
  'hand me that half inch breaker bar would you',
  'I never did like the look of that cam lobe',
  'it ran for ten years without a spanner near it',
  'put the kettle on, we have been at this since eight',
  'somebody left the drain valve open all night',
  'there were two of them in the shed last week',
  'you could eat your dinner off that block now',
  'mind your fingers when it comes round',
  'the water was up to the fourth step in the spring',
  'that bolt wants another go before we shut the cover',
  'what did they charge you for the bearings',
  'I will ring the board about it on Monday',
  'turn the radio down a bit, I can not hear myself think',
  'the old one had a crack right through the web',
];
