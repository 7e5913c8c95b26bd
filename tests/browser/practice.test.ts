import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { firstPage, openApp, openBrowser } from './harness';
import { demoAtRest } from './steps/demoJob';
import { pressesApart } from './steps/pressesApart';
import { scriptedEar } from './steps/scriptedEar';
import { goTo } from './steps/stages';

/** What the lesson asks for now. */
const step = (page: Page) =>
  page.locator('main [data-step]').first().getAttribute('data-step', { timeout: 5000 });

async function isAt(page: Page, name: string): Promise<void> {
  await expect.poll(() => step(page), { timeout: 10_000, message: name }).toBe(name);
}

/** Degrees the simulated socket is drawn turned by. */
async function turned(page: Page): Promise<number> {
  const drawn = await page.locator('[data-mark48]').getAttribute('transform');
  return Number(/rotate\(([\d.]+)\)/.exec(drawn ?? '')?.[1]);
}

async function jobsListed(page: Page): Promise<number> {
  await goTo(page, '#/jobs');
  await page.getByRole('button', { name: 'Count now' }).waitFor();
  return page.locator('main li').count();
}

test('the practice run by keys: three bolts, one of them mended, and what was right; nothing is kept', async () => {
  const browser = await openBrowser({ viewport: { width: 1024, height: 768 } });
  const page = await firstPage(browser);
  await openApp(page);
  await demoAtRest(page);
  const press = pressesApart(page);
  await press('Space');
  const last = page.locator('section[aria-label="Said"] [aria-live]');
  await expect.poll(() => last.textContent()).toMatch(/^Back at six exhaust/);
  const before = await jobsListed(page);
  const presses = async (...codes: string[]) => {
    for (const code of codes) await press(code);
  };
  // Offered on a fresh device, and where the jobs are.
  await page.getByText('New here? The practice run teaches').waitFor();
  await page.getByRole('button', { name: 'Practice run' }).click();

  await isAt(page, 'wake');
  // Nothing that was said in the other job stands here.
  expect(await last.textContent()).toBe('What the app says stands here too.');
  await press('Space');
  await isAt(page, 'zero');
  await press('Numpad0');
  await isAt(page, 'turn');
  await press('Space');
  await expect.poll(() => turned(page)).toBe(90);
  await press('Space');
  await isAt(page, 'turn');
  await press('Space');
  // Three and a half quarters: tight half way on from the third.
  await isAt(page, 'seat');
  expect(await turned(page)).toBe(3.5 * 90);
  await page.getByText('TIGHT', { exact: true }).waitFor();
  await press('Space');
  await isAt(page, 'too far');
  await press('NumpadSubtract');
  await isAt(page, 'seat');
  await press('NumpadAdd');
  await isAt(page, 'how far');
  await press('KeyH');
  await isAt(page, 'accept');
  await press('NumpadAdd');

  // By numbers, and answered wrongly at first.
  await isAt(page, 'zero');
  await presses('Numpad0', 'Numpad1', 'Numpad2');
  await isAt(page, 'number');
  await presses('Numpad3', 'Numpad4');
  await isAt(page, 'seat');
  expect(await turned(page)).toBe(4.25 * 90);
  await press('NumpadAdd');
  await isAt(page, 'how far');
  await press('KeyH');
  await isAt(page, 'accept');
  await press('NumpadSubtract');
  await isAt(page, 'how far');
  await press('Space');
  await isAt(page, 'accept');
  await press('NumpadAdd');

  // Off the clock: seven, that is two and a third quarters.
  await isAt(page, 'zero');
  await press('Numpad0');
  await isAt(page, 'clock');
  expect(await turned(page)).toBe(210);
  await press('Numpad2');
  await isAt(page, 'seat');
  await press('NumpadAdd');
  await isAt(page, 'how far');
  await press('Space');
  await isAt(page, 'done');

  const cells = await page.locator('main tbody tr').allInnerTexts();
  expect(
    cells.map((row) =>
      row
        .split(/\t|\n/)
        .map((cell) => cell.trim())
        .filter(Boolean),
    ),
  ).toEqual([
    ['1', '3 1/2 quarters', '3 1/2 quarters', 'Right'],
    ['2', '4 1/4 quarters', '4 1/4 quarters', 'Right'],
    ['3', '2 1/3 quarters', '2 1/4 quarters', 'Right'],
  ]);
  await page.getByText('All three were right.').waitFor();

  // Again from the beginning, and out by the way of the jobs: none is added, and none is offered.
  await page.getByRole('button', { name: 'Practise again' }).click();
  await isAt(page, 'wake');
  expect(await jobsListed(page)).toBe(before);
  expect(await page.getByText('New here? The practice run teaches').count()).toBe(0);
  await page.goBack();
  await isAt(page, 'wake');
  await page.reload();
  await isAt(page, 'wake');
  expect(await jobsListed(page)).toBe(before);
});

test('the practice run by voice, its clock read as an hour', async () => {
  const browser = await openBrowser();
  const page = await firstPage(browser);
  const ear = await scriptedEar(page);
  await openApp(page, '#/practice');
  await isAt(page, 'wake');
  const press = pressesApart(page);
  await press('Space');
  await press('NumpadDivide');
  await page.getByRole('button', { name: 'Agree, and listen' }).click();
  await page.getByText('Listening', { exact: true }).waitFor();
  const bolt = async (count: readonly string[], past: string | null) => {
    await isAt(page, 'zero');
    await ear.says('zero lash');
    for (const said of count) await ear.says(said);
    await isAt(page, 'seat');
    await ear.says('rocker seated');
    if (past === null) return;
    await isAt(page, 'how far');
    await ear.says(past);
  };
  await bolt(['one', 'two', 'three'], 'half');
  await ear.says('next valve');
  await bolt(['one', 'two', 'three', 'four'], 'a hair past');
  await ear.says('next valve');
  // An hour off the marks is an answer to 'how far?' already.
  await bolt(["seven o'clock"], null);
  await isAt(page, 'done');
  await page.getByText('All three were right.').waitFor();
});
