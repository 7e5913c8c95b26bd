// npm run pictures: the README's pictures, made from the real app with the demo job.
// With -- --all DIR every screen and every stage of the bench, at three sizes, in both shops, into DIR.
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { servedApp } from './bench/app.mjs';
import { typePlan } from './pictures/plan.mjs';
import { smallPng } from './pictures/smallPng.mjs';
import { root } from './root.mjs';

/** @typedef {import('playwright-core').Page} Page */

const { values: asked } = parseArgs({ options: { all: { type: 'string' } } });

const sizes = {
  phone: { width: 390, height: 844 },
  tablet: { width: 1024, height: 768 },
  shop: { width: 1920, height: 1080 },
};
const README_KB = 150;
/** Longer than the debounce of a key. */
const APART_MS = 110;

/**
 * The bench's stages as the demo job comes to them, each by presses from the one before.
 * @type {readonly { name: string, press: readonly (string | readonly [string, number])[], wait?: number }[]}
 */
const stages = [
  { name: 'resting', press: [] },
  { name: 'counting', press: ['Space', 'Numpad4'], wait: 1600 },
  { name: 'question', press: ['Backspace', 'Numpad9'], wait: 900 },
  { name: 'landing', press: ['Backspace', 'Numpad4', 'Numpad5', 'NumpadAdd'] },
  { name: 'read', press: ['KeyH'] },
  { name: 'to-start', press: ['NumpadAdd'] },
  { name: 'count-half', press: ['Numpad0', 'Numpad2', 'Numpad3', 'KeyH'], wait: 1600 },
  { name: 'pushrods-loose', press: ['Numpad4', 'NumpadAdd', 'KeyH', 'NumpadAdd'] },
  { name: 'turning', press: [['PageDown', 650]] },
];

const screens = [
  { name: 'results', hash: '#/results/demo-harrow-fen-pump-4' },
  { name: 'set-up', hash: '#/set-up/demo-harrow-fen-pump-4' },
  { name: 'sheet', hash: '#/sheet/demo-harrow-fen-pump-4' },
  { name: 'new-job', hash: '#/set-up' },
  { name: 'crank', hash: '#/crank/demo-harrow-fen-pump-4' },
  { name: 'before', hash: '#/before' },
  { name: 'jobs', hash: '#/jobs' },
  { name: 'settings', hash: '#/settings' },
  { name: 'about', hash: '#/about' },
];

/**
 * @param {Page} page
 * @param {(typeof stages)[number]} stage
 */
async function come(page, { press, wait = 400 }) {
  for (const key of press) {
    const [code, delay] = typeof key === 'string' ? [key, 0] : key;
    await page.keyboard.press(code, { delay });
    await page.waitForTimeout(APART_MS);
  }
  await page.waitForTimeout(wait);
}

/**
 * @param {Page} page
 * @param {string} hash
 */
async function goTo(page, hash) {
  await page.evaluate((to) => {
    location.hash = to;
  }, hash);
  await page.locator('nav').waitFor();
  await page.locator('main h1').waitFor();
  await page.waitForTimeout(300);
  // The notice that all is ready offline would lie over what is pictured.
  const told = page.getByRole('button', { name: 'Understood' });
  if (await told.isVisible()) await told.click();
}

/**
 * @param {import('./bench/app.mjs').App} app
 * @param {{ width: number, height: number }} viewport
 */
async function demo(app, viewport) {
  const device = await app.device({ viewport });
  await device.page.goto(app.url);
  await device.page.getByText('Press any key to go on').waitFor();
  await device.page.evaluate(() => document.fonts.ready);
  return device;
}

/**
 * The README's own.
 * @param {import('./bench/app.mjs').App} app
 */
async function forReadme(app) {
  const folder = join(root, 'docs/pictures');
  mkdirSync(folder, { recursive: true });
  /** @param {Page} page @param {string} name */
  const take = async (page, name) => {
    const path = join(folder, `${name}.png`);
    const png = smallPng(await page.screenshot());
    writeFileSync(path, png);
    console.log(`docs/pictures/${name}.png ${(png.length / 1000).toFixed(0)} kB`);
    if (png.length > README_KB * 1000) process.exitCode = 1;
  };
  for (const size of /** @type {const} */ (['tablet', 'phone', 'shop'])) {
    const { page, close } = await demo(app, sizes[size]);
    for (const stage of stages) {
      await come(page, stage);
      if (stage.name === 'counting') {
        // The count's own line, once the one about the voice has stood its time.
        await page.getByText('Four quarters:').first().waitFor();
        await page.waitForTimeout(200);
        await take(page, `bench-${size}`);
      }
      if (stage.name === 'read' && size === 'tablet') await take(page, 'read-tablet');
      if (stage.name === 'counting' && size !== 'tablet') break;
    }
    if (size === 'tablet') {
      for (const { name, hash } of screens.slice(0, 2)) {
        await goTo(page, hash);
        // Past the job's name, to where there is something to see.
        if (name === 'set-up')
          await page.locator('#step-engine').evaluate((at) => at.scrollIntoView());
        await take(page, `${name}-tablet`);
      }
      await goTo(page, '#/crank/demo-harrow-fen-pump-4');
      await take(page, 'crank-tablet');
      await goTo(page, '#/before');
      await typePlan(page);
      await page.locator('#plan-outcome').evaluate((at) => at.scrollIntoView());
      await take(page, 'before-tablet');
    }
    await close();
  }
}

/**
 * @param {import('./bench/app.mjs').App} app
 * @param {string} folder
 */
async function everything(app, folder) {
  mkdirSync(folder, { recursive: true });
  for (const [size, viewport] of Object.entries(sizes)) {
    const { page, close } = await demo(app, viewport);
    /** @param {string} name @param {boolean} whole */
    const take = async (name, whole) => {
      for (const shop of ['bright', 'dark']) {
        await page.evaluate((now) => {
          document.documentElement.dataset.shop = now;
        }, shop);
        await page.screenshot({
          path: join(folder, `${name}-${size}-${shop}.png`),
          fullPage: whole,
        });
      }
    };
    for (const stage of stages) {
      await come(page, stage);
      await take(`bench-${stage.name}`, false);
    }
    await page.getByRole('button', { name: 'More', exact: true }).click();
    await take('bench-more', false);
    for (const { name, hash } of screens) {
      await goTo(page, hash);
      await take(name, true);
    }
    await goTo(page, '#/before');
    await typePlan(page);
    await take('before-planned', true);
    await goTo(page, '#/jobs');
    await page.getByRole('button', { name: 'Count now' }).click();
    await page.locator('main[data-stage="cautions"]').waitFor();
    await take('bench-cautions-resting', false);
    await come(page, { name: 'cautions', press: ['Space'] });
    await take('bench-cautions', false);
    await close();
    console.log(`${size}: done`);
  }
}

const app = await servedApp();
try {
  await (asked.all === undefined ? forReadme(app) : everything(app, asked.all));
} finally {
  await app.close();
}
