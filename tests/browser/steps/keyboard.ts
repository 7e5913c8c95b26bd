import type { BenchHands } from './bench';
import { plainLines as lines } from './lines';
import { pressesApart } from './pressesApart';
import { labelledCount } from './spelled';
import { rest, type StoryPage } from './storyPage';

/** How long a key is held for the next stage, ms: past 600. */
const NEXT_STAGE_HOLD_MS = 650;
const SECOND_DIGIT_MS = 700;

/** The builder at the keyboard: every key, and what it does to the count that ought to be there. */
export function keyboard(page: StoryPage, bench: BenchHands) {
  let count = 0;
  const press = pressesApart(page);
  return {
    press,
    nextStage: () => press('PageDown', NEXT_STAGE_HOLD_MS),
    /** Longer than a digit waits for a second one. */
    rest: () => rest(SECOND_DIGIT_MS + 50),
    async zero(): Promise<void> {
      await press('Numpad0');
      await bench.says(lines.zero);
      count = 0;
    },
    /** A digit of the number pad is the count itself. */
    async digits(...numbers: readonly number[]): Promise<void> {
      for (const number of numbers) {
        await press(`Numpad${number}`);
        if (number !== count) bench.maySay(lines.counted(number, count));
        count = number;
        await bench.shows(labelledCount(count));
      }
    },
    /** Space is one more quarter. */
    async more(times: number): Promise<void> {
      for (let n = 0; n < times; n += 1) {
        await press('Space');
        bench.maySay(lines.counted(count + 1, count));
        count += 1;
        await bench.shows(labelledCount(count));
      }
    },
    async half(): Promise<void> {
      await press('KeyH');
      bench.maySay(lines.counted(count + 0.5, count));
      count += 0.5;
      await bench.shows(labelledCount(count));
    },
    async backTo(quarters: number, said: string): Promise<void> {
      await press('Backspace');
      count = quarters;
      await bench.says(said);
    },
    async seat(): Promise<void> {
      await press('NumpadAdd');
      await bench.says(lines.howFar(count));
    },
    accept: () => press('NumpadAdd'),
  };
}

export type Keys = ReturnType<typeof keyboard>;
