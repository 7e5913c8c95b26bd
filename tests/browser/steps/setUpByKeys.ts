import { isShown, type StoryPage, textsOf, until } from './storyPage';

/** The keyboard's way about a page: Tab until the wanted control has the focus. */
export async function tabTo(page: StoryPage, selector: string, most = 90): Promise<void> {
  for (let presses = 0; presses < most; presses += 1) {
    await page.keyboard.press('Tab');
    const there = await page.evaluate(
      (wanted) => document.activeElement?.matches(wanted) ?? false,
      selector,
    );
    if (there) return;
  }
  throw new Error(`Tab never came to ${selector}`);
}

/** Arrows down a focused list until it shows the wanted option. */
async function choose(page: StoryPage, option: RegExp): Promise<void> {
  const shown = () =>
    page.evaluate((nothing) => {
      const focused = document.activeElement;
      return focused instanceof HTMLSelectElement
        ? (focused.selectedOptions[0]?.textContent ?? nothing)
        : nothing;
    }, '');
  for (let presses = 0; presses < 60; presses += 1) {
    if (option.test(await shown())) return;
    await page.keyboard.press('ArrowDown');
  }
  throw new Error(`no option ${option}`);
}

/**
 * Sets up the tests' job by keyboard alone, on an open set-up screen with nothing filled in, and
 * begins to count: V8 1-8-4-3-6-5-7-2, M8 × 1.25, ratio 1.7, long-travel rollers, 8.150 test pushrod.
 */
export async function setUpByKeys(page: StoryPage, name: string): Promise<void> {
  const title = 'Set up a job';
  await until(async () => (await textsOf(page, 'h1')).includes(title), title);
  await tabTo(page, '[data-field="name"] input');
  await page.keyboard.type(name);
  await tabTo(page, '[data-field="engine"] select');
  await choose(page, /1-8-4-3-6-5-7-2/);
  await tabTo(page, '[data-field="direction"] input');
  await page.keyboard.press('Space');
  await tabTo(page, '[data-field="thread"] select');
  await choose(page, /M8 × 1\.25/);
  await tabTo(page, '[data-field="ratio"] input');
  await page.keyboard.type('1.7');
  await tabTo(page, '[data-field="groups.0.lifter"] select');
  await choose(page, /Long-travel/);
  await tabTo(page, '[data-field="pushrod"] input');
  await page.keyboard.type('8.150');
  const isFocused = (name: string) =>
    page.evaluate((label) => document.activeElement?.textContent === label, name);
  for (let presses = 0; presses < 30; presses += 1) {
    await page.keyboard.press('Tab');
    if (await isFocused('Start counting')) break;
  }
  await page.keyboard.press('Enter');
  await until(() => isShown(page, 'main[data-stage]'), 'the bench');
}
