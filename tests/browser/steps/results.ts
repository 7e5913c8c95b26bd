import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { cantTellFrom, figure, setUp, verdict } from './figures';
import { type Counted, oneLength } from './oneLength';
import { capital, writtenCount } from './spelled';

/** Goes to the results and holds every valve's row, and the one length, to figures worked out here. */
export async function expectResults(page: Page, readings: readonly Counted[]): Promise<void> {
  await page.goto(page.url().replace('#/bench/', '#/results/'));
  await page.locator('table tr[data-valve]').first().waitFor();
  const rows = await page.locator('table tr[data-valve]').evaluateAll((all) =>
    all.map((row) => {
      const [count, preload, word] = [...row.querySelectorAll('td')];
      return [
        row.getAttribute('data-valve'),
        count?.querySelector('strong')?.textContent,
        preload?.querySelector('strong')?.textContent,
        word?.textContent,
      ];
    }),
  );
  expect(rows).toEqual(
    readings.map(({ cylinder, kind, quarters, resolves = 0.5 }) => [
      `${cylinder} ${kind}`,
      writtenCount(quarters),
      String(figure(quarters)),
      capital(verdict(quarters)) + judged(cantTellFrom(quarters, resolves)),
    ]),
  );
  const { inches, fits } = oneLength(readings);
  const panel = await page.locator('section[aria-labelledby="one-length"]').textContent();
  expect(panel).toContain(`${inches.toFixed(3)} in`);
  expect(panel).toContain(`Measured on a test pushrod of ${setUp.testPushrodIn.toFixed(3)} in.`);
  expect(panel).toContain(`Puts ${fits === 16 ? 'all 16' : `${fits} of 16`} inside`);
  expect(panel).toContain('Rests on all 16 valves of the engine.');
}

const judged = (across: string | null) => (across === null ? '' : `can’t tell from ${across}`);
