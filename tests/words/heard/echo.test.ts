import { describe, expect, test } from 'vitest';
import { isEchoOf, say } from '#words';
import { moments } from '../moments';
import { context } from '../samples';

const announced = (fact: (typeof moments)[number]['fact']) => ({
  fact,
  cue: null,
  timing: 'at once' as const,
  keptThrough: 0,
  perishable: false,
});

/** A line as a service writes it that puts in no stops and no capitals. */
const unstopped = (line: string) =>
  line
    .toLowerCase()
    .replace(/[:;,?!…]|\.(?=\s|$)/g, ' ')
    .replace(/(?<=\p{L})-(?=\p{L})/gu, ' ');

describe('C9: the app’s own voice coming back', () => {
  test('every line of every talk level is known, whole, and by its last half', () => {
    const lines = moments.flatMap(({ fact }) =>
      (['terse', 'plain', 'teaching'] as const).flatMap((level) =>
        (['shop', 'cardinal'] as const).map((numbers) =>
          say(announced(fact), context(level, 'inch', { numbers, lengths: numbers })),
        ),
      ),
    );
    const spoken = lines.filter((line) => line !== '');
    const unknown = spoken.filter((line) => {
      const heard = unstopped(line);
      const words = heard.split(/\s+/).filter((word) => word !== '');
      const half = words.slice(Math.floor(words.length / 2)).join(' ');
      return !isEchoOf(heard, line) || !isEchoOf(half, line);
    });
    expect(unknown).toEqual([]);
    expect(spoken.length).toBeGreaterThan(300);
  });

  test.each([
    ['Six quarters: one hundred seventeen thousandths, heavy.', '6 quarters 117 thousandths heavy'],
    ['Six, one seventeen, heavy.', '6 117 heavy'],
    ['Four and a half: eighty-eight thousandths, fits.', '4 1/2 88 thousandths fits'],
    ['Four and a half: eighty-eight thousandths, fits.', '4½ 88 thousandths'],
    ['Four and three quarters: ninety-four thousandths.', 'four and 3/4 94 thousandths'],
    ['Turn the crank ninety degrees in its running direction.', 'turn the crank 90° in its'],
    ['Had two, heard nine?', 'had 2 heard 9'],
  ])('‘%s’ written as ‘%s’', (line, heard) => {
    expect(isEchoOf(heard, line)).toBe(true);
  });

  test.each([
    ['Four quarters: seventy-eight thousandths, fits.', 'five'],
    ['Four quarters: seventy-eight thousandths, fits.', 'rocker seated'],
    ['Had two, heard nine?', 'nine two'],
    ['Ear open.', ''],
  ])('‘%s’ is not what ‘%s’ came of', (line, heard) => {
    expect(isEchoOf(heard, line)).toBe(false);
  });
});
