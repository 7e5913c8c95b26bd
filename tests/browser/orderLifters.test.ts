import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { firstPage, openApp, openBrowser } from './harness';
import { countRound, pastCautions } from './steps/countRound';
import { guard, setUp, spelledLength, thou } from './steps/figures';
import { pressesApart } from './steps/pressesApart';
import { fillSetUp, startCounting } from './steps/setUpByHand';
import { capital, spelled } from './steps/spelled';

/** Cylinders 1 and 4 keep the usual long-travel window; 3 has one of the builder's own, 2 a published one. */
const own = { usable: [40, 80], preferred: [50, 70] } as const;
const published = { usable: [20, 60], preferred: [20, 60] } as const;
const windows: Readonly<
  Record<number, { usable: readonly number[]; preferred: readonly number[] }>
> = { 1: setUp, 3: own, 4: setUp, 2: published };

const QUARTERS = 4.5;
const BY_GEOMETRY = 0.07;

const field = (page: Page, name: string) => page.locator(`[data-field="${name}"]`);

function wordAt(cylinder: number): string {
  const { usable, preferred } = windows[cylinder] ?? setUp;
  const p = thou(QUARTERS);
  if (p > (usable[1] ?? 0)) return 'Heavy';
  return p > (preferred[1] ?? 0) ? 'Fits, heavy side' : 'Fits';
}

/** What a valve of this cylinder needs, to the nearest 25 thou on offer that proves it usable. */
function lengthFor(cylinder: number): number {
  const { usable, preferred } = windows[cylinder] ?? setUp;
  const target = ((preferred[0] ?? 0) + (preferred[1] ?? 0)) / 2;
  const g = guard(QUARTERS, 0.5, BY_GEOMETRY);
  const proven = Array.from({ length: 80 }, (_, i) => 25 * (i + 290)).filter((length) => {
    const p = thou(QUARTERS) + length - setUp.testPushrodIn * 1000;
    return p >= (usable[0] ?? 0) + g && p <= (usable[1] ?? 0) - g;
  });
  const off = (length: number) =>
    Math.abs(thou(QUARTERS) + length - setUp.testPushrodIn * 1000 - target);
  const [best] = proven.sort((a, b) => off(a) - off(b));
  if (best === undefined) throw new Error(`nothing for cylinder ${cylinder}`);
  return best / 1000;
}

async function chooseLifters(page: Page): Promise<void> {
  // A window of the builder's own, kept under a name.
  await page.locator('summary', { hasText: 'Window figures' }).click();
  const typed = {
    usableMin: own.usable[0],
    usableMax: own.usable[1],
    preferredMin: own.preferred[0],
    preferredMax: own.preferred[1],
  };
  for (const [name, thouTyped] of Object.entries(typed))
    await field(page, `groups.0.${name}`).locator('input').fill(String(thouTyped));
  await page.getByRole('button', { name: 'Keep the window' }).click();
  await page.getByText('Give a name of 1 to 60 letters.').waitFor();
  await page.getByLabel('Keep these figures under a name').fill('Sluice rollers');
  await page.getByRole('button', { name: 'Keep the window' }).click();
  await page.getByText('Kept on this device as ‘Sluice rollers’.').waitFor();

  await page.locator('summary', { hasText: 'Different lifters on one engine' }).click();
  await page.getByLabel('Some cylinders differ').check();
  await page.getByRole('button', { name: 'Another group of cylinders' }).click();
  await field(page, 'groups.0.cylinders').locator('input').fill('3');
  await field(page, 'groups.1.cylinders').locator('input').fill('3');
  const published = 'Standard-travel hydraulic roller';
  await field(page, 'groups.1.lifter').locator('select').selectOption(published);
  await page.locator('.step, section').filter({ hasText: 'Cylinders 3' }).first().waitFor();
  for (const place of [1, 2]) {
    const figures = page.locator('summary', { hasText: 'Window figures' }).nth(place);
    await figures.click();
    await page.getByRole('button', { name: 'Put the starting figures in' }).last().click();
  }
  await field(page, 'groups.2.lifter')
    .locator('select')
    .selectOption('Long-travel hydraulic roller');
}

test('cylinders with other lifters: each valve by its own window, and the fewest lengths that serve all', async () => {
  const browser = await openBrowser({ viewport: { width: 1024, height: 768 } });
  const page = await firstPage(browser);
  await openApp(page, '#/set-up');
  await fillSetUp(page, { name: 'Harrow Fen pump engine 7', engine: 'Inline 4, 1-3-4-2' });
  await chooseLifters(page);
  // One cylinder named in two groups is refused, by name.
  await page.getByRole('button', { name: 'Start counting' }).click();
  await page
    .getByText(/cylinder 3 is in Cylinders 3 and Cylinders 3 alike/)
    .first()
    .waitFor();
  await field(page, 'groups.1.cylinders').locator('input').fill('2');
  await startCounting(page);

  const press = pressesApart(page);
  await pastCautions(page, press);
  await countRound(
    page,
    press,
    Array.from({ length: 8 }, () => ({ quarters: QUARTERS })),
  );
  const order = [1, 3, 4, 2];
  const lengths = new Map<number, number>();
  for (const cylinder of order) {
    const inches = lengthFor(cylinder);
    lengths.set(inches, (lengths.get(inches) ?? 0) + 2);
  }
  const sorted = [...lengths].sort(([a], [b]) => a - b);
  const last = page.locator('section[aria-label="Said"] [aria-live]');
  for (const [inches, valves] of sorted)
    await expect
      .poll(() => last.textContent(), { timeout: 40_000 })
      .toContain(`${capital(spelledLength(inches))} for ${spelled(valves)} valves.`);

  await page.goto(page.url().replace('#/bench/', '#/results/'));
  const rows = page.locator('table tr[data-valve]');
  await rows.first().waitFor();
  const words = await rows.evaluateAll((all) =>
    all
      .slice(0, 8)
      .map((row) => [
        row.getAttribute('data-valve'),
        /^(Light|Heavy|Fits(, (light|heavy) side)?)/.exec(
          row.lastElementChild?.textContent ?? '',
        )?.[0],
      ]),
  );
  expect(words).toEqual(
    order.flatMap((cylinder) =>
      ['exhaust', 'intake'].map((kind) => [`${cylinder} ${kind}`, wordAt(cylinder)]),
    ),
  );
  const panel = page.locator('section[aria-labelledby="one-length"]');
  const text = (await panel.textContent()) ?? '';
  for (const [inches, valves] of sorted)
    expect(text).toContain(`${inches.toFixed(3)} in for ${valves} valves`);
  expect(text).toContain('With fewer lengths some valve would be proven out.');
  expect(text).toContain('Puts all 8 inside the usable window.');

  // The window stays on the device, for the next job.
  await page.goto(page.url().replace(/#.*/, '#/set-up'));
  await page.getByRole('button', { name: 'Start with nothing filled in' }).click();
  await field(page, 'groups.0.lifter').locator('select').selectOption('Sluice rollers');
  await page.locator('summary', { hasText: 'Window figures' }).click();
  expect(await field(page, 'groups.0.usableMax').locator('input').inputValue()).toBe('80');
});
