import { mkdtemp, rename, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { firstPage, openApp, openBrowser } from './harness';
import { benchHands } from './steps/bench';
import { demoAtRest } from './steps/demoJob';
import { pressesApart } from './steps/pressesApart';
import { scriptedEar } from './steps/scriptedEar';
import { labelledCount } from './steps/spelled';
import { goTo } from './steps/stages';
import { withoutOfflineEar } from './steps/withoutOfflineEar';

/** What was said last, polled: a line that waits for the builder's pause comes later. */
const lastSaid = (page: Page) =>
  page.locator('section[aria-label="Said"] [aria-live]').textContent();

/** The demo job at rest on its bench, at three quarters, and a scripted service. */
async function demoBench() {
  const browser = await openBrowser();
  const page = await firstPage(browser);
  const ear = await scriptedEar(page);
  await openApp(page);
  await demoAtRest(page);
  return { browser, page, ear, press: pressesApart(page), bench: benchHands(page) };
}

/** Opens the ear by its key, and agrees that speech leaves the device. */
async function opens(page: Page, press: (code: string) => Promise<void>): Promise<void> {
  await press('NumpadDivide');
  await page.getByRole('button', { name: 'Agree, and listen' }).click();
  await page.getByText('Listening', { exact: true }).waitFor();
}

test('C13: opened while the bench rests, a number is answered and not taken', async () => {
  const { page, ear, press, bench } = await demoBench();
  await opens(page, press);
  await page.getByText('Press any key to go on').waitFor();
  await ear.says('four');
  await press('Space');
  await expect.poll(() => lastSaid(page)).toMatch(/^Back at six exhaust, three\./);
  await bench.shows(labelledCount(3));
  await ear.says('five');
  await bench.shows(labelledCount(5));
});

test('not agreed to, nothing is heard, the keys go on, and it is asked again only when asked for', async () => {
  const { page, ear, press, bench } = await demoBench();
  await press('Space');
  await press('NumpadDivide');
  const question = page.getByText('Your speech would leave this device', { exact: true });
  await question.waitFor();
  await page.getByRole('button', { name: 'No: keys and pedal' }).click();
  await question.waitFor({ state: 'detached' });
  await press('Space');
  await bench.shows(labelledCount(4));
  expect(await question.count()).toBe(0);
  expect(await ear.sessions()).toBe(0);
  await press('NumpadDivide');
  await question.waitFor();
});

test('no ear chosen: nothing is asked or opened, and the keys go on', async () => {
  const { page, ear, press, bench } = await demoBench();
  await press('Space');
  const at = new URL(page.url()).hash;
  await goTo(page, '#/settings');
  await page.getByRole('button', { name: 'Save the ear’s log' }).click();
  await page.getByText('The ear has heard nothing since this page was opened').waitFor();
  await page.getByLabel('None: keys, pedal and touch').check();
  await page.evaluate((to) => {
    location.hash = to;
  }, at);
  await page.getByText('No ear: keys and pedal').waitFor();
  await press('NumpadDivide');
  await expect.poll(() => lastSaid(page), { timeout: 10_000 }).toBe('Ear shut.');
  await press('Space');
  await bench.shows(labelledCount(4));
  expect(await ear.sessions()).toBe(0);
});

test('shut by voice, by key and by leaving the bench, it is never opened again by itself', async () => {
  const { page, ear, press } = await demoBench();
  await press('Space');
  await opens(page, press);
  const shut = page.getByText('Ear shut: keys and pedal');
  const open = page.getByText('Listening', { exact: true });
  await ear.says('ear shut');
  await shut.waitFor();
  await press('NumpadDivide');
  await open.waitFor();
  await press('NumpadDivide');
  await shut.waitFor();
  await press('NumpadDivide');
  await open.waitFor();
  const bench = new URL(page.url()).hash;
  await goTo(page, '#/results/demo-harrow-fen-pump-4');
  await page.evaluate((to) => {
    location.hash = to;
  }, bench);
  await shut.waitFor();
  // Longer than any pause before a session is started again.
  await page.waitForTimeout(1500);
  expect(await ear.sessions()).toBe(3);
});

test('listening while a learned key is held, with a carrier word', async () => {
  const { page, ear, press, bench } = await demoBench();
  await press('Space');
  const at = new URL(page.url()).hash;
  await goTo(page, '#/settings');
  await page.getByLabel('While its key is held').check();
  await page.getByLabel('Counts need the word').check();
  await page.getByLabel('Speech may leave this device').check();
  await page.getByText('No key is learned yet').waitFor();
  await page.getByRole('button', { name: 'Learn the key to hold while speaking' }).click();
  const done = page.getByRole('button', { name: 'Done' });
  for (const heldMs of [0, 900, 0, 0]) {
    if ((await done.count()) > 0) break;
    await press('KeyL', heldMs);
    await page.waitForTimeout(400);
  }
  await done.click();
  await page.getByText('No key is learned yet').waitFor({ state: 'detached' });
  await page.evaluate((to) => {
    location.hash = to;
  }, at);
  await page.getByText('Ear shut: hold its key to speak').waitFor();
  await page.keyboard.down('KeyL');
  await page.getByText('Listening while held').waitFor();
  await ear.says('four');
  await page.getByText('Heard: ‘four’. Say ‘count four’.').waitFor();
  await bench.shows(labelledCount(3));
  await ear.hears({ text: 'count four', final: false });
  await page.keyboard.up('KeyL');
  await bench.shows(labelledCount(4));
  await page.getByText('Ear shut: hold its key to speak').waitFor();
  expect(await ear.sessions()).toBe(1);
  // Without a hand for it, the ear's own key holds it open until it is pressed again.
  await press('NumpadDivide');
  await page.getByText('Listening while held').waitFor();
  await ear.says('count five');
  await bench.shows(labelledCount(5));
  await press('NumpadDivide');
  await page.getByText('Ear shut: hold its key to speak').waitFor();
});

test('a denied microphone: only the ear is lost', async () => {
  const browser = await openBrowser();
  const page = await firstPage(browser);
  const session = await browser.context.newCDPSession(page);
  await session.send('Browser.setPermission', {
    permission: { name: 'microphone' },
    setting: 'denied',
  });
  await withoutOfflineEar(page);
  await openApp(page);
  await demoAtRest(page);
  const press = pressesApart(page);
  const bench = benchHands(page);
  await press('Space');
  await press('NumpadDivide');
  await page.getByRole('button', { name: 'Agree, and listen' }).click();
  await expect
    .poll(() => lastSaid(page), { timeout: 10_000 })
    .toBe('The microphone is not allowed, no ear at three. Use the pedal or the keys.');
  await page
    .locator('header')
    .getByText(/^The microphone is not allowed, no ear\./)
    .waitFor();
  await press('Space');
  await bench.shows(labelledCount(4));
  await press('NumpadAdd');
  await expect.poll(() => lastSaid(page)).toBe('Seated. How far past four?');
});

/** Noise of this height, 1 being full scale, as a 16-bit recording at 48 kHz. */
function noiseWav(seconds: number, height: number): Buffer {
  const samples = 48_000 * seconds;
  const wav = Buffer.alloc(44 + 2 * samples);
  wav.write('RIFF', 0);
  wav.writeUInt32LE(36 + 2 * samples, 4);
  wav.write('WAVEfmt ', 8);
  wav.writeUInt32LE(16, 16);
  wav.writeUInt16LE(1, 20);
  wav.writeUInt16LE(1, 22);
  wav.writeUInt32LE(48_000, 24);
  wav.writeUInt32LE(96_000, 28);
  wav.writeUInt16LE(2, 32);
  wav.writeUInt16LE(16, 34);
  wav.write('data', 36);
  wav.writeUInt32LE(2 * samples, 40);
  let seed = 1;
  for (let i = 0; i < samples; i += 1) {
    seed = (seed * 48_271) % 2_147_483_647;
    wav.writeInt16LE(Math.round((seed / 2_147_483_647 - 0.5) * 2 * height * 32_767), 44 + 2 * i);
  }
  return wav;
}

test('the room’s noise is shown; too loud, the ear shuts with the count, and the pedal goes on', async () => {
  const folder = await mkdtemp(join(tmpdir(), 'turncaller-noise-'));
  const file = join(folder, 'noise.wav');
  await writeFile(file, noiseWav(4, 0.01));
  const browser = await openBrowser({
    args: [
      '--use-fake-device-for-media-stream',
      '--use-fake-ui-for-media-stream',
      `--use-file-for-fake-audio-capture=${file}`,
    ],
  });
  const page = await firstPage(browser);
  const ear = await scriptedEar(page);
  await openApp(page);
  await demoAtRest(page);
  const press = pressesApart(page);
  const bench = benchHands(page);
  await press('Space');
  await press('NumpadDivide');
  await page.getByRole('button', { name: 'Agree, and listen' }).click();
  await page.getByText(/^Listening, room -4\d dB$/).waitFor();
  await press('NumpadDivide');
  await page.getByText('Ear shut: keys and pedal').waitFor();
  // Under a new file by the old name: what is open already plays on from the old one.
  await writeFile(`${file}.next`, noiseWav(4, 0.6));
  await rename(`${file}.next`, file);
  await press('NumpadDivide');
  await page.getByText(/^Listening, room -1?\d dB$/).waitFor();
  await expect
    .poll(() => lastSaid(page), { timeout: 20_000 })
    .toBe('Too loud, ear shut at three. Use the pedal.');
  await page.getByText('Ear shut, too loud: use the pedal').waitFor();
  const sessions = await ear.sessions();
  await press('PageDown');
  await bench.shows(labelledCount(4));
  await page.waitForTimeout(1000);
  expect(await ear.sessions()).toBe(sessions);
  await rm(folder, { recursive: true });
});
