import type { Page } from 'playwright-core';
import { type Killable, openKillable } from './killable';

/** A caption as its own callback reported it. */
export interface Heard {
  readonly text: string;
  /** From the caption standing in the page to the callback here, ms. */
  readonly delayMs: number;
}

export interface Killed {
  readonly heard: readonly Heard[];
  /** The caption it was killed on; null when there was none in time. */
  readonly on: Heard | null;
}

export interface Round {
  readonly profile: string;
  /** Runs in every page before its own scripts. */
  readonly init?: () => void;
  /** What is done before the counting: nothing is killed yet. */
  prepare(page: Page): Promise<void>;
  /** Presses on and on until the browser is gone, or there is no more to press. */
  press(page: Page): Promise<void>;
  /** Whether to kill on this caption, with those before it: asked inside the caption's callback. */
  killOn(text: string, before: readonly Heard[]): boolean;
}

/** One round: open, prepare, press, and kill the whole of Chromium on a caption's own callback. */
export async function killRound({ profile, init, prepare, press, killOn }: Round): Promise<Killed> {
  const browser = await openKillable(profile);
  const heard: Heard[] = [];
  let on: Heard | null = null;
  const page = browser.context.pages()[0] ?? (await browser.context.newPage());
  await browser.context.exposeBinding('__caption', (_source, text: string, at: number) => {
    if (on !== null) return;
    const one = { text, delayMs: Date.now() - at };
    const kills = killOn(text, heard);
    if (kills) browser.kill();
    heard.push(one);
    if (kills) on = one;
  });
  await browser.context.addInitScript(reportCaptions);
  if (init) await browser.context.addInitScript(init);
  await prepare(page);
  await Promise.race([press(page).catch(ignoreIfKilled(browser, () => on !== null)), browser.gone]);
  if (on === null) {
    await Promise.race([browser.gone, new Promise((resolve) => setTimeout(resolve, 5000))]);
  }
  if (on === null) await browser.close();
  else await browser.gone;
  return { heard, on };
}

/** What a press says of a browser that was killed under it is no matter. */
function ignoreIfKilled(browser: Killable, killed: () => boolean) {
  return async (error: unknown) => {
    if (!killed()) throw error;
    await browser.gone;
  };
}

/** In the page: every new text of the caption's live region is reported as it comes to stand there. */
function reportCaptions(): void {
  const window = globalThis as unknown as {
    __caption(text: string, at: number): void;
  };
  let last = '';
  new MutationObserver(() => {
    const text = document.querySelector('[aria-live="polite"][data-length]')?.textContent ?? '';
    if (text === '' || text === last) return;
    last = text;
    window.__caption(text, Date.now());
  }).observe(document, { subtree: true, childList: true, characterData: true });
}
