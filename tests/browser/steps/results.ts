import { expect } from 'vitest';
import { cantTellFrom, figure, setUp, verdict } from './figures';
import { type Counted, oneLength } from './oneLength';
import { capital, writtenCount } from './spelled';
import { isShown, type StoryPage, textOf } from './storyPage';

/** Goes to the results and holds every valve's row, and the one length, to figures worked out here. */
export async function expectResults(page: StoryPage, readings: readonly Counted[]): Promise<void> {
  await page.goto(page.url().replace('#/bench/', '#/results/'));
  const row = 'table tr[data-valve]';
  await expect.poll(() => isShown(page, row), { timeout: 30_000, interval: 50 }).toBe(true);
  const rows = await page.evaluate(
    (css) =>
      [...document.querySelectorAll(css)].map((one) => {
        const [count, preload, word] = [...one.querySelectorAll('td')];
        return [
          one.getAttribute('data-valve'),
          count?.querySelector('strong')?.textContent,
          preload?.querySelector('strong')?.textContent,
          word?.textContent,
        ];
      }),
    row,
  );
  expect(rows).toEqual(
    readings.map(({ cylinder, kind, quarters, resolves = 0.5 }) => [
      `${cylinder} ${kind}`,
      writtenCount(quarters),
      String(figure(quarters)),
      capital(verdict(quarters)) + judged(cantTellFrom(quarters, resolves)),
    ]),
  );
  const { inches, fits } = oneLength(readings);
  const panel = await textOf(page, 'section[aria-labelledby="one-length"]');
  expect(panel).toContain(`${inches.toFixed(3)} in`);
  expect(panel).toContain(`Measured on a test pushrod of ${setUp.testPushrodIn.toFixed(3)} in.`);
  expect(panel).toContain(`Puts ${fits === 16 ? 'all 16' : `${fits} of 16`} inside`);
  expect(panel).toContain('Rests on all 16 valves of the engine.');
}

const judged = (across: string | null) => (across === null ? '' : `can’t tell from ${across}`);
