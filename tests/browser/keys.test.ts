import { test } from 'vitest';
import { firstPage, openApp, openBrowser } from './harness';
import { keyboardStory } from './steps/keyboardStory';

test('sixteen valves by keyboard alone: spoken log, results and the one length', async () => {
  const browser = await openBrowser();
  const page = await firstPage(browser);
  await openApp(page, '#/set-up');
  await keyboardStory(page);
});
