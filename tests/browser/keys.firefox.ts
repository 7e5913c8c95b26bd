import { launch, type Page } from 'puppeteer-core';
import { expect, onTestFinished, test } from 'vitest';
import { findFirefox } from '../../scripts/firefox.mjs';
import { appUrl } from './harness';
import { keyboardStory } from './steps/keyboardStory';
import { isShown, type StoryPage } from './steps/storyPage';

test('sixteen valves by keyboard alone in Firefox: spoken log, results and the one length', async () => {
  const executablePath = findFirefox();
  if (!executablePath)
    throw new Error('no Firefox found: run npm test -- --firefox, which says how to get one');
  const browser = await launch({
    browser: 'firefox',
    executablePath,
    headless: true,
    defaultViewport: { width: 1280, height: 800 },
  });
  onTestFinished(() => browser.close());
  const page = await browser.newPage();
  const faults: string[] = [];
  page.on('pageerror', (error) => faults.push(String(error)));
  await page.goto(appUrl('#/set-up'));
  const story = storyPage(page);
  await expect.poll(() => isShown(story, '#app > *'), { timeout: 30_000 }).toBe(true);
  await keyboardStory(story);
  expect(faults).toEqual([]);
});

/** Keys by their `code`, which this driver takes as they are but for the space bar. */
function storyPage(page: Page): StoryPage {
  const { keyboard } = page;
  const keyOf = (code: string) => (code === 'Space' ? ' ' : code);
  return {
    keyboard: {
      press: (code, options) =>
        keyboard.press(keyOf(code) as Parameters<typeof keyboard.press>[0], options),
      type: (text) => keyboard.type(text),
    },
    evaluate: (inPage, given) =>
      page.evaluate(inPage as (given: unknown) => unknown, given) as ReturnType<
        StoryPage['evaluate']
      > as Promise<never>,
    goto: (url) => page.goto(url),
    url: () => page.url(),
  };
}
