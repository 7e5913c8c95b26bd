import { expect } from 'vitest';
import { tabTo } from './setUpByKeys';
import { isShown, type StoryPage, textOf, textsOf } from './storyPage';

/** A line the job has to say. One that waits for the builder's pause may be overtaken: it is `may`. */
export interface Expected {
  readonly text: string;
  readonly may: boolean;
}

const LAST_SAID = 'section[aria-label="Said"] [aria-live]';

/** The bench worked from outside: what was pressed ought to be said, and it is waited for. */
export interface BenchHands {
  readonly expected: Expected[];
  /** What must be said now, and is waited for; the line that might be said last, now certainly. */
  says(text: string): Promise<void>;
  /** What is said if the builder rests long enough here. */
  maySay(text: string): void;
  /** Waits until the count on the dial reads so. */
  shows(count: string): Promise<void>;
}

export function benchHands(page: StoryPage): BenchHands {
  const expected: Expected[] = [];
  return {
    expected,
    async says(text) {
      const last = expected.at(-1);
      if (last?.may && last.text === text) expected.pop();
      expected.push({ text, may: false });
      await expect
        .poll(() => textOf(page, LAST_SAID), { timeout: 10_000, interval: 15 })
        .toBe(text);
    },
    maySay(text) {
      expected.push({ text, may: true });
    },
    async shows(count) {
      const dial = `[data-stage] svg[aria-label^="${count} "]`;
      await expect
        .poll(() => isShown(page, dial), { timeout: 10_000, interval: 15, message: dial })
        .toBe(true);
    },
  };
}

/** Everything said so far, opened by keyboard under More, oldest first. */
export async function saidSoFar(page: StoryPage): Promise<readonly string[]> {
  await tabTo(page, 'button[aria-expanded]');
  await page.keyboard.press('Enter');
  await page.evaluate(
    (css) => document.querySelector<HTMLElement>(css)?.focus(),
    'section[aria-label="More"] summary',
  );
  await page.keyboard.press('Enter');
  return textsOf(page, 'ol[aria-label="Said so far"] li > span');
}

/** Whether what was said is what had to be said, in order, with nothing else in it. */
export function differences(said: readonly string[], expected: readonly Expected[]): string[] {
  const found: string[] = [];
  let next = 0;
  for (const text of said) {
    let at = next;
    while (at < expected.length && expected[at]?.text !== text && expected[at]?.may) at += 1;
    if (expected[at]?.text === text) next = at + 1;
    else found.push(`said “${text}” where “${expected[at]?.text ?? 'nothing more'}” was due`);
  }
  for (const { text, may } of expected.slice(next)) if (!may) found.push(`never said “${text}”`);
  return found;
}
