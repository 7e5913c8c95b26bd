// The distribution's own pocketsphinx beside the app's ear: the same phrases, the same sound, no job.
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { wavBytes } from './ear-voices.mjs';
import { loadTs } from './load-ts.mjs';

const MODEL = '/usr/share/pocketsphinx/model/en-us';
const RATE = 16_000;
const NUMBERS = 'one two three four five six seven eight nine ten eleven twelve'.split(' ');

/** Whether pocketsphinx is installed here, its model too. */
export function isBeside() {
  const there = spawnSync('which', ['pocketsphinx_batch'], { stdio: 'ignore' }).status === 0;
  return there && existsSync(join(MODEL, 'en-us'));
}

/**
 * What pocketsphinx makes of sounds, each with one number in it. Its grammar is every phrase the app
 * listens for while a valve is counted, all as likely as each other: it knows of no job.
 * @param {readonly { sound: import('./ear-voices.mjs').Sound, number: number }[]} said
 * @param {import('../src/words/en/heard/grammar').Grammar} grammar
 * @returns {Promise<{ right: number, wrong: number, missed: number }>}
 */
export async function besides(said, grammar) {
  const { branchesFor } = await loadTs('src/hearing/offline/grammar.ts');
  const { resampler } = await loadTs('src/hearing/offline/resampler.ts');
  const folder = mkdtempSync(join(tmpdir(), 'turncaller-beside-'));
  try {
    const dictionary = readFileSync(join(MODEL, 'cmudict-en-us.dict'), 'latin1');
    const known = new Set(dictionary.split('\n').map((line) => line.split(' ', 1)[0]));
    /** @type {string[]} */
    const phrases = branchesFor(grammar)
      .map((/** @type {{ words: string }} */ { words }) => words)
      .filter((/** @type {string} */ words) => words.split(' ').every((word) => known.has(word)));
    const grammarFile = join(folder, 'phrases.gram');
    writeFileSync(
      grammarFile,
      `#JSGF V1.0;\ngrammar phrases;\npublic <said> = ${phrases.join(' | ')};\n`,
    );
    mkdirSync(join(folder, 'sound'));
    for (const [i, { sound }] of said.entries()) {
      const samples = resampler(sound.rate, RATE)(sound.samples);
      writeFileSync(join(folder, 'sound', `${i}.wav`), wavBytes({ samples, rate: RATE }));
    }
    const list = join(folder, 'list');
    writeFileSync(list, `${said.map((_, i) => i).join('\n')}\n`);
    const heard = join(folder, 'heard');
    spawnSync(
      'pocketsphinx_batch',
      [
        ['-adcin', 'yes'],
        ['-adchdr', '44'],
        ['-cepdir', join(folder, 'sound')],
        ['-cepext', '.wav'],
        ['-ctl', list],
        ['-hyp', heard],
        ['-jsgf', grammarFile],
        ['-hmm', join(MODEL, 'en-us')],
        ['-dict', join(MODEL, 'cmudict-en-us.dict')],
      ].flat(),
      { stdio: 'ignore' },
    );
    const lines = readFileSync(heard, 'latin1').trimEnd().split('\n');
    const tally = { right: 0, wrong: 0, missed: 0 };
    for (const [i, { number }] of said.entries()) {
      const text = (lines[i] ?? '').replace(/\([^)]*\)\s*$/, '').trim();
      if (text === '') tally.missed += 1;
      else if (text === NUMBERS[number - 1]) tally.right += 1;
      else tally.wrong += 1;
    }
    return tally;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
