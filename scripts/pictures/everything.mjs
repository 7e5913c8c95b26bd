import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { writeGallery } from './gallery.mjs';
import { typePlan } from './plan.mjs';
import { come, demo, goTo, screens, sizes, stages } from './walk.mjs';

/** @typedef {import('playwright-core').Page} Page */
/** @typedef {(name: string, whole?: boolean) => Promise<void>} Take */

/** The practice run's steps, each by presses from the one before. */
const practice = [
  { name: 'resting', press: [] },
  { name: 'zero', press: ['Space'] },
  { name: 'turning', press: ['Numpad0', 'Space'], wait: 1500 },
  { name: 'seated', press: ['Space', 'Space'], wait: 1500 },
  { name: 'too-far', press: ['Space'] },
  { name: 'how-far', press: ['Backspace', 'NumpadAdd'] },
  { name: 'right', press: ['KeyH'] },
  {
    name: 'clock',
    press: ['NumpadAdd', 'Numpad0', 'Numpad4', 'NumpadAdd', 'KeyH', 'NumpadAdd', 'Numpad0'],
  },
  { name: 'question', press: ['Numpad9'], wait: 900 },
];

/**
 * Every screen and state at every size, in both shops.
 * @param {import('../bench/app.mjs').App} app
 * @param {string} folder
 */
export async function everything(app, folder) {
  mkdirSync(folder, { recursive: true });
  /** @type {{ name: string, size: string, shop: string, file: string }[]} */
  const pictures = [];
  for (const [size, viewport] of Object.entries(sizes)) {
    const { page, close } = await demo(app, viewport);
    /** @type {(page: Page) => Take} */
    const taker =
      (page) =>
      async (name, whole = false) => {
        for (const shop of ['bright', 'dark']) {
          await page.evaluate((now) => {
            document.documentElement.dataset.shop = now;
          }, shop);
          const file = `${name}-${size}-${shop}.png`;
          await page.screenshot({ path: join(folder, file), fullPage: whole });
          pictures.push({ name, size, shop, file });
        }
      };
    const take = taker(page);
    await bench(page, take);
    for (const { name, hash } of screens) {
      await goTo(page, hash);
      await take(name, true);
    }
    await otherStates(page, take, taker);
    await close();
    await troubles(app, viewport, taker);
    console.log(`${size}: done`);
  }
  writeGallery(folder, pictures);
  console.log(`${pictures.length} pictures, ${join(folder, 'index.html')}`);
}

/** @param {Page} page @param {Take} take */
async function bench(page, take) {
  for (const stage of stages) {
    await come(page, stage);
    await take(`bench-${stage.name}`);
  }
  await page.getByRole('button', { name: 'More', exact: true }).click();
  await take('bench-more');
}

/** @param {Page} page @param {Take} take @param {(page: Page) => Take} taker */
async function otherStates(page, take, taker) {
  await goTo(page, '#/before');
  await typePlan(page);
  await take('before-planned', true);
  await goTo(page, '#/practice');
  for (const step of practice) {
    await come(page, step);
    await take(`practice-${step.name}`, true);
  }
  await come(page, { name: 'done', press: ['Backspace', 'Numpad2', 'NumpadAdd', 'Space'] });
  await take('practice-done', true);
  await goTo(page, '#/settings');
  await page.getByRole('button', { name: 'Learn the pedal by pressing it' }).click();
  await page.getByLabel('Screen’s diagonal').fill('24');
  await take('settings-learning', true);
  await page.getByRole('button', { name: 'Stop learning' }).click();
  await page.emulateMedia({ media: 'print' });
  await take('settings-printed', true);
  await page.emulateMedia({ media: null });
  await page.evaluate(() => {
    location.hash = '#/results/none-such';
  });
  await page.getByText('That job is not on this device.').waitFor();
  await take('no-such-job');
  await goTo(page, '#/jobs');
  await page.getByRole('button', { name: 'Count now' }).click();
  await page.locator('main[data-stage="cautions"]').waitFor();
  await take('bench-cautions-resting');
  await come(page, { name: 'cautions', press: ['Space'] });
  await take('bench-cautions');
  const second = await page.context().newPage();
  await second.setViewportSize(page.viewportSize() ?? sizes.tablet);
  await second.goto(page.url());
  await second.getByText('Another window is counting: read only.').waitFor();
  await taker(second)('bench-read-only');
  await second.close();
  await goTo(page, '#/jobs');
  for (const button of await page.getByRole('button', { name: /^Compare / }).all())
    await button.click();
  await page
    .getByRole('region', { name: 'Two jobs compared' })
    .getByRole('table')
    .first()
    .waitFor();
  await take('jobs-compared', true);
  await goTo(page, '#/settings');
  await goTo(page, '#/jobs');
  const discard = page.getByRole('button', { name: /^Discard / });
  while ((await discard.count()) > 0) {
    await discard.first().click();
    await page.waitForTimeout(400);
  }
  await take('jobs-empty', true);
}

/**
 * Empty, loading, failed and unkept: on devices of their own.
 * @param {import('../bench/app.mjs').App} app
 * @param {{ width: number, height: number }} viewport
 * @param {(page: Page) => Take} taker
 */
async function troubles(app, viewport, taker) {
  const slow = await app.device({ viewport });
  /** @type {(() => void)[]} */
  const held = [];
  await slow.page.context().route('**/assets/settings-*.js', (route) => {
    held.push(() => void route.abort());
  });
  await slow.page.goto(`${app.url}#/jobs`);
  await slow.page.locator('main h1').waitFor();
  await taker(slow.page)('jobs-none', true);
  await slow.page.evaluate(() => {
    location.hash = '#/settings';
  });
  await slow.page.getByText('Fetching this screen').waitFor();
  await taker(slow.page)('loading');
  for (const letGo of held) letGo();
  await slow.page.getByText('This screen stopped working').waitFor();
  await taker(slow.page)('failed');
  await slow.close();

  const blocked = await app.device({ viewport });
  await blocked.page.addInitScript(() => {
    Object.defineProperty(window, 'indexedDB', { value: undefined });
  });
  await blocked.page.goto(`${app.url}#/jobs`);
  await blocked.page.getByText('Nothing can be kept in this browser').waitFor();
  await taker(blocked.page)('nothing-kept');
  await blocked.close();

  const ready = await app.device({ viewport });
  await ready.page.goto(`${app.url}#/jobs`);
  await ready.page.getByText('Ready offline: from now on').waitFor();
  await ready.page.context().setOffline(true);
  await taker(ready.page)('ready-offline');
  await ready.close();
}
