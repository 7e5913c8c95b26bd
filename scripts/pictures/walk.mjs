// The ways through the app that are pictured.

/** @typedef {import('playwright-core').Page} Page */

export const sizes = {
  phone: { width: 390, height: 844 },
  tablet: { width: 1024, height: 768 },
  shop: { width: 1920, height: 1080 },
};

/** Longer than the debounce of a key. */
const APART_MS = 110;

/**
 * The bench's stages as the demo job comes to them, each by presses from the one before.
 * @type {readonly { name: string, press: readonly (string | readonly [string, number])[], wait?: number }[]}
 */
export const stages = [
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

export const screens = [
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
export async function come(page, { press, wait = 400 }) {
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
export async function goTo(page, hash) {
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
 * @param {import('../bench/app.mjs').App} app
 * @param {{ width: number, height: number }} viewport
 */
export async function demo(app, viewport) {
  const device = await app.device({ viewport });
  await device.page.goto(app.url);
  await device.page.getByText('Press any key to go on').waitFor();
  await device.page.evaluate(() => document.fonts.ready);
  return device;
}
