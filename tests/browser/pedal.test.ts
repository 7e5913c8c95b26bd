import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { appUrl, firstPage, openApp, openBrowser } from './harness';
import { type BenchHands, benchHands, differences, saidSoFar } from './steps/bench';
import { cantTellFrom, type Valve, walk } from './steps/figures';
import { terseLines as lines, MANY_UNPROVEN } from './steps/lines';
import { pressesApart } from './steps/pressesApart';
import { expectResults } from './steps/results';
import { setUpByKeys, tabTo } from './steps/setUpByKeys';
import { labelledCount } from './steps/spelled';

/** One pedal, PageDown: let go before 0.6 s it is a tap, from there the next stage, from 1.5 s take back. */
const NEXT_STAGE_MS = 630;
const TAKE_BACK_MS = 1600;
const NOTHING_MS = 3100;

function onePedal(page: Page, bench: BenchHands) {
  const press = pressesApart(page);
  let count = 0;
  const held = (ms: number) => press('PageDown', ms);
  return {
    nextStage: () => held(NEXT_STAGE_MS),
    takeBack: () => held(TAKE_BACK_MS),
    tooLong: () => held(NOTHING_MS),
    async zero(): Promise<void> {
      await held(NEXT_STAGE_MS);
      await bench.says(lines.zero);
      count = 0;
    },
    async tap(times: number): Promise<void> {
      for (let n = 0; n < times; n += 1) {
        // Shorter than the debounce, it settles by itself.
        await held(20);
        bench.maySay(lines.counted(count + 1, count));
        count += 1;
        await bench.shows(labelledCount(count));
      }
    },
    /** Takes the last count back, and says where that leads. */
    async undoCount(said: string): Promise<void> {
      await held(TAKE_BACK_MS);
      count -= 1;
      await bench.says(said);
    },
    async seat(): Promise<void> {
      await held(NEXT_STAGE_MS);
      await bench.says(lines.howFar);
    },
    /** At 'how far?' a tap is a quarter of a quarter. */
    async land(taps: number): Promise<void> {
      for (let n = 1; n <= taps; n += 1) {
        await held(20);
        bench.expected.push({ text: lines.tapped(count + n / 4), may: false });
        await bench.shows(labelledCount(count + n / 4));
      }
    },
  };
}

/** By keyboard, since the pedal is the bench's alone: the terse talk level, said faster. */
async function terse(page: Page): Promise<void> {
  const level = page.locator('[data-field="level"] input');
  const rate = page.locator('[data-field="rate"] input');
  await tabTo(page, '[data-field="level"] input');
  await page.keyboard.press('ArrowUp');
  await expect.poll(() => level.first().isChecked()).toBe(true);
  await tabTo(page, '[data-field="rate"] input');
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('ArrowDown');
  await expect.poll(() => rate.last().isChecked()).toBe(true);
}

/** Taps up to the last mark and past it, in the order of the walk: two valves a cylinder. */
const counted: readonly (readonly [marks: number, past: number])[] = [
  [4, 2],
  [4, 1],
  [5, 0],
  [4, 2],
  [3, 2],
  [4, 3],
  [4, 2],
  [5, 1],
  [4, 2],
  [4, 0],
  [4, 1],
  [4, 3],
  [5, 0],
  [4, 2],
  [4, 1],
  [4, 2],
];

test('sixteen valves by one pedal alone: spoken log, results and the one length', async () => {
  const browser = await openBrowser();
  const page = await firstPage(browser);
  await openApp(page, '#/settings');
  await terse(page);
  await page.goto(appUrl('#/set-up'));
  await setUpByKeys(page, 'Harrow Fen pump engine 8');
  const bench = benchHands(page);
  const pedal = onePedal(page, bench);

  await pedal.nextStage();
  await bench.says('Back. Cautions to be heard.');
  await pedal.nextStage();
  await bench.says(lines.position(1));

  const readings: (Valve & { quarters: number; resolves: number })[] = [];
  let unproven = 0;
  for (const [place, valve] of walk.entries()) {
    const { cylinder, kind } = valve;
    const [marks, past] = counted[place] ?? [0, 0];
    const quarters = past === 0 ? marks + 0.5 : marks + past / 4;
    if (kind === 'exhaust') await pedal.nextStage();
    if (kind === 'exhaust') await bench.says(lines.valve(valve));
    else bench.maySay(lines.valve(valve));
    await pedal.zero();
    if (place === 2) {
      // One tap too many is taken back; a pedal forgotten under the foot does nothing.
      await pedal.tap(marks + 1);
      await pedal.undoCount('Taken back. Five, ninety-eight.');
      await pedal.tooLong();
      await bench.shows(labelledCount(marks));
    } else await pedal.tap(marks);
    if (place === 1) await bench.says(lines.counted(marks, marks - 1));
    await pedal.seat();
    if (place === 3) {
      // Seated too soon by the foot: back to the count, and seated again.
      await pedal.takeBack();
      await bench.says('Taken back. Four, seventy-eight.');
      await pedal.seat();
    }
    await pedal.land(past);
    const resolves = past === 0 ? 1 : 0.5;
    readings.push({ ...valve, quarters, resolves });
    if (cantTellFrom(quarters, resolves) !== null) unproven += 1;
    const fourth = unproven === 4 && cantTellFrom(quarters, resolves) !== null;
    await pedal.nextStage();
    if (place === walk.length - 1)
      bench.expected.push({ text: lines.cylinderDone(cylinder, 0), may: false });
    // With no tap at 'how far?' it was not answered: about half a quarter past the last mark.
    await bench.says(lines.read(quarters, past > 0) + (fourth ? MANY_UNPROVEN : ''));
    if (kind === 'exhaust') continue;
    const left = (walk.length - 1 - place) / 2;
    if (left === 0) break;
    await bench.says(lines.cylinderDone(cylinder, left));
    bench.maySay('Pushrods loose?');
    await pedal.nextStage();
    bench.expected.push({ text: 'Pushrods loose.', may: false });
    await bench.says(lines.position(walk[place + 1]?.cylinder ?? 0));
  }
  await bench.says(lines.allRead(readings));
  expect(unproven).toBe(4);

  const said = (await saidSoFar(page)).filter((line) => !line.startsWith('No voice here'));
  expect(differences(said, bench.expected)).toEqual([]);
  expect(said.length).toBeGreaterThan(80);
  await expectResults(page, readings);
});
