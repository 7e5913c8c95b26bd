import type { Page } from 'playwright-core';
import type { pressesApart } from './pressesApart';

/** How long a key is held for the next stage, ms: past 600. */
export const NEXT_STAGE_MS = 650;

/** Quarters past zero, in halves of one. */
export interface Round {
  readonly quarters: number;
}

type Press = ReturnType<typeof pressesApart>;

/** Waits until the bench has come to a stage. */
export async function stage(page: Page, name: string): Promise<void> {
  await page.locator(`main[data-stage="${name}"]`).waitFor({ timeout: 10_000 });
}

/** Past the cautions of a new job, to the crank on its way to the first position. */
export async function pastCautions(page: Page, press: Press): Promise<void> {
  await press('NumpadAdd');
  await stage(page, 'cautions');
  await press('PageDown', NEXT_STAGE_MS);
  await stage(page, 'turning');
}

/** Counts one valve by keypad, from zero to its result. */
export async function countValve(page: Page, press: Press, quarters: number): Promise<void> {
  await stage(page, 'to start');
  await press('Numpad0');
  await stage(page, 'counting');
  const last = Math.floor(quarters);
  for (let count = 1; count <= last; count += 1) {
    await press(`Numpad${count}`);
    await page.locator(`[data-stage] svg[aria-label^="${count} "]`).first().waitFor();
  }
  await press('NumpadAdd');
  await stage(page, 'landing');
  await press(quarters === last ? 'Numpad0' : 'KeyH');
  await stage(page, 'read');
}

/** Counts a round by keypad, from the first position's crank still on its way to the last valve. */
export async function countRound(page: Page, press: Press, round: readonly Round[]): Promise<void> {
  for (const [place, { quarters }] of round.entries()) {
    if (place % 2 === 0) await press('PageDown', NEXT_STAGE_MS);
    await countValve(page, press, quarters);
    await press('NumpadAdd');
    if (place === round.length - 1) await stage(page, 'all read');
    else if (place % 2 === 1) {
      await stage(page, 'pushrods loose');
      await press('PageDown', NEXT_STAGE_MS);
      await stage(page, 'turning');
    }
  }
}
