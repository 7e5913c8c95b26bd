import type { Page } from 'playwright-core';

/** A job as it is set up on the screen, by the words that stand there. */
export interface HandSetUp {
  readonly name: string;
  /** One of the list, or typed in. */
  readonly engine:
    | string
    | {
        readonly order: readonly number[];
        readonly layout: string;
        readonly numbering: string;
        /** Odd firing angles; left out, it fires evenly. */
        readonly angles?: string;
      };
  /** Words of the walk's list; left out, it stays as it is. */
  readonly walk?: string;
  readonly hands?: 'I work alone' | 'A helper turns the crank';
}

const steps = { cam: 'The cam', walk: 'Where the crank stops', calling: 'Calling and help' };

/**
 * Fills in a new job but for what ends it: M8 × 1.25, ratio 1.7, long-travel rollers and a test
 * pushrod of 8.150, whatever the engine.
 */
export async function fillSetUp(page: Page, job: HandSetUp): Promise<void> {
  await page.getByLabel('Job name').fill(job.name);
  const { engine } = job;
  if (typeof engine === 'string') {
    await page.getByLabel('Layout and firing order').selectOption(engine);
  } else {
    await page.getByLabel('Layout and firing order').selectOption('Another firing order, typed in');
    await page.getByLabel('Cylinders', { exact: true }).fill(String(engine.order.length));
    await page.getByLabel('Firing order', { exact: true }).fill(engine.order.join('-'));
    // What is said about the order comes as its field is left, and moves what stands below.
    await page.keyboard.press('Tab');
    await page.getByLabel(engine.layout, { exact: true }).check();
    await page.getByLabel('How the cylinders are numbered').selectOption(engine.numbering);
    if (engine.angles !== undefined) {
      await page.getByLabel('At odd angles').check();
      await page.getByLabel('Firing angles, in firing order').fill(engine.angles);
    }
  }
  await page.getByLabel('Clockwise', { exact: true }).check();
  await page.getByLabel('Thread', { exact: true }).selectOption('M8 × 1.25');
  await page.getByLabel('Rocker ratio').fill('1.7');
  await page.getByLabel('Lifter kind').selectOption('Long-travel hydraulic roller');
  await page.getByLabel('Length of the test pushrod').fill('8.150');
  if (job.walk !== undefined) {
    await unfold(page, 'walk');
    await page.getByLabel('How the crank is walked').selectOption(job.walk);
  }
  if (job.hands !== undefined) {
    await unfold(page, 'calling');
    await page.getByLabel(job.hands).check();
  }
}

/** Opens a folded step of the form. */
export async function unfold(page: Page, step: keyof typeof steps): Promise<void> {
  await page.locator('summary', { hasText: steps[step] }).click();
}

/** Ends the form and waits for the bench. */
export async function startCounting(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Start counting' }).click();
  await page.locator('main[data-stage]').waitFor();
}
