import AxeBuilder from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { firstPage, openApp, openBrowser } from './harness';
import { countShown, demoAtRest } from './steps/demoJob';
import { pumpPlan, typePlan } from './steps/plan';
import { pressesApart } from './steps/pressesApart';
import { benchStages, goTo, otherScreens } from './steps/stages';

const sizes = [
  { width: 390, height: 844 },
  { width: 1024, height: 768 },
  { width: 1920, height: 1080 },
];

/** Where the bright shop is looked at too: between them they hold every part in every colour. */
const bothShops = new Set([
  ...['bench, counting', 'bench, question', 'bench, more', 'bench, turning'],
  ...['results', 'sheet', 'jobs, compared', 'crank', 'set-up', 'settings'],
  ...['before, planned', 'practice, counting', 'practice, done', 'no such job'],
]);

const standsOver = new Set(['resting', 'question', 'more']);

/** Everything axe has for WCAG 2.2 AA, and what it holds to be good practice. */
const RULES = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
/** Not on by themselves: the size of targets, and contrast of AAA, which a bench is read by. */
const rules = { 'target-size': { enabled: true }, 'color-contrast-enhanced': { enabled: true } };

async function violations(page: Page): Promise<string[]> {
  const found = await new AxeBuilder({ page }).options({ runOnly: [...RULES], rules }).analyze();
  return found.violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html}`));
}

/** What does not fit at each size: a page wider than the window, a line said outside its place. */
async function notFitting(page: Page): Promise<string[]> {
  const found: string[] = [];
  for (const size of sizes) {
    await page.setViewportSize(size);
    const [drawn, seen] = await page.evaluate(() => [
      document.documentElement.scrollWidth,
      document.documentElement.clientWidth,
    ]);
    if (Number(drawn) > Number(seen)) found.push(`${drawn} px wide in ${seen}`);
    const over = await page.evaluate(() => {
      const line = document.querySelector('[aria-live="polite"][data-length]');
      const panel = line?.closest('section')?.parentElement;
      if (!line || !panel) return 0;
      return panel.getBoundingClientRect().top - line.getBoundingClientRect().top;
    });
    if (over > 1) found.push(`what was said stands ${over} px outside its place in ${seen}`);
  }
  return found;
}

test('every screen and every main stage of the bench: accessible, and no sideways scroll', async () => {
  const browser = await openBrowser({ viewport: { width: 1024, height: 768 } });
  const page = await firstPage(browser);
  await openApp(page);
  await demoAtRest(page);
  const found: Record<string, string[]> = {};
  let looked = 0;
  async function look(name: string): Promise<void> {
    looked += 1;
    const wide = await notFitting(page);
    await page.setViewportSize({ width: 1024, height: 768 });
    const here = [...wide];
    for (const shop of bothShops.has(name) ? ['bright', 'dark'] : ['dark']) {
      await page.evaluate((now) => {
        document.documentElement.dataset.shop = now;
      }, shop);
      here.push(...(await violations(page)).map((one) => `${shop}: ${one}`));
    }
    if (here.length > 0) found[name] = here;
  }
  for (const { name, to } of benchStages) {
    await to(page);
    const stage = await page.locator('main').getAttribute('data-stage');
    // The names that are no stages are things that stand over one.
    expect(stage, name).toBe(standsOver.has(name) ? 'counting' : name);
    await look(`bench, ${name}`);
  }
  const second = await browser.context.newPage();
  await second.setViewportSize({ width: 1024, height: 768 });
  await second.goto(page.url());
  await second.getByText('Another window is counting: read only.').waitFor();
  expect(await violations(second)).toEqual([]);
  await second.close();
  for (const { name, hash } of otherScreens) {
    await goTo(page, hash);
    await look(name);
  }
  await goTo(page, '#/before');
  await typePlan(page, pumpPlan);
  await page.getByText('Warm: an estimate').click();
  await page.locator('[data-field="hot.block.length"] input').fill('120');
  await look('before, planned');
  await goTo(page, '#/jobs');
  await page.getByRole('button', { name: 'Count now' }).click();
  await page.locator('main[data-stage="cautions"]').waitFor();
  await look('bench, cautions');
  await goTo(page, '#/jobs');
  for (const button of await page.getByRole('button', { name: /^Compare / }).all())
    await button.click();
  await page
    .getByRole('region', { name: 'Two jobs compared' })
    .getByRole('table')
    .first()
    .waitFor();
  await look('jobs, compared');
  await goTo(page, '#/practice');
  await look('practice, resting');
  const press = pressesApart(page);
  const presses = async (...codes: string[]) => {
    for (const code of codes) await press(code);
    await page.waitForTimeout(250);
  };
  await presses('Space', 'Numpad0', 'Space', 'Space', 'Space');
  await look('practice, counting');
  await presses('NumpadAdd', 'KeyH', 'NumpadAdd', 'Numpad0', 'Numpad4', 'NumpadAdd', 'Space');
  await look('practice, how far');
  await presses('NumpadAdd', 'Numpad0', 'Numpad2', 'NumpadAdd', 'Space');
  await page.getByRole('heading', { name: 'What was right' }).waitFor();
  await look('practice, done');
  await goTo(page, '#/settings');
  await page.getByRole('button', { name: 'Learn the pedal by pressing it' }).click();
  await page.getByLabel('Screen’s diagonal').fill('24');
  await look('settings, learning');
  await page.getByLabel('Screen’s diagonal').fill('0');
  await look('settings, refused');
  await page.evaluate(() => {
    location.hash = '#/results/none-such';
  });
  await page.getByText('That job is not on this device.').waitFor();
  await look('no such job');
  await goTo(page, '#/jobs');
  const discard = page.getByRole('button', { name: /^Discard / });
  const jobs = await discard.count();
  expect(jobs).toBe(2);
  for (let left = jobs; left > 0; left -= 1) {
    await discard.first().click();
    await expect.poll(() => discard.count()).toBe(left - 1);
  }
  await look('jobs, discarded');
  expect(found).toEqual({});
  expect(looked).toBe(30);
});

/**
 * Height in pixels of the count's figure as it is drawn: of a screenshot of its box, the longest run
 * of rows that have the figure's own colour in them.
 */
async function drawnHeight(page: Page): Promise<number> {
  const figure = page.locator('[data-numeral] text[data-figure]').first();
  const png = (await figure.screenshot()).toString('base64');
  const fill = await figure.evaluate((text) => getComputedStyle(text).fill);
  // A blank page looks at the picture: the app's own lets no foreign picture in.
  const blank = await page.context().newPage();
  const height = await blank.evaluate(longestRunOf, { png, fill });
  await blank.close();
  return height;
}

/** In a page: the longest run of a picture's rows that have the colour in them. */
async function longestRunOf(given: { png: string; fill: string }): Promise<number> {
  const colour = (given.fill.match(/[\d.]+/g) ?? []).slice(0, 3).map(Number);
  if (colour.length < 3) throw new Error(`no colour: ${given.fill}`);
  const picture = new Image();
  picture.src = `data:image/png;base64,${given.png}`;
  await picture.decode();
  const canvas = document.createElement('canvas');
  canvas.width = picture.width;
  canvas.height = picture.height;
  const drawing = canvas.getContext('2d');
  if (!drawing) throw new Error('no canvas');
  drawing.drawImage(picture, 0, 0);
  const { data, width, height } = drawing.getImageData(0, 0, picture.width, picture.height);
  const inked = (x: number, y: number) =>
    colour.every((value, i) => Math.abs((data[4 * (y * width + x) + i] ?? 0) - value) < 40);
  let run = 0;
  let longest = 0;
  for (let y = 0; y < height; y += 1) {
    const row = Array.from({ length: width }, (_, x) => x).some((x) => inked(x, y));
    run = row ? run + 1 : 0;
    longest = Math.max(longest, run);
  }
  return longest;
}

test('the count is readable at three metres: its drawn height at the two big sizes', async () => {
  const browser = await openBrowser({ viewport: { width: 1920, height: 1080 } });
  const page = await firstPage(browser);
  await openApp(page);
  await demoAtRest(page);
  await page.keyboard.press('Space');
  await page.keyboard.press('Numpad4');
  await expect.poll(() => countShown(page)).toBe('4');
  const large = await drawnHeight(page);
  await page.setViewportSize({ width: 1024, height: 768 });
  const small = await drawnHeight(page);
  console.log(`count drawn ${large} px high at 1920×1080, ${small} px at 1024×768`);
  expect(large).toBeGreaterThanOrEqual(120);
  expect(small).toBeGreaterThanOrEqual(96);
  // Nothing else of that colour was taken for it.
  expect(large).toBeLessThan(400);
});

/** How wide the bar of an open question is drawn half way through its time, as a share of itself. */
async function halfWay(page: Page): Promise<number> {
  return page.evaluate(() => {
    const [running] = document.getAnimations();
    const drawn = running?.effect instanceof KeyframeEffect ? running.effect.target : null;
    if (!running || !drawn || document.getAnimations().length !== 1) return Number.NaN;
    running.currentTime = 5000;
    return new DOMMatrix(getComputedStyle(drawn).transform).a;
  });
}

test('reduced motion: nothing moves, and the question goes when its time is over all the same', async () => {
  const browser = await openBrowser();
  const page = await firstPage(browser);
  await openApp(page);
  await demoAtRest(page);
  const press = pressesApart(page);
  await press('Space');
  await press('Numpad9');
  const question = page.getByRole('button', { name: 'Yes: 9' });
  await question.waitFor();
  expect(await halfWay(page)).toBeCloseTo(0.5, 2);
  await page.emulateMedia({ reducedMotion: 'reduce' });
  expect(await halfWay(page)).toBe(1);
  await question.waitFor({ state: 'detached', timeout: 12_000 });
});
