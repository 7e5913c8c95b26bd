// What the ear that needs no network costs: bytes of its first use, its share of a core while it
// listens (in Node, the same code and programs), and from the end of a word to the count on the
// screen of a real Chromium that hears a file as its microphone.
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { servedApp } from './bench/app.mjs';
import { pink, random } from './ear-noise.mjs';
import { servedEarPack } from './ear-pack.mjs';
import { ensureProgram, fliteSays, wavBytes } from './ear-voices.mjs';
import { hearingBench } from './ear-work.mjs';

const AIM_MB = 4.5;
const AIM_SHARE = 0.15;
const AIM_MS = 350;
const RATE = 16_000;
const WORDS = ['four', 'five', 'six', 'seven', 'eight'];

/** @param {boolean} met */
const told = (met) => (met ? 'met' : 'missed');

/** Words with silence between, in a quiet room. @param {readonly string[]} words @param {number} leadS */
function spoken(words, leadS) {
  const room = (/** @type {number} */ s) =>
    pink(Math.round(s * RATE), RATE, random(1)).map((sample) => sample * 0.003);
  const parts = words.flatMap((word, i) => [
    room(i === 0 ? leadS : 1.4),
    fliteSays(word, 'rms').samples,
  ]);
  const all = [...parts, room(1.5)];
  const samples = new Float32Array(all.reduce((sum, part) => sum + part.length, 0));
  let at = 0;
  for (const part of all) {
    samples.set(part, at);
    at += part.length;
  }
  return { samples, rate: RATE };
}

/** The part of a core that hearing takes, of sound as long as it is. @param {import('./ear-voices.mjs').Sound} sound */
async function shareOf(sound) {
  const bench = await hearingBench();
  bench.open({ rate: sound.rate });
  bench.play(sound);
  const began = process.cpuUsage();
  bench.play(sound);
  const { user, system } = process.cpuUsage(began);
  return (user + system) / 1e6 / (sound.samples.length / sound.rate);
}

/** In the page: when the microphone was last loud before each change of the dial. */
function watch() {
  /** @type {number[]} */
  const delays = [];
  Object.assign(globalThis, { __delays: delays });
  let loudAt = 0;
  const { mediaDevices } = navigator;
  const open = mediaDevices.getUserMedia.bind(mediaDevices);
  mediaDevices.getUserMedia = async (asked) => {
    const stream = await open(asked);
    const context = new AudioContext();
    const analyser = new AnalyserNode(context, { fftSize: 512 });
    context.createMediaStreamSource(stream).connect(analyser);
    const samples = new Float32Array(analyser.fftSize);
    setInterval(() => {
      analyser.getFloatTimeDomainData(samples);
      if (samples.some((sample) => Math.abs(sample) > 0.03)) loudAt = performance.now();
    }, 5);
    return stream;
  };
  addEventListener('DOMContentLoaded', () => {
    let before = '';
    new MutationObserver(() => {
      const now = document
        .querySelector('main[data-stage] [role="img"]')
        ?.getAttribute('aria-label');
      if (now === undefined || now === null || now === before) return;
      before = now;
      if (loudAt > 0) delays.push(performance.now() - loudAt);
    }).observe(document, { subtree: true, childList: true, attributes: true });
  });
}

/** @param {string} path @returns {Promise<number[]>} ms from the end of each word to its count on the screen */
async function delaysOf(path) {
  const app = await servedApp();
  try {
    const device = await app.device({
      more: [
        '--use-fake-device-for-media-stream',
        '--use-fake-ui-for-media-stream',
        `--use-file-for-fake-audio-capture=${path}%noloop`,
      ],
    });
    const { page } = device;
    await page.addInitScript(watch);
    await page.goto(app.url);
    await page.locator('main[data-stage]').waitFor();
    await page.keyboard.press('Space');
    await page.waitForTimeout(400);
    await page.keyboard.press('NumpadDivide');
    await page.getByText('Listening').waitFor();
    await page.waitForTimeout(3000 + WORDS.length * 2500);
    const delays = await page.evaluate(() => /** @type {any} */ (globalThis).__delays);
    await device.close();
    return delays;
  } finally {
    await app.close();
  }
}

const { file } = await servedEarPack();
const mb = file.length / 1e6;
console.log(`first use: ${mb.toFixed(2)} MB compressed (aim ${AIM_MB} MB: ${told(mb <= AIM_MB)})`);

if (ensureProgram('flite', ['flite'])) {
  const quiet = spoken([], 0);
  const longQuiet = { ...quiet, samples: pink(20 * RATE, RATE, random(2)).map((s) => s * 0.003) };
  for (const [what, sound] of /** @type {const} */ ([
    ['a quiet room', longQuiet],
    ['a word every two seconds', spoken([...WORDS, ...WORDS], 1)],
  ])) {
    const share = await shareOf(sound);
    console.log(
      `share of a core, ${what}: ${(share * 100).toFixed(1)} % (aim ${AIM_SHARE * 100} %: ${told(share <= AIM_SHARE)})`,
    );
  }
  const folder = mkdtempSync(join(tmpdir(), 'turncaller-heard-'));
  try {
    const path = join(folder, 'said.wav');
    writeFileSync(path, wavBytes(spoken(WORDS, 2.5)));
    const delays = (await delaysOf(path)).sort((a, b) => a - b);
    const p50 = delays[Math.floor((delays.length - 1) / 2)];
    console.log(
      p50 === undefined
        ? `end of word to the count on the screen: nothing was heard (aim p50 ${AIM_MS} ms: missed)`
        : `end of word to the count on the screen: p50 ${p50.toFixed(0)} ms, most ${delays.at(-1)?.toFixed(0)} ms of ${delays.length} counts (aim p50 ${AIM_MS} ms: ${told(p50 <= AIM_MS)})`,
    );
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
} else {
  console.log('flite is not here: the rest is not measured.');
}
