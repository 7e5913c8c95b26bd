import type { CDPSession, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { firstPage, openApp, openBrowser } from './harness';
import { keptLog } from './steps/keptLog';

/** How many are counted: SOAK=5000 npx vitest run --project browser tests/browser/soak.test.ts */
const COUNTS = Number(process.env.SOAK ?? 1_000);
const PER_VALVE = 40;
/** Before anything is measured: code is fetched, first drawings made, the 500 captions kept are full. */
const WARM_UP_VALVES = 20;
const MOST_RATIO = 1.2;
const MOST_GROWN_BYTES = 1_000_000;

/**
 * Counts valves by touch, each from zero lash to its reading. What a count takes is told from the
 * press until the new count is drawn and laid out, ms.
 */
function countValves(page: Page, valves: number, counts: number): Promise<number[]> {
  return page.evaluate(
    async ([valvesToCount, each]) => {
      const bar = document.querySelector('[role="toolbar"]');
      const turn = () => new Promise((resolve) => setTimeout(resolve));
      const press = async (name: string): Promise<void> => {
        for (let tries = 0; tries < 200; tries += 1) {
          const button = [...(bar?.querySelectorAll('button') ?? [])].find(
            ({ textContent }) => textContent === name,
          );
          button?.click();
          if (button !== undefined) return;
          await turn();
        }
        throw new Error(`no ‘${name}’ among: ${bar?.textContent}`);
      };
      const shown = (): string | null | undefined => {
        const dial = document.querySelector('main svg[role="img"]');
        dial?.getBoundingClientRect();
        return dial?.getAttribute('aria-label');
      };
      const times: number[] = [];
      for (let valve = 0; valve < valvesToCount; valve += 1) {
        await press('Zero lash');
        await turn();
        for (let count = 0; count < each; count += 1) {
          const before = shown();
          const began = performance.now();
          await press('One more');
          for (let tries = 0; shown() === before; tries += 1) {
            if (tries > 10_000) throw new Error(`stayed at ${before}`);
            await Promise.resolve();
          }
          times.push(performance.now() - began);
          await turn();
        }
        await press('Rocker seated');
        await turn();
        await press('Half');
        await turn();
        await press('Accept, next valve');
        await turn();
      }
      return times;
    },
    [valves, counts] as const,
  );
}

/** The heap in use once everything that can be collected is, bytes. */
async function heap(devtools: CDPSession): Promise<number> {
  for (let i = 0; i < 3; i += 1) await devtools.send('HeapProfiler.collectGarbage');
  return (await devtools.send('Runtime.getHeapUsage')).usedSize;
}

function median(values: readonly number[]): number {
  return [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN;
}

test(`${COUNTS} counts in one page: no slower at the end, no heap beyond the log, the log exact`, async () => {
  const browser = await openBrowser();
  const page = await firstPage(browser);
  await openApp(page, '#/jobs');
  await page.getByRole('button', { name: 'Count now' }).click();
  await page.getByRole('button', { name: 'Go on' }).click();
  for (const name of ['Cautions heard', 'Take up the valve']) {
    await page.getByRole('button', { name }).click();
  }
  await countValves(page, WARM_UP_VALVES, PER_VALVE);
  const devtools = await browser.context.newCDPSession(page);
  const before = await heap(devtools);
  const times = await countValves(page, COUNTS / PER_VALVE, PER_VALVE);
  await page.getByText('Kept', { exact: true }).waitFor();

  const tenth = COUNTS / 10;
  const first = median(times.slice(0, tenth));
  const last = median(times.slice(-tenth));
  const after = await heap(devtools);
  await page.evaluate(
    () =>
      new Promise<void>((resolve) => {
        const opening = indexedDB.open('turncaller');
        opening.onsuccess = () => {
          const all = opening.result.transaction('events').objectStore('events').getAll();
          all.onsuccess = () => {
            opening.result.close();
            Reflect.set(window, 'wholeLog', all.result);
            resolve();
          };
        };
      }),
  );
  const logBytes = (await heap(devtools)) - after;
  const grown = after - before - (logBytes * COUNTS) / (COUNTS + WARM_UP_VALVES * PER_VALVE);
  console.log(
    `soak: ${times.length} counts, median ${first.toFixed(2)} ms in the first tenth and ${last.toFixed(2)} ms in the last; heap ${((after - before) / 1e6).toFixed(2)} MB more, ${(grown / 1e6).toFixed(2)} MB beyond the log of ${(logBytes / 1e6).toFixed(2)} MB`,
  );

  const log = (await keptLog(page)) ?? [];
  expect(log.map(({ seq }) => seq)).toEqual(log.map((_event, i) => i + 1));
  const counted = log.filter(({ type }) => type === 'counted').map(({ to48 }) => to48);
  const valves = COUNTS / PER_VALVE + WARM_UP_VALVES;
  const expected = Array.from({ length: valves }, () =>
    Array.from({ length: PER_VALVE }, (_count, i) => (i + 1) * 12),
  ).flat();
  expect(counted).toEqual(expected);
  expect(last / first).toBeLessThanOrEqual(MOST_RATIO);
  expect(grown).toBeLessThanOrEqual(MOST_GROWN_BYTES);
}, 300_000);
