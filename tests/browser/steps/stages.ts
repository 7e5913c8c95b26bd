import type { Page } from 'playwright-core';
import { pressesApart } from './pressesApart';

/** The bench's stages as the demo job comes to them, each by presses from the one before. */
export const benchStages: readonly {
  readonly name: string;
  to(page: Page): Promise<void>;
}[] = [
  { name: 'resting', to: async () => undefined },
  { name: 'counting', to: (page) => keys(page, ['Space', 'Numpad4']) },
  { name: 'question', to: (page) => keys(page, ['Backspace', 'Numpad9'], 900) },
  { name: 'more', to: (page) => more(page, 'More') },
  {
    name: 'landing',
    to: async (page) => {
      await more(page, 'Shut');
      await keys(page, ['Backspace', 'Numpad4', 'NumpadAdd']);
    },
  },
  { name: 'read', to: (page) => keys(page, ['KeyH']) },
  { name: 'to start', to: (page) => keys(page, ['NumpadAdd']) },
  {
    name: 'pushrods loose',
    to: (page) => keys(page, ['Numpad0', 'Numpad1', 'Numpad2', 'NumpadAdd', 'KeyH', 'NumpadAdd']),
  },
  { name: 'turning', to: (page) => keys(page, [['PageDown', 650]]) },
];

type Key = string | readonly [code: string, heldMs: number];

async function keys(page: Page, codes: readonly Key[], after = 250): Promise<void> {
  const press = pressesApart(page);
  for (const key of codes) {
    const [code, heldMs] = typeof key === 'string' ? [key, 0] : key;
    await press(code, heldMs);
    // Longer than the debounce: the next group may begin with the same key.
    await page.waitForTimeout(110);
  }
  await page.waitForTimeout(after);
}

/** Clicked, so that the keys stay the bench's. */
async function more(page: Page, name: string): Promise<void> {
  await page.getByRole('button', { name, exact: true }).click();
  await page.waitForTimeout(100);
}

/** The other screens by their address, with the demo job open. */
export const otherScreens: readonly { readonly name: string; readonly hash: string }[] = [
  { name: 'results', hash: '#/results/demo-harrow-fen-pump-4' },
  { name: 'sheet', hash: '#/sheet/demo-harrow-fen-pump-4' },
  { name: 'set-up', hash: '#/set-up' },
  { name: 'set-up-change', hash: '#/set-up/demo-harrow-fen-pump-4' },
  { name: 'crank', hash: '#/crank/demo-harrow-fen-pump-4' },
  { name: 'before', hash: '#/before' },
  { name: 'jobs', hash: '#/jobs' },
  { name: 'settings', hash: '#/settings' },
  { name: 'sound-check', hash: '#/sound-check' },
  { name: 'about', hash: '#/about' },
];

/** Goes to one of the other screens within the app, and waits for its heading. */
export async function goTo(page: Page, hash: string): Promise<void> {
  await page.evaluate((to) => {
    location.hash = to;
  }, hash);
  await page.locator('nav').waitFor();
  await page.locator('main h1').waitFor();
  await page.waitForTimeout(150);
}
