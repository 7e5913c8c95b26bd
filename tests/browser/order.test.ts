import AxeBuilder from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { firstPage, openApp, openBrowser } from './harness';
import { countRound, pastCautions } from './steps/countRound';
import { setUp, spelledLength, thou } from './steps/figures';
import { kindsDiffer, lengthsByKind, predicted } from './steps/lengthsByKind';
import { type Counted, oneLength } from './steps/oneLength';
import { pressesApart } from './steps/pressesApart';
import { fillSetUp, startCounting } from './steps/setUpByHand';
import { capital } from './steps/spelled';

const FOUR = { name: 'Harrow Fen pump engine 6', engine: 'Inline 4, 1-3-4-2' };

/** Quarters by cylinder, exhaust before intake, in the order of the walk. */
type Engine = Readonly<Record<1 | 2 | 3 | 4, readonly [exhaust: number, intake: number]>>;

function readings(engine: Engine): readonly Counted[] {
  return ([1, 3, 4, 2] as const).flatMap((cylinder): Counted[] => [
    { cylinder, kind: 'exhaust', quarters: engine[cylinder][0] },
    { cylinder, kind: 'intake', quarters: engine[cylinder][1] },
  ]);
}

/** Sets up an inline four, changes what the story needs, and counts it all. */
async function counted(engine: Engine, change?: (page: Page) => Promise<void>): Promise<Page> {
  const browser = await openBrowser({ viewport: { width: 1024, height: 768 } });
  const page = await firstPage(browser);
  await openApp(page, '#/set-up');
  await fillSetUp(page, FOUR);
  await change?.(page);
  await startCounting(page);
  const press = pressesApart(page);
  await pastCautions(page, press);
  await countRound(page, press, readings(engine));
  return page;
}

/** Waits until this is part of what was said last: the whole engine in one breath. */
async function says(page: Page, text: string): Promise<void> {
  const last = page.locator('section[aria-label="Said"] [aria-live]');
  await expect.poll(() => last.textContent(), { timeout: 30_000 }).toContain(text);
}

async function toResults(page: Page): Promise<string> {
  await page.goto(page.url().replace('#/bench/', '#/results/'));
  const panel = page.locator('section[aria-labelledby="one-length"]');
  await panel.waitFor();
  return (await panel.textContent()) ?? '';
}

/** The rows of the order as they stand: length, valves, spares, in all. */
function orderRows(page: Page): Promise<string[][]> {
  return page
    .locator('table[data-order] tbody tr')
    .evaluateAll((rows) =>
      rows.map((row) => [...row.querySelectorAll('th, td')].map((cell) => cell.textContent ?? '')),
    );
}

/** What is not accessible on the page as it stands, and what is wider than a phone. */
async function wrongOn(page: Page): Promise<string[]> {
  const { violations } = await new AxeBuilder({ page }).analyze();
  const found = violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html}`));
  await page.setViewportSize({ width: 390, height: 844 });
  const [drawn, seen] = await page.evaluate(() => [
    document.documentElement.scrollWidth,
    document.documentElement.clientWidth,
  ]);
  return Number(drawn) > Number(seen) ? [...found, `${drawn} px wide in ${seen}`] : found;
}

const inch = (inches: number) => `${inches.toFixed(3)} in`;

test('intakes and exhausts that want different lengths: a length each, said, ordered and predicted', async () => {
  const engine: Engine = { 1: [4.5, 2.5], 3: [5, 2], 4: [4.5, 2.5], 2: [5, 2] };
  const read = readings(engine);
  const lengths = lengthsByKind(read);
  expect(new Set(lengths.map(({ inches }) => inches)).size).toBe(2);
  const page = await counted(engine);
  for (const { kind, inches } of lengths)
    await says(page, capital(`${kind}s: ${spelledLength(inches)}.`));

  const panel = await toResults(page);
  for (const { kind, inches } of lengths)
    expect(panel).toContain(`${capital(kind)}s ${inch(inches)}`);
  const differ = kindsDiffer(read);
  expect(differ.thou).toBeGreaterThan(differ.noise);
  expect(panel).toContain(
    `${capital(differ.wantsLonger)}s want longer than exhausts by ${differ.thou.toFixed(0)} thou, more than the ${differ.noise.toFixed(0)} thou that is noise`,
  );
  expect(panel).toContain('Puts all 8 inside the usable window.');

  await page.locator('summary', { hasText: 'What can be bought' }).click();
  await page.getByLabel('Spares of each length').fill('2');
  await page.getByRole('button', { name: 'Choose from these' }).click();
  const wanted = [...lengths]
    .sort((a, b) => a.inches - b.inches)
    .map(({ inches, valves }) => [inch(inches), `${valves}`, '2', `${valves + 2}`]);
  await expect.poll(() => orderRows(page)).toEqual(wanted);

  await page.locator('summary', { hasText: 'What each valve would have' }).click();
  const rows = await page
    .locator('table[data-predicted] tbody tr')
    .evaluateAll((all) =>
      all.map((row) =>
        [...row.querySelectorAll('th, td')].slice(0, 3).map((one) => one.textContent),
      ),
    );
  const of = (kind: string) => lengths.find((one) => one.kind === kind)?.inches ?? 0;
  expect(rows).toEqual(
    read.map((one) => {
      const { thou: p, guard } = predicted(one, of(one.kind));
      const name = `${one.cylinder} ${one.kind}`;
      return [name, inch(of(one.kind)), `${p.toFixed(0)} ± ${guard.toFixed(0)}`];
    }),
  );
});

test('a difference that is only noise gets one length', async () => {
  const engine: Engine = { 1: [4.5, 4.5], 3: [5, 4.5], 4: [4.5, 4.5], 2: [4.5, 4.5] };
  const read = readings(engine);
  const differ = kindsDiffer(read);
  expect(differ.thou).toBeGreaterThan(0);
  expect(differ.thou).toBeLessThan(differ.noise);
  const { inches, fits } = oneLength(read);
  expect(fits).toBe(8);
  const page = await counted(engine);
  await says(page, `One length fits all: ${spelledLength(inches)}.`);
  const panel = await toResults(page);
  expect(panel).toContain(inch(inches));
  expect(panel).toContain('no second length for that');
  expect(panel).toContain(
    `Intakes want longer than exhausts by ${differ.thou.toFixed(0)} thou, within the ${differ.noise.toFixed(0)} thou that is noise`,
  );
  expect(await orderRows(page)).toEqual([[inch(inches), '8', '0', '8']]);
});

test('nothing fits, and why: a window narrower than the reading is sure, then stock that runs out', async () => {
  const engine: Engine = { 1: [4.5, 4.5], 3: [4.5, 4.5], 4: [4.5, 4.5], 2: [4.5, 4.5] };
  const page = await counted(engine, async (form) => {
    await form.locator('summary', { hasText: 'Window figures' }).click();
    const figures = { usableMin: '86', usableMax: '94', preferredMin: '88', preferredMax: '92' };
    for (const [field, text] of Object.entries(figures))
      await form.locator(`[data-field="groups.0.${field}"] input`).fill(text);
  });
  await says(page, 'No one length fits.');
  const panel = await toResults(page);
  expect(panel).toContain('Puts 0 of 8 inside the usable window; 8 would not be proven.');
  expect(panel).toContain('1 exhaust: its reading is less sure than its window is wide');

  // The usual window again, from the set-up, and six on the shelf for eight valves.
  await page.goto(page.url().replace('#/results/', '#/set-up/'));
  await page.locator('summary', { hasText: 'Window figures' }).click();
  await page.getByRole('button', { name: 'Put the starting figures in' }).click();
  await page.getByRole('button', { name: 'Change the set-up' }).click();
  await page.getByRole('button', { name: 'Change it for all readings' }).click();
  await page.locator('main[data-stage]').waitFor();
  await toResults(page);
  await page.locator('summary', { hasText: 'What can be bought' }).click();
  await page.getByLabel('from a stock list').check();
  await page.getByLabel('Stock, one length a line').fill('8.150 by six');
  await page.getByRole('button', { name: 'Choose from these' }).click();
  await page.getByText('‘8.150 by six’ is no line of stock').waitFor();
  await page.getByLabel('Stock, one length a line').fill(`${setUp.testPushrodIn} x 6\n8.400 x 20`);
  await page.getByRole('button', { name: 'Choose from these' }).click();
  const order = page.locator('section[aria-labelledby="one-length"]');
  await order.getByText('The stock runs out: some valves get none.').waitFor();
  const text = (await order.textContent()) ?? '';
  expect(text).toContain('Puts 6 of 8 inside the usable window');
  expect(
    text.match(/(?:no length on offer puts it inside|the stock has none left for it)/g),
  ).toHaveLength(2);
});

test('one outlier: the reading is distrusted, in order, counted again, and both stand side by side', async () => {
  const engine: Engine = { 1: [4.5, 4.5], 3: [4.5, 4.5], 4: [2, 4.5], 2: [4.5, 4.5] };
  const page = await counted(engine);
  const off = Math.round(thou(2.5));
  await says(page, 'Distrust four exhaust:');
  await toResults(page);
  const panel = page.locator('section[aria-labelledby="distrust"]');
  expect(await panel.textContent()).toContain(
    `4 exhaust: ${off} thou less than the other exhausts, 4 of them read.`,
  );
  const causes = await panel.locator('ol li').allTextContents();
  expect(causes.map((text) => /base circle|plunger|seated|cup|bent|part/.exec(text)?.[0])).toEqual([
    'base circle',
    'plunger',
    'seated',
    'cup',
    'bent',
    'part',
  ]);

  await panel.getByRole('button', { name: 'Count 4 exhaust again' }).click();
  const press = pressesApart(page);
  await page.locator('main[data-stage="pushrods loose"]').waitFor();
  await press('PageDown', 650);
  await page.locator('main[data-stage="turning"]').waitFor();
  await countRound(page, press, [{ quarters: 4.5 }]);
  await page.goto(page.url().replace('#/bench/', '#/results/'));
  const repeats = page.locator('table[data-repeats] tbody[data-valve="4 exhaust"]');
  await repeats.waitFor();
  const text = (await repeats.textContent()) ?? '';
  expect(text).toContain(`2: ${Math.round(thou(2))} thou`);
  expect(text).toContain(`4½: ${Math.round(thou(4.5))} thou`);
  expect(text).toContain(`${Math.round(thou(3.25))} thou`);
  expect(text).toContain('mean of 2');
  expect(text).toContain('Repeats don’t agree: count again');
  expect(text).toContain(`${off} thou apart`);

  // A dial settles it, and says so against the counts; nothing counted is lost.
  await page.locator('summary', { hasText: 'Dial indicator reading' }).click();
  await page.locator('[data-field="dial-valve"] select').selectOption('4 exhaust');
  await page.locator('[data-field="dial-travel"] input').fill('eighty');
  await page.getByRole('button', { name: 'Take the reading' }).click();
  await page.getByText('Type the travel the dial shows').waitFor();
  await page.locator('[data-field="dial-travel"] input').fill('88');
  await page.getByRole('button', { name: 'Take the reading' }).click();
  await page.getByText(/Dial and count differ by twenty-four thousandths/).waitFor();
  expect(await repeats.textContent()).toContain('by dial: 88 thou');
  expect(await repeats.textContent()).toContain(`2: ${Math.round(thou(2))} thou`);
  // As a travel of the turn it would be far from what pitch and lever give: that is said beside it.
  const far = Math.round((88 / 3.25 / thou(1) - 1) * 100);
  await page.locator('[data-travel]').getByText(`${far} % above`).waitFor();
  await page.locator('summary', { hasText: 'Another test pushrod' }).click();
  expect(await wrongOn(page)).toEqual([]);
});
