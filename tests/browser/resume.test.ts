import { expect, test } from 'vitest';
import { firstPage, openApp, openBrowser } from './harness';
import { countShown, demoAtRest } from './steps/demoJob';
import { pressesApart } from './steps/pressesApart';

test('C13: a fresh profile shows the demo job; the press that wakes it counts nothing, the next does', async () => {
  const browser = await openBrowser();
  const page = await firstPage(browser);
  const press = pressesApart(page);
  await openApp(page);
  await demoAtRest(page);
  expect(page.url()).toContain('#/bench/demo-');
  expect(await countShown(page)).toBe('3');
  await press('Space');
  await page.getByText('Press any key to go on').waitFor({ state: 'detached' });
  expect(await countShown(page)).toBe('3');
  await press('Space');
  await expect.poll(() => countShown(page)).toBe('4');
});

test('C13: a reload in the middle of a count comes back to it, and its first press counts nothing', async () => {
  const browser = await openBrowser();
  const page = await firstPage(browser);
  const press = pressesApart(page);
  await openApp(page);
  await demoAtRest(page);
  await press('Space');
  await press('Numpad4');
  await press('Numpad5');
  await expect.poll(() => countShown(page)).toBe('5');
  await page.getByText('Kept', { exact: true }).waitFor();
  await page.reload();
  await demoAtRest(page);
  expect(await countShown(page)).toBe('5');
  // Where the builder is, and where the mark set at twelve stands after five quarters.
  await page.getByText('Back at six exhaust, five. Socket at three.').waitFor();
  await press('Numpad6');
  await page.getByText('Press any key to go on').waitFor({ state: 'detached' });
  // Longer than a digit waits for a second one.
  await page.waitForTimeout(800);
  expect(await countShown(page)).toBe('5');
  await press('Numpad6');
  await expect.poll(() => countShown(page)).toBe('6');
});

test('a second window looks on with a sentence, takes over, and nothing counted is lost', async () => {
  const browser = await openBrowser();
  const first = await firstPage(browser);
  await openApp(first);
  await demoAtRest(first);
  await first.keyboard.press('Space');
  await first.keyboard.press('Numpad4');
  await expect.poll(() => countShown(first)).toBe('4');
  const second = await browser.context.newPage();
  await second.goto(first.url());
  const looksOn = 'Another window is counting: read only.';
  await second.getByText(looksOn).waitFor();
  expect(await countShown(second)).toBe('4');

  // What the first counts, the second shows; what is pressed in the second counts nothing.
  await first.bringToFront();
  await first.keyboard.press('Numpad5');
  await expect.poll(() => countShown(second)).toBe('5');
  await second.bringToFront();
  await second.keyboard.press('Space');
  await second.getByText('Read only: open in another window.').first().waitFor();
  expect(await countShown(second)).toBe('5');

  await second.getByRole('button', { name: 'Take over here' }).click();
  await second.getByText('Press any key to go on').waitFor();
  await first.getByText(looksOn).waitFor();
  const press = pressesApart(second);
  await press('Space');
  await press('Space');
  await expect.poll(() => countShown(second)).toBe('6');
  await expect.poll(() => countShown(first)).toBe('6');
});

test('Count now: counted without a set-up, named on the results', async () => {
  const browser = await openBrowser();
  const page = await firstPage(browser);
  const press = pressesApart(page);
  const nextStage = () => press('PageDown', 650);
  await openApp(page, '#/jobs');
  await page.getByRole('button', { name: 'Count now' }).click();
  await page.getByText('Press any key to go on').waitFor();
  await press('NumpadAdd');
  const stage = page.locator('main[data-stage]');
  for (const next of ['choose valve', 'to start', 'counting']) {
    await nextStage();
    await expect.poll(() => stage.getAttribute('data-stage')).toBe(next);
  }
  await press('Numpad2');
  await press('Numpad3');
  await expect.poll(() => countShown(page)).toBe('3');
  await press('NumpadAdd');
  await expect.poll(() => stage.getAttribute('data-stage')).toBe('landing');
  await press('KeyH');
  await expect.poll(() => stage.getAttribute('data-stage')).toBe('read');

  await page.goto(page.url().replace('#/bench/', '#/results/'));
  const reading = page.getByRole('region', { name: 'Reading 1: 3½ quarters' });
  await reading.getByLabel('Cylinder').fill('3');
  await reading.getByRole('button', { name: 'Name it' }).click();
  const row = page.locator('tr[data-valve="3 exhaust"]');
  await row.waitFor();
  expect(await row.locator('strong').first().textContent()).toBe('3½');
  // No thread was given, so there is no preload, and no figure pretends to one.
  expect(await page.locator('main').textContent()).not.toMatch(/NaN|Infinity|undefined/);
});
