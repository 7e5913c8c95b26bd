import { rest, type StoryPage } from './storyPage';

/** Presses of one key closer than 80 ms are taken for a contact that bounced. */
const APART_MS = 95;

/** Presses keys as a hand does: never the same one again within the debounce. */
export function pressesApart(page: StoryPage): (code: string, heldMs?: number) => Promise<void> {
  const released = new Map<string, number>();
  return async (code, heldMs = 0) => {
    const wait = (released.get(code) ?? 0) + APART_MS - Date.now();
    if (wait > 0) await rest(wait);
    await page.keyboard.press(code, heldMs > 0 ? { delay: heldMs } : {});
    released.set(code, Date.now());
  };
}
