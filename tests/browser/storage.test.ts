import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { appUrl, type Browser, firstPage, openApp, openBrowser } from './harness';
import { countShown, demoAtRest } from './steps/demoJob';
import { keptLog } from './steps/keptLog';
import { pressesApart } from './steps/pressesApart';

const WAIT = { timeout: 15_000 };
type Press = ReturnType<typeof pressesApart>;

/** The demo job, woken, four counted. */
async function counting(browser: Browser): Promise<{ page: Page; press: Press }> {
  const page = await firstPage(browser);
  await withFullDisk(page);
  await openApp(page);
  await demoAtRest(page);
  const press = pressesApart(page);
  await press('Space');
  await press('Numpad4');
  await expect.poll(() => countShown(page), WAIT).toBe('4');
  await page.getByText('Kept', { exact: true }).waitFor();
  return { page, press };
}

/** A page of the origin without the app in it. */
async function bystander(browser: Browser): Promise<Page> {
  const page = await browser.context.newPage();
  await page.route('**/favicon.ico', (route) => route.fulfill({ status: 204 }));
  await page.goto(appUrl('icon.svg'));
  return page;
}

/** The log on disk runs from 1 without a gap and ends with this count, in quarters. */
async function expectLogTo(page: Page, quarters: number): Promise<void> {
  await page.getByText('Kept', { exact: true }).waitFor(WAIT);
  const log = (await keptLog(page)) ?? [];
  expect(log.map(({ seq }) => seq)).toEqual(log.map((_event, i) => i + 1));
  expect(log.at(-1)).toMatchObject({ type: 'counted', to48: quarters * 12 });
}

async function saidSoFar(page: Page): Promise<string> {
  return (await page.locator('ol[aria-label="Said so far"]').textContent()) ?? '';
}

async function openMore(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'More', exact: true }).click();
  await page.locator('section[aria-label="More"] summary').last().click();
}

test('the store deleted in the middle of a count: said at once, and all of it is written again', async () => {
  const browser = await openBrowser();
  const { page, press } = await counting(browser);
  await openMore(page);
  await page.evaluate(
    () =>
      new Promise<void>((resolve) => {
        const deleting = indexedDB.deleteDatabase('turncaller');
        deleting.onsuccess = () => resolve();
      }),
  );
  await expect.poll(() => saidSoFar(page), WAIT).toMatch(/Not kept: storage failed.*Kept again/);
  await press('Numpad5');
  await expectLogTo(page, 5);
});

/** Makes the disk full for the app's log, or gives it room again, as Chromium tells it. */
async function diskFull(page: Page, full: boolean): Promise<void> {
  await page.evaluate((now) => Reflect.set(window, 'diskIsFull', now), full);
}

/** Chromium itself looks at the quota no oftener than every half minute: the refusal is made here. */
async function withFullDisk(page: Page): Promise<void> {
  await page.addInitScript(() => {
    const { add } = IDBObjectStore.prototype;
    IDBObjectStore.prototype.add = function (...given) {
      if (!Reflect.get(window, 'diskIsFull')) return add.apply(this, given);
      throw new DOMException('There is no room.', 'QuotaExceededError');
    };
  });
}

test('the disk full: said at once, counting goes on in memory, written in order once there is room', async () => {
  const browser = await openBrowser();
  const { page, press } = await counting(browser);
  await diskFull(page, true);
  await press('Numpad5');
  await page.getByRole('alert').getByText('Not kept: the disk is full').waitFor(WAIT);
  await press('Numpad6');
  await expect.poll(() => countShown(page)).toBe('6');
  expect((await keptLog(page))?.at(-1)).toMatchObject({ to48: 48 });
  await diskFull(page, false);
  await expectLogTo(page, 6);
});

test('a job left while the disk was full comes back with all that was counted', async () => {
  const browser = await openBrowser();
  const { page, press } = await counting(browser);
  const bench = page.url();
  await diskFull(page, true);
  await press('Numpad5');
  await page.getByRole('alert').getByText('Not kept: the disk is full').waitFor(WAIT);
  const go = (hash: string) =>
    page.evaluate((to) => {
      location.hash = to;
    }, hash);
  await go('#/bench/another-job');
  await page.getByRole('button', { name: 'Go to the jobs' }).waitFor();
  await go(new URL(bench).hash);
  await demoAtRest(page);
  expect(await countShown(page)).toBe('5');
  await diskFull(page, false);
  await expectLogTo(page, 5);
});

/** Holds the app's store open at a version, deaf to every request to let go. */
function holdStore(page: Page, version: number): Promise<void> {
  return page.evaluate(
    (at) =>
      new Promise<void>((resolve) => {
        const opening = indexedDB.open('turncaller', at);
        opening.onupgradeneeded = () => opening.result.createObjectStore(`made by ${at}`);
        opening.onsuccess = () => resolve();
      }),
    version,
  );
}

test('an older window that does not let go of the store: a sentence, not a hang, and on when it closes', async () => {
  const browser = await openBrowser();
  const older = await bystander(browser);
  await holdStore(older, 5);
  const page = await browser.context.newPage();
  await page.goto(appUrl());
  await page.getByText('An older version of this app is open in another window').waitFor(WAIT);
  await older.close();
  await demoAtRest(page);
  expect(await page.getByText('An older version of this app').count()).toBe(0);
});

test('a newer version takes the store: the old window stops writing and says so, aloud and shown', async () => {
  const browser = await openBrowser();
  const { page, press } = await counting(browser);
  await holdStore(page, 20);
  await page.getByText('A newer version of this app has the jobs: read only').waitFor(WAIT);
  await press('Numpad5');
  await page.getByText('Read only: a newer version has the jobs.').first().waitFor();
  expect(await countShown(page)).toBe('4');
  await page.goto(appUrl('#/about'));
  await page.getByText('A newer version has them: reload').waitFor(WAIT);
});

test('no store at all: said at once, counted in memory, every line not kept', async () => {
  const browser = await openBrowser();
  const page = await firstPage(browser);
  await page.addInitScript(() => {
    IDBFactory.prototype.open = () => {
      throw new DOMException('storage is blocked', 'SecurityError');
    };
  });
  await openApp(page, '#/jobs');
  await page.getByText('Nothing can be kept in this browser').waitFor(WAIT);
  await page.getByRole('button', { name: 'Count now' }).click();
  await page.locator('main[data-stage]').waitFor(WAIT);
  await page.getByRole('alert').getByText('Not kept: writing failed').waitFor(WAIT);
  await page.getByText('Press any key to go on').waitFor();
  const press = pressesApart(page);
  await press('Space');
  await page.getByText('Press any key to go on').waitFor({ state: 'detached' });
  await press('PageDown', 650);
  await press('PageDown', 650);
  await press('Numpad0');
  await press('Numpad1');
  await expect.poll(() => countShown(page), WAIT).toBe('1');
});

test('the browser is asked to let storage last once a reading is kept, and its answer is shown', async () => {
  const browser = await openBrowser();
  const page = await firstPage(browser);
  await page.addInitScript(() => {
    Reflect.set(window, 'askedToLast', 0);
    StorageManager.prototype.persist = async () => {
      Reflect.set(window, 'askedToLast', Reflect.get(window, 'askedToLast') + 1);
      return true;
    };
  });
  const asked = () => page.evaluate(() => Reflect.get(window, 'askedToLast'));
  await openApp(page);
  await demoAtRest(page);
  const press = pressesApart(page);
  await press('Space');
  await press('Numpad4');
  await page.getByText('Kept', { exact: true }).waitFor();
  expect(await asked()).toBe(0);
  await press('NumpadAdd');
  await press('KeyH');
  await page.locator('main[data-stage="read"]').waitFor();
  await expect.poll(asked, WAIT).toBe(1);
  await page.evaluate(() => {
    location.hash = '#/about';
  });
  await page.getByText('Until you delete them').waitFor();
  expect(await asked()).toBe(1);
});
