import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { deployed } from './deployment';
import { type Browser, firstPage, openBrowser } from './harness';
import { countShown, demoAtRest } from './steps/demoJob';
import { pressesApart } from './steps/pressesApart';

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

const NEWER = '9.9.9';
const WAIT = { timeout: 15_000 };
const versionOf = (page: Page) => page.locator('dl dd').first().textContent();

test('a version deployed in the middle of a count waits for it; old pages keep their own files', async () => {
  const server = await deployed();
  const browser = await openBrowser();
  const counting = await firstPage(browser);
  await counting.goto(server.url);
  await demoAtRest(counting);
  await ready(counting).waitFor();
  const press = pressesApart(counting);
  await press('Space');
  await press('Numpad4');
  await expect.poll(() => countShown(counting)).toBe('4');
  let loads = 0;
  counting.on('load', () => {
    loads += 1;
  });

  const other = await browser.context.newPage();
  await go(other, `${server.url}#/about`);
  const older = await versionOf(other);
  expect(older).not.toBe(NEWER);
  await server.deploy(NEWER);
  await other.reload();
  await other.getByText('A new version is here').waitFor();
  expect(await versionOf(other)).toBe(older);

  // Asked for while a valve is counted in the first window: not now, and neither window moves.
  const update = other.getByRole('button', { name: 'Update now' });
  await update.click();
  await other.getByText('The new version waits: a valve is being counted').waitFor();
  await press('Numpad5');
  await expect.poll(() => countShown(counting)).toBe('5');
  expect(await counting.getByText('A new version').count()).toBe(0);

  // Seated: the window that asks gets it, the other goes on with the files it was opened with.
  await press('NumpadAdd');
  await press('KeyH');
  await counting.locator('main[data-stage="read"]').waitFor();
  await counting.getByText('Kept', { exact: true }).waitFor();
  await update.click();
  await expect.poll(() => versionOf(other), WAIT).toBe(NEWER);
  expect(await other.getByText('A new version').count()).toBe(0);
  expect(loads).toBe(0);
  await counting.evaluate(() => {
    location.hash = '#/about';
  });
  await counting.getByRole('heading', { name: 'About', exact: true }).waitFor();
  expect(await versionOf(counting)).toBe(older);
  expect((await keptVersions(counting)).length).toBe(2);

  // Once no page is old, nothing old is kept: a page that opens sees to it.
  await counting.reload();
  expect(await versionOf(counting)).toBe(NEWER);
  await other.reload();
  await expect.poll(async () => (await keptVersions(counting)).length, WAIT).toBe(1);
});

const keptVersions = (page: Page) => page.evaluate(() => caches.keys());

test('a deployment with a file that is not its own is not taken in, and the old version stays', async () => {
  const server = await deployed();
  const browser = await openBrowser();
  const page = await firstPage(browser);
  await go(page, `${server.url}#/about`);
  await ready(page).waitFor();
  await server.deploy(NEWER);
  await server.spoil('icon.svg');
  const refused = page.evaluate(
    () =>
      new Promise<string>((resolve) => {
        void navigator.serviceWorker.ready.then((registration) => {
          registration.addEventListener('updatefound', () => {
            const { installing } = registration;
            installing?.addEventListener('statechange', () => resolve(installing.state));
          });
          void registration.update();
        });
      }),
  );
  expect(await refused).toBe('redundant');
  await page.reload();
  expect(await versionOf(page)).not.toBe(NEWER);
  expect(await page.getByText('A new version').count()).toBe(0);
  browser.faults.splice(0);
});
