import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { firstPage, openApp, openBrowser } from './harness';
import { type BenchHands, benchHands, differences, saidSoFar } from './steps/bench';
import { type Valve, walk } from './steps/figures';
import { plainLines as lines } from './steps/lines';
import type { Counted } from './steps/oneLength';
import { pressesApart } from './steps/pressesApart';
import { expectResults } from './steps/results';
import { setUpByKeys } from './steps/setUpByKeys';
import { labelledCount } from './steps/spelled';

/** How long a key is held for the next stage, ms: past 600. */
const NEXT_STAGE_HOLD_MS = 650;
const SECOND_DIGIT_MS = 700;

/** The builder at the keyboard: every key, and what it does to the count that ought to be there. */
function keyboard(page: Page, bench: BenchHands) {
  let count = 0;
  const press = pressesApart(page);
  return {
    press,
    nextStage: () => press('PageDown', NEXT_STAGE_HOLD_MS),
    /** Longer than a digit waits for a second one. */
    rest: () => page.waitForTimeout(SECOND_DIGIT_MS + 50),
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

type Keys = ReturnType<typeof keyboard>;

/** How each valve is counted, by `cylinder kind`, and what it must come to. */
interface Way {
  readonly quarters: number;
  /** What its landing resolves, quarters, where that is not half of one. */
  readonly resolves?: number;
  count(keys: Keys, bench: BenchHands, valve: Valve): Promise<void>;
}

async function landedBy(keys: Keys, bench: BenchHands, code: string, line: string): Promise<void> {
  await keys.press(code);
  await bench.says(line);
}

/** Digits up to the last mark, then half a quarter past it, both told by key. */
function plain(last: number, landing: 'half' | 'nothing', first = false): Way {
  const quarters = last + (landing === 'half' ? 0.5 : 0);
  return {
    quarters,
    async count(keys, bench, valve) {
      await keys.digits(...Array.from({ length: last }, (_, i) => i + 1));
      await keys.seat();
      const code = landing === 'half' ? 'KeyH' : 'Numpad0';
      await landedBy(keys, bench, code, lines.read(valve, quarters, { first }));
    },
  };
}

const ways: Readonly<Record<string, Way>> = {
  '1 exhaust': plain(4, 'half', true),
  '1 intake': {
    quarters: 4.25,
    async count(keys, bench, valve) {
      await keys.more(4);
      // A pause: the count is said, with its verdict, since it changed.
      await bench.says(lines.counted(4, 3));
      await keys.seat();
      await keys.press('Space');
      await bench.says(lines.tapped(4.25));
      await keys.accept();
      await bench.says(lines.read(valve, 4.25));
    },
  },
  '8 exhaust': {
    quarters: 5,
    async count(keys, bench, valve) {
      await keys.digits(2, 4, 5, 6);
      await keys.backTo(5, 'Taken back. Five, ninety-eight.');
      await keys.seat();
      await landedBy(keys, bench, 'Numpad0', lines.read(valve, 5));
    },
  },
  '8 intake': {
    quarters: 4.5,
    async count(keys, bench, valve) {
      await keys.digits(1, 2, 3, 4);
      await keys.half();
      // Already past the mark: how far is known and not asked.
      await landedBy(keys, bench, 'NumpadAdd', lines.read(valve, 4.5));
    },
  },
  '4 exhaust': {
    quarters: 4.75,
    async count(keys, bench, valve) {
      await keys.digits(1, 2);
      // Once two stands alone, nine is far ahead: it waits for a second digit and is asked back.
      await keys.rest();
      await keys.press('Numpad9');
      await bench.says('Had two, heard nine. Say it again if it is nine.');
      // Taking back says no.
      await keys.backTo(2, 'Still two.');
      await keys.digits(3, 4);
      await keys.seat();
      for (const past of [0.25, 0.5, 0.75]) {
        await keys.press('Space');
        bench.maySay(lines.tapped(4 + past));
        await bench.shows(labelledCount(4 + past));
      }
      await keys.accept();
      await bench.says(lines.read(valve, 4.75));
    },
  },
  '4 intake': {
    // 'How far?' is not answered: the reading is the middle of the quarter it may lie in.
    quarters: 4.5,
    resolves: 1,
    async count(keys, bench, valve) {
      await keys.digits(1, 2, 3, 4);
      await keys.seat();
      await keys.accept();
      await bench.says(lines.read(valve, 4.5, { asked: false }));
    },
  },
  '3 exhaust': plain(3, 'half'),
  '3 intake': plain(6, 'nothing'),
  '6 exhaust': {
    quarters: 4.5,
    async count(keys, bench, valve) {
      await keys.digits(1, 2, 3);
      await keys.seat();
      // Seated too soon: the count goes on.
      await keys.backTo(3, 'Taken back. Three, fifty-nine.');
      await keys.digits(4);
      await keys.seat();
      await landedBy(keys, bench, 'KeyH', lines.read(valve, 4.5));
    },
  },
  '6 intake': {
    quarters: 4,
    async count(keys, bench, valve) {
      await keys.digits(1, 2, 3, 4);
      await keys.seat();
      await landedBy(keys, bench, 'KeyH', lines.read(valve, 4.5));
      await keys.backTo(4, 'Taken back. Seated at four. How far?');
      await landedBy(keys, bench, 'Numpad0', lines.read(valve, 4));
    },
  },
  '5 exhaust': plain(4, 'half'),
  '5 intake': {
    quarters: 4.5,
    async count(keys, bench, valve) {
      await keys.more(3);
      // Zero again at three counted is asked; zero once more starts over.
      await keys.press('Numpad0');
      await bench.says('Three counted: start over? Zero again if so.');
      await keys.press('Numpad0');
      await bench.says('Zero again. Mark the socket at twelve.');
      await keys.backTo(3, 'Taken back. Five intake, three, fifty-nine.');
      await keys.digits(4);
      await keys.seat();
      await landedBy(keys, bench, 'KeyH', lines.read(valve, 4.5));
    },
  },
  '7 exhaust': {
    // The fourth that can't be told.
    quarters: 4,
    async count(keys, bench, valve) {
      await keys.digits(1, 2, 3, 4);
      await keys.seat();
      await landedBy(keys, bench, 'Numpad0', lines.read(valve, 4, { fourth: true }));
    },
  },
  '7 intake': plain(5, 'nothing'),
  '2 exhaust': plain(4, 'half'),
  '2 intake': plain(4, 'half'),
};

test('sixteen valves by keyboard alone: spoken log, results and the one length', async () => {
  const browser = await openBrowser();
  const page = await firstPage(browser);
  await openApp(page, '#/set-up');
  await setUpByKeys(page, 'Harrow Fen pump engine 7');
  const bench = benchHands(page);
  const keys = keyboard(page, bench);

  // The bench rests: the first press says where it is and counts nothing.
  await keys.press('NumpadAdd');
  await bench.says('Back. Cautions to be heard.');
  await keys.nextStage();
  await bench.says(lines.position(1));

  const readings: Counted[] = [];
  for (const [place, valve] of walk.entries()) {
    const { cylinder, kind } = valve;
    if (kind === 'exhaust') await keys.nextStage();
    await bench.says(lines.valve(valve));
    const way = ways[`${cylinder} ${kind}`];
    if (!way) throw new Error(`no way for ${cylinder} ${kind}`);
    await keys.zero();
    await way.count(keys, bench, valve);
    const { quarters, resolves = 0.5 } = way;
    readings.push({ ...valve, quarters, resolves });
    const asked = `${cylinder} ${kind}` !== '1 intake' && `${cylinder} ${kind}` !== '4 exhaust';
    const waited = `${cylinder} ${kind}` === '4 intake';
    if (asked && !waited) await keys.accept();
    if (`${cylinder} ${kind}` === '5 exhaust') {
      // On to the intake, back across the valves, and on again.
      await bench.says(lines.valve({ cylinder, kind: 'intake' }));
      await keys.press('Backspace');
      await bench.says('Taken back. Five exhaust, read at four and a half, eighty-eight.');
      await keys.accept();
    }
    if (kind === 'exhaust') continue;
    const exhaust = readings.at(-2)?.quarters ?? 0;
    const left = (walk.length - 1 - place) / 2;
    await bench.says(lines.cylinderDone(cylinder, exhaust, way.quarters, left));
    if (left === 0) break;
    bench.maySay('Pushrods loose?');
    await keys.nextStage();
    bench.expected.push({ text: 'Pushrods loose.', may: false });
    await bench.says(lines.position(walk[place + 1]?.cylinder ?? 0));
  }
  await bench.says(lines.allRead(readings));

  const said = (await saidSoFar(page)).filter((line) => !line.startsWith('No voice here'));
  expect(differences(said, bench.expected)).toEqual([]);
  expect(said.length).toBeGreaterThan(80);
  await expectResults(page, readings);
});
