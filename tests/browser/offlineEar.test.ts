import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { deployed } from './deployment';
import { type Browser, firstPage, openApp, openBrowser } from './harness';
import { type SpokenPhrase, writeTrack } from './spokenTrack';
import { benchHands } from './steps/bench';
import { countShown, demoAtRest } from './steps/demoJob';
import { pressesApart } from './steps/pressesApart';
import { scriptedVoice } from './steps/scriptedVoice';
import { setUpByKeys } from './steps/setUpByKeys';
import { labelledCount } from './steps/spelled';

let folder = '';
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'turncaller-sound-'));
});
afterAll(() => rm(folder, { recursive: true, force: true }));

const microphone = (path: string) => [
  '--use-fake-device-for-media-stream',
  '--use-fake-ui-for-media-stream',
  `--use-file-for-fake-audio-capture=${path}%noloop`,
];

const said = (afterMs: number, ...texts: readonly string[]): readonly SpokenPhrase[] =>
  texts.map((text) => ({ afterMs, text }));

/** A page that asks the stopped server for a newer version is told so by the browser, in red. */
function forgiveUnreachable(browser: Browser): void {
  const kept = browser.faults.filter(
    (fault) => !/ERR_CONNECTION_REFUSED|script resource/.test(fault),
  );
  browser.faults.splice(0, Infinity, ...kept);
}

test('a whole valve counted by sound alone, with the server gone', async () => {
  const path = join(folder, 'valve.wav');
  await writeTrack(path, [
    ...said(2500, 'cautions heard', "crank's there", 'zero lash'),
    ...said(1600, 'one', 'two', 'three', 'four'),
    ...said(2500, 'rocker seated', 'half'),
  ]);
  const browser = await openBrowser({ args: microphone(path) });
  const server = await deployed();
  const first = await firstPage(browser);
  await first.goto(`${server.url}#/about`);
  await first.getByText('Ready offline').waitFor({ timeout: 30_000 });
  await server.stop();
  await first.close();
  const page = await browser.context.newPage();
  await page.goto(`${server.url}#/set-up`);
  await setUpByKeys(page, 'Harrow Fen pump engine 11');
  const bench = benchHands(page);
  const press = pressesApart(page);
  await press('NumpadAdd');
  await bench.says('Back. Cautions to be heard.');
  await press('NumpadDivide');
  await page.getByText('Listening').waitFor({ timeout: 30_000 });
  await page.locator('main[data-stage="counting"]').waitFor({ timeout: 30_000 });
  for (const count of [1, 2, 3, 4]) await bench.shows(labelledCount(count));
  await page.locator('main[data-stage="landing"]').waitFor({ timeout: 15_000 });
  await page.locator('main[data-stage="read"]').waitFor({ timeout: 15_000 });
  await expect.poll(() => countShown(page)).toBe('4 1/2');
  forgiveUnreachable(browser);
});

test('C9: numbers that sound while the app speaks move no count', async () => {
  const path = join(folder, 'over.wav');
  await writeTrack(path, [...said(2500, 'four'), ...said(1200, 'five', 'six', 'seven')]);
  const browser = await openBrowser({ args: microphone(path) });
  const page = await firstPage(browser);
  await scriptedVoice(page, 15_000);
  await openApp(page);
  await demoAtRest(page);
  const press = pressesApart(page);
  const bench = benchHands(page);
  await press('Space');
  await bench.shows(labelledCount(3));
  await press('NumpadDivide');
  await page.getByText('Listening').waitFor({ timeout: 30_000 });
  await page.getByText('not taken: say it again').first().waitFor({ timeout: 20_000 });
  await page.waitForTimeout(4000);
  expect(await countShown(page)).toBe('3');
});
