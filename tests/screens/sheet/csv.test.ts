import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type Cell, csvOf } from '../../../src/screens/sheet/csv';

const back = (text: string): string[][] => parse(text, { relaxQuotes: false });

test('by RFC 4180: commas, quotes, line breaks, CR LF after every line', () => {
  const text = csvOf(
    ['a', 'b'],
    [
      ['one, "two"', 'three\nfour'],
      [1.5, null],
    ],
  );
  expect(text).toBe('a,b\r\n"one, ""two""","three\nfour"\r\n1.5,\r\n');
  expect(back(text)).toEqual([
    ['a', 'b'],
    ['one, "two"', 'three\nfour'],
    ['1.5', ''],
  ]);
});

test.each(['=1+1', '+1', '-1', '@SUM(A1)', '\tx', '\rx', '=HYPERLINK("x","y")'])(
  'the text %j is no formula in a spreadsheet',
  (text) => {
    const [, row] = back(csvOf(['a'], [[text]]));
    expect(row).toEqual([`'${text}`]);
  },
);

test('figures stay figures, below nought too; yes and no are words', () => {
  expect(csvOf(['a', 'b', 'c'], [[-12, true, false]])).toBe('a,b,c\r\n-12,yes,no\r\n');
});

test('what is no figure, and a row of another length, is refused', () => {
  expect(() => csvOf(['a'], [[Number.NaN]])).toThrow(RangeError);
  expect(() => csvOf(['a'], [[1, 2]])).toThrow(RangeError);
});

test('any table comes back cell for cell from a general library, and none begins as a formula', () => {
  const cell = fc.oneof(
    fc.string({ unit: 'binary' }),
    fc.stringMatching(/^[=+\-@\t\r",\n ]{1,4}$/),
    fc.double({ noNaN: true, noDefaultInfinity: true }),
    fc.constant(null),
  );
  const seed = Math.floor(Math.random() * 2 ** 31);
  let guarded = 0;
  fc.assert(
    fc.property(fc.array(fc.tuple(cell, cell, cell), { minLength: 1, maxLength: 8 }), (rows) => {
      const read = back(csvOf(['a', 'b', 'c'], rows)).slice(1);
      const isFormula = (text: string) => /^[=+\-@\t\r]/.test(text);
      const written = (one: Cell) => {
        if (typeof one !== 'string') return one === null ? '' : String(one);
        if (!isFormula(one)) return one;
        guarded += 1;
        return `'${one}`;
      };
      expect(read).toEqual(rows.map((row) => row.map(written)));
    }),
    { seed, numRuns: 500 },
  );
  console.log(`csv: seed ${seed}, 500 tables, ${guarded} formulas made harmless`);
  expect(guarded).toBeGreaterThan(100);
});
