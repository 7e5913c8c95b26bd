import AxeBuilder from '@axe-core/playwright';
import { expect, test } from 'vitest';
import { appUrl, firstPage, openApp, openBrowser } from './harness';

test('the built page opens, names its version and commit, and is accessible', async () => {
  const browser = await openBrowser();
  const page = await firstPage(browser);
  await openApp(page, '#/about');
  expect(await page.title()).toMatch(/Turncaller$/);
  await page.getByRole('heading', { level: 1 }).waitFor();
  expect(await page.locator('main dl').first().textContent()).toMatch(
    /Version\s*\d+\.\d+\.\d+\s*Commit\s*\w+/,
  );
  const { violations, passes } = await new AxeBuilder({ page }).analyze();
  expect(violations.map((violation) => violation.id)).toEqual([]);
  expect(passes.length).toBeGreaterThan(0);
});

test('the notices of everything shipped stand beside the page', async () => {
  const browser = await openBrowser();
  const answer = await browser.context.request.get(appUrl('notices.txt'));
  expect(answer.ok()).toBe(true);
  const text = await answer.text();
  for (const name of ['Turncaller', 'react ', 'react-dom ', 'scheduler ', 'zustand ', 'dexie ']) {
    expect(text).toContain(`\n${name}`.trimStart());
  }
});

test('a fault on a page is collected', async () => {
  const browser = await openBrowser();
  const page = await firstPage(browser);
  await openApp(page);
  await page.evaluate(() => console.error('planted'));
  await page.evaluate(() => {
    setTimeout(() => {
      throw new Error('thrown late');
    }, 0);
  });
  await expect.poll(() => browser.faults.length).toBe(2);
  expect(browser.faults.splice(0).join(' ')).toMatch(/planted.*thrown late/);
});
