import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { firstPage, openApp, openBrowser } from './harness';
import { NEXT_STAGE_MS, pastCautions, stage } from './steps/countRound';
import { setUp, spelledLength } from './steps/figures';
import { pressesApart } from './steps/pressesApart';

/** The rod in hand: screwed right in, and what a turn opens it by; target the middle of the band. */
const closedIn = 6.8;
const perTurnIn = 0.05;
const target = (setUp.preferred[0] + setUp.preferred[1]) / 2;

type Press = ReturnType<typeof pressesApart>;

async function fillForm(page: Page): Promise<void> {
  const field = (name: string) => page.locator(`[data-field="${name}"]`);
  await field('name').locator('input').fill('Harrow Fen pump engine 11');
  await field('engine').locator('select').selectOption('Inline 4, 1-3-4-2');
  await field('direction').locator('input').first().check();
  await page.getByText('Which valves').click();
  await page.getByLabel('One cylinder').check();
  await field('oneCylinder').locator('input').fill('1');
  await page.getByLabel('Turns of a checking pushrod, rockers torqued down').check();
  // No thread and no ratio is asked for: the rod's own thread measures.
  expect(await field('thread').count()).toBe(0);
  await field('groups.0.lifter').locator('select').selectOption('Long-travel hydraulic roller');
  await page.getByRole('button', { name: 'Start counting' }).click();
  await page.getByText('That is not a checking pushrod’s closed length').first().waitFor();
  await field('closed').locator('input').fill(closedIn.toFixed(3));
  expect(await field('perTurn').locator('input').inputValue()).toBe('50');
  await page.getByText('Calling and help').click();
  expect(await page.getByLabel('Whole turns').isChecked()).toBe(true);
  await page.getByRole('button', { name: 'Start counting' }).click();
  await page.locator('main[data-stage]').waitFor();
}

const shownIn = (page: Page) =>
  page.locator('section[aria-label="Checking pushrod"] [data-figure]').textContent();

/** Turns by keypad, the last one with two digits, then zero lash and nothing past it. */
async function open(page: Page, press: Press, turns: number): Promise<void> {
  await stage(page, 'to start');
  expect(await shownIn(page)).toBe(closedIn.toFixed(3));
  await press('Numpad0');
  await stage(page, 'counting');
  for (let turn = 1; turn <= turns; turn += 1) {
    for (const digit of String(turn)) await press(`Numpad${digit}`);
    await expect.poll(() => shownIn(page)).toBe((closedIn + turn * perTurnIn).toFixed(3));
  }
  // Longer than a digit waits for another.
  await page.waitForTimeout(800);
  await press('Numpad0');
  await stage(page, 'landing');
  await press('Numpad0');
  await stage(page, 'read');
}

test('a checking pushrod opened to zero lash: its length on the bench, in the results, and what to buy', async () => {
  const browser = await openBrowser({ viewport: { width: 1024, height: 768 } });
  const page = await firstPage(browser);
  await openApp(page, '#/set-up');
  await fillForm(page);
  const press = pressesApart(page);
  await pastCautions(page, press);
  await press('PageDown', NEXT_STAGE_MS);
  await open(page, press, 10);
  await press('NumpadAdd');
  await open(page, press, 10);
  await press('NumpadAdd');
  await stage(page, 'all read');

  const zeroLashIn = closedIn + 10 * perTurnIn;
  // 7.390 is wanted; of every 25 thou 7.400 is nearest.
  const wantedIn = zeroLashIn + target / 1000;
  const buyIn = Math.round(wantedIn / 0.025) * 0.025;
  const last = page.locator('section[aria-label="Said"] [aria-live]');
  await expect
    .poll(() => last.textContent(), { timeout: 30_000 })
    .toContain(`One length fits all: ${spelledLength(buyIn)}.`);

  await page.goto(page.url().replace('#/bench/', '#/results/'));
  const rows = page.locator('table tr[data-valve]');
  await rows.first().waitFor();
  const cells = await rows.first().locator('td strong').allTextContents();
  expect(cells).toEqual(['10', `${zeroLashIn.toFixed(3)} in`]);
  const panel = (await page.locator('section[aria-labelledby="one-length"]').textContent()) ?? '';
  expect(panel).toContain(`${buyIn.toFixed(3)} in`);
  expect(panel).toContain('Measured on a checking pushrod.');
  expect(panel).toContain('Puts all 2 inside the usable window.');
  await page.locator('summary', { hasText: 'What each valve would have' }).click();
  const preload = await page
    .locator('table[data-predicted] tbody tr')
    .first()
    .locator('td')
    .nth(1)
    .textContent();
  expect(preload).toMatch(new RegExp(`^${Math.round((buyIn - zeroLashIn) * 1000)} ± \\d`));
});
