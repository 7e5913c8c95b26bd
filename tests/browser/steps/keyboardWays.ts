import type { BenchHands } from './bench';
import type { Valve } from './figures';
import type { Keys } from './keyboard';
import { plainLines as lines } from './lines';
import { labelledCount } from './spelled';

/** How each valve is counted, by `cylinder kind`, and what it must come to. */
export interface Way {
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

export const ways: Readonly<Record<string, Way>> = {
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
