import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { firstPage, openApp, openBrowser } from './harness';
import { fillSetUp, startCounting, unfold } from './steps/setUpByHand';

/** Types into the fields and leaves the last. */
async function type(page: Page, fields: Readonly<Record<string, string>>): Promise<void> {
  for (const [label, text] of Object.entries(fields)) {
    await page.getByRole('textbox', { name: label, exact: true }).fill(text);
    await page.keyboard.press('Tab');
  }
}

/** What stands beside the fields now. */
function said(page: Page): Promise<string[]> {
  return page.locator('[data-field] [aria-live] p').allTextContents();
}

/** Events by their own arithmetic: durations IO + 180 + IC and EO + 180 + EC. */
const card = { io: 22, ic: 62, eo: 66, ec: 18 };
const intake = card.io + 180 + card.ic;
const exhaust = card.eo + 180 + card.ec;
const intakeCentre = intake / 2 - card.io;
const separation = (intakeCentre + (exhaust / 2 - card.ec)) / 2;

test('cam and walk that can’t be: each a sentence with its figures, and nothing typed is lost', async () => {
  const page = await firstPage(await openBrowser());
  await openApp(page, '#/set-up');
  await fillSetUp(page, {
    name: 'Harrow Fen pump engine 14',
    engine: 'V8, numbered alternately, 1-8-4-3-6-5-7-2',
  });
  await unfold(page, 'cam');
  await page.getByLabel('The four events, in crank degrees').check();
  await page.getByLabel('At the seat').check();
  await type(page, {
    'Intake opens before TDC': String(card.io),
    'Intake closes after BDC': String(card.ic),
    'Exhaust opens before BDC': '186',
    'Exhaust closes after TDC': String(card.ec),
  });
  await expect
    .poll(() => said(page))
    .toContain(
      '186° can’t be the exhaust opening, before BDC: it would lie past the next dead centre, 180° away.',
    );
  await type(page, { 'Exhaust opens before BDC': String(card.eo) });
  await expect.poll(() => said(page)).toEqual([]);

  await page.locator('summary', { hasText: 'The card prints these too' }).click();
  await type(page, { 'Lobe separation': String(separation + 1.5) });
  await expect
    .poll(() => said(page))
    .toEqual([
      `The card’s lobe separation is ${separation + 1.5}°, but its events give ${separation}°: they are 1.5° apart. One of them is misread.`,
    ]);
  // A degree is the card's own rounding.
  await type(page, { 'Lobe separation': String(separation + 1) });
  await expect.poll(() => said(page)).toEqual([]);

  await page.getByLabel('Durations, lobe separation, and centreline or advance').check();
  await type(page, {
    'Intake duration': String(intake),
    'Exhaust duration': '404',
    'Lobe separation': String(separation),
    'Intake centreline, after TDC': String(intakeCentre),
  });
  await expect
    .poll(() => said(page))
    .toContain('The exhaust would be open for 404°: no cam is over 400°.');
  await type(page, { 'Exhaust duration': String(exhaust) });

  await unfold(page, 'walk');
  await page
    .getByLabel('How the crank is walked')
    .selectOption('Fewest stops: several cylinders at each');
  await page.getByLabel('At any angle: with a degree wheel').check();
  // No valve is further from its ramps than half of what its duration leaves of two turns.
  const most = (720 - Math.max(intake, exhaust)) / 2;
  await type(page, { 'Margin wanted off the ramps': String(most + 1) });
  await expect
    .poll(async () => (await said(page)).join(' '))
    .toMatch(
      new RegExp(
        `^No crank position keeps cylinder 1’s \\w+ ${most + 1}° off its ramps: .* ${most}° is the most\\.$`,
      ),
    );
  await type(page, { 'Margin wanted off the ramps': '15' });

  await page.getByLabel('Layout and firing order').selectOption('Another firing order, typed in');
  await type(page, { Cylinders: '8', 'Firing order': '1-8-4-3-6-5-7' });
  await expect.poll(async () => (await said(page)).join(' ')).toMatch(/\b2\b.*firing order/);
  await page.getByRole('button', { name: 'Start counting' }).click();
  expect(await page.locator('main[data-stage]').count()).toBe(0);

  await page
    .getByLabel('Layout and firing order')
    .selectOption('V8, numbered alternately, 1-8-4-3-6-5-7-2');
  await expect.poll(() => said(page)).toEqual([]);
  await startCounting(page);

  // What was typed is what the crank's picture goes by: two stops, a turn apart.
  await page.goto(page.url().replace('#/bench/', '#/crank/'));
  const stops = page.locator('section[aria-labelledby="crank-stops"] button');
  await expect.poll(() => stops.count()).toBe(2);
  const atCrank = page.getByRole('slider', { name: 'Crank angle' });
  const first = Number.parseFloat((await atCrank.getAttribute('aria-valuetext')) ?? '');
  await page.keyboard.press('PageDown');
  await expect
    .poll(async () => Number.parseFloat((await atCrank.getAttribute('aria-valuetext')) ?? ''))
    .toBe(first + 360);
});
