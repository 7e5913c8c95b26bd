import { mkdtemp, readdir, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { deployed } from './deployment';
import { type Browser, firstPage, openApp, openBrowser } from './harness';
import { type SpokenPhrase, writeTrack } from './spokenTrack';
import { benchHands } from './steps/bench';
import { countShown, demoAtRest } from './steps/demoJob';
import { pressesApart } from './steps/pressesApart';
import { scriptedVoice } from './steps/scriptedVoice';
import { setUpByKeys } from './steps/setUpByKeys';
import { labelledCount } from './steps/spelled';
import { goTo } from './steps/stages';

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

test('a sound check by voice alone ends with a verdict, is kept, and is deleted when asked', async () => {
  const path = join(folder, 'check.wav');
  const numbers = 'one two three four five six seven eight nine ten eleven twelve'.split(' ');
  await writeTrack(path, [
    ...said(5500, 'one'),
    ...said(1000, ...numbers.slice(1)),
    ...said(1500, 'rocker seated', 'take it back', 'say again', 'hold on', 'carry on'),
    ...said(1500, "what's left"),
  ]);
  const browser = await openBrowser({ args: microphone(path) });
  const page = await firstPage(browser);
  await openApp(page);
  await goTo(page, '#/sound-check');
  await page.getByRole('button', { name: 'Begin the sound check' }).click();
  await page.getByText('Quiet, please').waitFor({ timeout: 30_000 });
  await page.getByText('take it back', { exact: true }).waitFor({ timeout: 40_000 });
  await page.getByText(/^(Good|Usable: use the carrier word)$/).waitFor({ timeout: 40_000 });
  await page.getByText('Your words from a sound check are kept on this device.').waitFor();
  await page.reload();
  await page.getByRole('button', { name: 'Delete them' }).click();
  await page.getByText('None of your words are kept.').waitFor();
  await page.reload();
  await page.getByText('None of your words are kept.').waitFor();
});

test('with the ear’s own files damaged the browser’s ear takes over, and it is said', async () => {
  const browser = await openBrowser({ args: microphone(join(folder, 'none.wav')) });
  const server = await deployed();
  const files = await readdir(join(inject('appFolder'), 'assets'));
  const pack = files.find((name) => /^ear-.*\.bin$/.test(name));
  await server.spoil(`assets/${pack}`);
  const page = await firstPage(browser);
  await page.goto(server.url);
  await demoAtRest(page);
  const press = pressesApart(page);
  await press('Space');
  await press('NumpadDivide');
  await page
    .getByText('The ear’s own files are damaged. The browser’s own ear takes over.')
    .first()
    .waitFor({ timeout: 30_000 });
  // Its service is elsewhere: it asks first.
  await page.getByText('Your speech would leave this device', { exact: true }).waitFor();
  await page.close();
  browser.faults.splice(0, Infinity);
});
