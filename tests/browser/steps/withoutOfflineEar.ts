import type { Page } from 'playwright-core';

/** A browser that can't run the ear that needs no network, and so is left with its own service. */
export async function withoutOfflineEar(page: Page): Promise<void> {
  await page.addInitScript(() => {
    Reflect.deleteProperty(window, 'AudioWorkletNode');
  });
}
