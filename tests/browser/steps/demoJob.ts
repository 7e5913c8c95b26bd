import type { Page } from 'playwright-core';

/** On a fresh profile the demo job shows on the bench, at rest. */
export async function demoAtRest(page: Page): Promise<void> {
  await page.locator('main[data-stage="to start"], main[data-stage="counting"]').waitFor();
  await page.getByText('Press any key to go on').waitFor();
}

/** The count on the dial as its label reads; null before zero. */
export async function countShown(page: Page): Promise<string | null> {
  const label = await page.locator('main svg[role="img"]').first().getAttribute('aria-label');
  return /^([\d /]+) quarters?,/.exec(label ?? '')?.[1] ?? null;
}
