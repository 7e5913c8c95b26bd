import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { deployed } from './deployment';
import { type Browser, firstPage, openBrowser } from './harness';

const ready = (page: Page) => page.getByText('Ready offline');

async function go(page: Page, address: string): Promise<void> {
  await page.goto(address);
  await page.locator('#app main').waitFor();
}

/** A page that asks the stopped server for a newer version is told so by the browser, in red. */
function forgiveUnreachable(browser: Browser): void {
  const kept = browser.faults.filter(
    (fault) => !/ERR_CONNECTION_REFUSED|script resource/.test(fault),
  );
  browser.faults.splice(0, Infinity, ...kept);
}

test('ready offline is said once; with the server gone every screen opens cold, from any folder', async () => {
  const server = await deployed('/shop/counting/');
  const browser = await openBrowser();
  const page = await firstPage(browser);
  await go(page, `${server.url}#/about`);
  await ready(page).waitFor();
  await page.getByRole('button', { name: 'Understood' }).click();
  expect(await ready(page).count()).toBe(0);
  await server.stop();

  await page.close();
  const cold = await browser.context.newPage();
  const headings = { about: 'About', jobs: 'Jobs', settings: 'Settings', 'set-up': 'Set up a job' };
  for (const [hash, heading] of Object.entries(headings)) {
    await cold.goto('about:blank');
    await cold.goto(`${server.url}#/${hash}`);
    await cold.getByRole('heading', { name: heading, exact: true }).waitFor();
    expect(await ready(cold).count()).toBe(0);
  }
  await go(cold, server.url);
  await cold.locator('main[data-stage]').waitFor();
  forgiveUnreachable(browser);
});
