import type { Page } from 'playwright-core';
import { type BenchHands, benchHands } from './bench';
import type { Valve } from './figures';
import { plainLines as lines } from './lines';
import { pressesApart } from './pressesApart';
import type { ScriptedEar } from './scriptedEar';
import { fillSetUp, type HandSetUp, startCounting } from './setUpByHand';
import { labelledCount } from './spelled';

/** A job begun, with the ear open and the cautions due. */
export interface ByVoice {
  readonly page: Page;
  readonly ear: ScriptedEar;
  readonly bench: BenchHands;
  readonly press: ReturnType<typeof pressesApart>;
  /** One valve from zero to its reading of four and a half quarters. */
  count(valve: Valve, first: boolean): Promise<void>;
}

/** Sets the job up on an open set-up screen and opens its ear. */
export async function begunByVoice(page: Page, ear: ScriptedEar, job: HandSetUp): Promise<ByVoice> {
  await fillSetUp(page, job);
  await startCounting(page);
  const bench = benchHands(page);
  const press = pressesApart(page);
  await press('NumpadAdd');
  await bench.says('Back. Cautions to be heard.');
  await press('NumpadDivide');
  bench.maySay(
    'To be understood, your speech would leave this device. Agree to that on the screen first, or use the pedal.',
  );
  await page.getByRole('button', { name: 'Agree, and listen' }).click();
  await page.getByText('Listening').waitFor();
  bench.maySay('Ear open.');

  async function count(valve: Valve, first: boolean): Promise<void> {
    await ear.says('zero lash');
    await bench.says(lines.zero);
    let before = 0;
    for (const [text, quarters] of [
      ['two', 2],
      ['four', 4],
    ] as const) {
      await ear.says(text);
      bench.maySay(lines.counted(quarters, before));
      before = quarters;
      await bench.shows(labelledCount(quarters));
    }
    await ear.says('rocker seated');
    await bench.says(lines.howFar(4));
    await ear.says('half');
    await bench.says(lines.read(valve, 4.5, { first }));
  }
  return { page, ear, bench, press, count };
}
