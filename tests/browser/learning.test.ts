import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { firstPage, openApp, openBrowser } from './harness';
import { countShown, demoAtRest } from './steps/demoJob';
import { pressesApart } from './steps/pressesApart';
import { goTo } from './steps/stages';

/** Held past the second in which the builder is told to let go. */
const HELD_MS = 1150;
const NEXT_STAGE_MS = 700;
/** Closer than the debounce, two presses while learning are one. */
const APART_MS = 110;
const TAKE_BACK_MS = 1650;

declare global {
  interface Window {
    fakePad(button: number, down: boolean): void;
  }
}

/** A gamepad with four buttons, plugged in at its first press. */
async function fakeGamepad(page: Page): Promise<void> {
  await page.addInitScript(() => {
    const down = [false, false, false, false];
    let here = false;
    navigator.getGamepads = () =>
      here ? ([{ buttons: down.map((pressed) => ({ pressed })) }] as unknown as Gamepad[]) : [];
    window.fakePad = (button, pressed) => {
      down[button] = pressed;
      if (here) return;
      here = true;
      window.dispatchEvent(new Event('gamepadconnected'));
    };
  });
}

/** Presses a gamepad button, and lets it go. */
function padPresses(page: Page) {
  return async (button: number, heldMs = 120): Promise<void> => {
    await page.evaluate((index) => window.fakePad(index, true), button);
    await page.waitForTimeout(heldMs);
    await page.evaluate((index) => window.fakePad(index, false), button);
    await page.waitForTimeout(150);
  };
}

async function settings() {
  const browser = await openBrowser();
  const page = await firstPage(browser);
  await fakeGamepad(page);
  await openApp(page);
  await demoAtRest(page);
  const bench = new URL(page.url()).hash;
  await goTo(page, '#/settings');
  const says = (sentence: string) => page.getByText(sentence, { exact: true }).waitFor();
  return {
    page,
    says,
    press: pressesApart(page),
    pad: padPresses(page),
    learnPedal: async () => {
      await page.getByRole('button', { name: 'Learn the pedal by pressing it' }).click();
      await says('Press the pedal or key once.');
    },
    learnKey: async (act: string) => {
      await page.getByLabel('Another key or gamepad button, for').selectOption({ label: act });
      await page.getByRole('button', { name: 'Learn it by pressing it' }).click();
      await says('Press the pedal or key once.');
    },
    done: () => page.getByRole('button', { name: 'Done', exact: true }).click(),
    strip: async (does: string) =>
      page
        .getByRole('row')
        .filter({ has: page.getByRole('cell', { name: does, exact: true }) })
        .getByRole('cell')
        .first()
        .textContent(),
    toBench: async () => {
      await page.evaluate((to) => {
        location.hash = to;
      }, bench);
      await page.getByText('Press any key to go on').waitFor();
    },
  };
}

async function counts(page: Page, count: string): Promise<void> {
  await expect.poll(() => countShown(page)).toBe(count);
}

async function stands(page: Page, stage: string): Promise<void> {
  await expect.poll(() => page.locator('main').getAttribute('data-stage')).toBe(stage);
}

test('one pedal that sends a letter: learned by pressing and holding, then tapped and held', async () => {
  const { page, says, press, learnPedal, done, strip, toBench } = await settings();
  await learnPedal();
  await press('KeyB', 100);
  await says('Now press it and hold it down until told to let go.');
  await press('KeyB', 300);
  await says('Hold it down a little longer.');
  await page.waitForTimeout(APART_MS);
  await page.keyboard.down('KeyB');
  await says('Let go.');
  await page.keyboard.up('KeyB');
  await says('Learned: tap it for one more, hold it for the next stage.');
  await done();
  expect(await strip('Pedal: tap one more, hold for the next stage, longer to take back')).toBe(
    'B',
  );
  await toBench();
  await press('KeyB', 100);
  await press('KeyB', 100);
  await counts(page, '4');
  await press('KeyB', TAKE_BACK_MS);
  await counts(page, '3');
  await press('KeyB', NEXT_STAGE_MS);
  await stands(page, 'landing');
});

test('a presenter that sends two keys in turn is one pedal; what it takes is told, and that it can’t be held', async () => {
  const { page, says, press, learnPedal, learnKey, done, strip, toBench } = await settings();
  await learnPedal();
  // Down and up at once, whatever the thumb does: no hold can be told.
  await press('PageUp');
  await page.waitForTimeout(APART_MS);
  await press('PageDown');
  await says('Press it once more.');
  await press('PageUp');
  await says(
    'Learned, for taps only: it does not tell when it is let go, so it can’t be held. Use another key, or your voice, for the next stage and to take back.',
  );
  await says('Page up is take back now: as the pedal it no longer will be.');
  await done();
  await says(
    'The pedal can only be tapped: learn a key for the next stage, or use your voice for it.',
  );
  expect(await strip('Pedal: tap one more')).toBe('Page up, Page down');
  await learnKey('Next stage');
  await press('Period');
  await says('Learned.');
  await done();
  expect(await strip('Next stage')).toBe('Full stop');
  expect(await page.getByText('The pedal can only be tapped').count()).toBe(0);
  await toBench();
  for (const code of ['PageUp', 'PageDown', 'PageUp']) {
    await press(code);
    await page.waitForTimeout(APART_MS);
  }
  await counts(page, '5');
  await press('Period');
  await stands(page, 'landing');
});

test('a number pad: a key that means something already is told of, and then means the new', async () => {
  const { page, says, press, learnKey, done, strip, toBench } = await settings();
  await learnKey('Half a quarter');
  await press('NumpadMultiply');
  await says('Learned.');
  await says('Number pad × is say again now: as half a quarter more it no longer will be.');
  await done();
  await learnKey('Zero lash');
  // Keys that change others can mean nothing, and the learning goes on.
  await press('NumLock');
  await says("Num lock can't be used here: choose another key.");
  await press('NumpadEnter');
  await done();
  expect(await strip('Half a quarter')).toBe('Number pad ., H, Number pad ×');
  expect(
    await page
      .getByRole('row')
      .filter({ has: page.getByRole('cell', { name: 'Say again', exact: true }) })
      .count(),
  ).toBe(0);
  await toBench();
  await press('Numpad1');
  await press('NumpadMultiply');
  await counts(page, '3 1/2');
  await press('Numpad5');
  await counts(page, '5');
});

test('a gamepad: its buttons are the pedal and a key, and stay so after a reload', async () => {
  const { page, says, press, pad, learnPedal, learnKey, done, strip, toBench } = await settings();
  // The press that plugs it in is no press.
  await pad(3);
  await learnPedal();
  await pad(0);
  await says('Now press it and hold it down until told to let go.');
  await pad(0, HELD_MS);
  await says('Learned: tap it for one more, hold it for the next stage.');
  await done();
  await learnKey('Take back');
  await pad(1);
  await says('Learned.');
  await done();
  expect(await strip('Pedal: tap one more, hold for the next stage, longer to take back')).toBe(
    'Gamepad button 1',
  );
  expect(await strip('Take back')).toContain('Gamepad button 2');
  await toBench();
  await pad(0);
  await pad(0);
  await pad(0);
  await counts(page, '5');
  await pad(1);
  await counts(page, '4');
  await page.reload();
  await demoAtRest(page);
  await press('Space');
  await pad(3);
  await pad(0);
  await counts(page, '5');
  await pad(0, NEXT_STAGE_MS);
  await stands(page, 'landing');
});

test('the key strip is printed as it is now, and nothing else of the settings', async () => {
  const { page } = await settings();
  await page.evaluate(() => {
    window.print = () => document.body.setAttribute('data-printed', '');
  });
  await page.getByRole('button', { name: 'Print the key strip' }).click();
  expect(await page.locator('body[data-printed]').count()).toBe(1);
  await page.emulateMedia({ media: 'print' });
  // Every element of the page with text of its own that would be printed.
  const printed = await page.evaluate(() =>
    [...document.querySelectorAll('body *')]
      .filter((element) => element.checkVisibility())
      .flatMap((element) => [...element.childNodes])
      .filter((node) => node.nodeType === Node.TEXT_NODE)
      .map((node) => node.textContent ?? ''),
  );
  expect(printed.slice(0, 5)).toEqual([
    'Settings',
    'Keys as they are now',
    'Key',
    'Does',
    'Page down',
  ]);
  expect(printed.slice(-2)).toEqual(['Number pad ÷', 'Ear open or shut']);
});
