import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { firstPage, openApp, openBrowser } from './harness';

const field = (page: Page, name: string) => page.locator(`[data-field="${name}"]`);

async function choose(page: Page, name: string, label: RegExp): Promise<void> {
  const select = field(page, name).locator('select').first();
  const option = select.locator('option').filter({ hasText: label }).first();
  await select.selectOption((await option.getAttribute('value')) ?? '');
}

async function type(page: Page, name: string, text: string): Promise<void> {
  const input = field(page, name).locator('input').first();
  await input.fill(text);
  await input.blur();
}

async function window(page: Page, name: string, text: string): Promise<void> {
  await choose(page, 'groups.0.lifter', /Long-travel/);
  const figures = page.locator('details', { hasText: 'Window figures' }).last();
  if (!(await figures.evaluate((fold) => (fold as HTMLDetailsElement).open)))
    await figures.locator('summary').click();
  await type(page, `groups.0.${name}`, text);
}

async function order(page: Page, text: string): Promise<void> {
  await choose(page, 'engine', /typed in/);
  await type(page, 'cylinders', '8');
  await type(page, 'order', text);
}

/** What is put in, beside which field it is refused, and the words that must be in the sentence. */
const refused: readonly (readonly [
  name: string,
  fill: (page: Page) => Promise<void>,
  field: string,
  words: RegExp,
])[] = [
  [
    'ratio 0',
    async (page) => {
      await choose(page, 'thread', /M8 × 1\.25/);
      await type(page, 'ratio', '0');
    },
    'ratio',
    /rocker ratio of 0 is out of range: it must be from/,
  ],
  [
    'no pitch',
    async (page) => {
      await choose(page, 'thread', /Pitch typed in/);
      await type(page, 'pitch', '');
    },
    'pitch',
    /pitch/i,
  ],
  [
    'a pitch of 0',
    async (page) => {
      await choose(page, 'thread', /Pitch typed in/);
      await type(page, 'pitch', '0');
    },
    'pitch',
    /A pitch of 0\.00 mm .*out of range: it must be from/,
  ],
  [
    'a window upside down',
    (page) => window(page, 'usableMin', '120'),
    'groups.0.usableMin',
    /upside down.*must be below/,
  ],
  [
    'a window outside the travel',
    (page) => window(page, 'usableMax', '210'),
    'groups.0.usableMax',
    /travel/,
  ],
  [
    'a cylinder twice in the order',
    (page) => order(page, '1-8-4-3-6-5-7-7'),
    'order',
    /Cylinder 7 is in the firing order more than once: each cylinder belongs there once/,
  ],
  [
    'a cylinder missing from the order',
    (page) => order(page, '1-8-4-3-6-5-7'),
    'order',
    /Cylinder 2 is missing from the firing order: each of 1 to 8 belongs there once/,
  ],
  [
    'solid lifters',
    (page) => choose(page, 'groups.0.lifter', /^Solid lifters/),
    'groups.0.lifter',
    /Solid lifters have no plunger .*feeler gauge/,
  ],
  [
    'an overhead cam',
    (page) => choose(page, 'engine', /Overhead cam/),
    'engine',
    /overhead cam has no pushrod .*maker’s procedure/,
  ],
  [
    'a shared rocker shaft',
    (page) => choose(page, 'turns', /One shaft or bridge/),
    'turns',
    /one shaft or bridge can’t be counted rocker by rocker: .*checking pushrod/,
  ],
];

test('impossible set-up values are refused by name, with what would be right, and nothing starts', async () => {
  const browser = await openBrowser();
  const page = await firstPage(browser);
  for (const [name, fill, at, words] of refused) {
    await openApp(page, '#/set-up');
    await page.getByRole('heading', { name: 'Set up a job' }).waitFor();
    await fill(page);
    await page.getByRole('button', { name: 'Start counting' }).click();
    const notes = await field(page, at)
      .locator('[id^="note-"]')
      .first()
      .textContent({ timeout: 5000 });
    expect(notes, name).toMatch(words);
    expect(notes, name).not.toMatch(/NaN|Infinity|undefined/);
    expect(page.url(), name).toContain('#/set-up');
    await page.evaluate(() => sessionStorage.clear());
    await page.goto('about:blank');
  }
  expect(refused.length).toBe(10);
});
