import { describe, expect, test } from 'vitest';
import { bench, words } from './bench';
import { context, setUp } from './samples';
import { walk } from './walk';

/** A synthesiser at its usual rate: common practice, no source. */
const WORDS_A_SECOND = 2.9;
const terse = context('terse', 'inch', { hands: 'alone' });
const linesOf = (run: ReturnType<typeof bench>) => run.heard.map(({ line }) => line);

describe('the word budget, terse, alone, by keys, landing answered', () => {
  const steady = walk(setUp(), terse, false);

  test('sixteen valves walked in firing order take at most 300 words', () => {
    const said = linesOf(steady);
    expect(steady.state().readings).toHaveLength(16);
    expect(said.at(-1)).toBe('Sixteen read. One length fits all: eight, one fifty.');
    console.log(`${words(said)} words for sixteen valves, cautions included.`);
    expect(words(said)).toBeLessThanOrEqual(300);
  });

  test('with a pause before every seat they still do, the cautions apart', () => {
    const said = linesOf(walk(setUp(), terse, true));
    const [cautions = '', ...walked] = said;
    console.log(`${words(walked)} words with a pause a valve, cautions ${words([cautions])} more.`);
    expect(said.filter((line) => /^f(our|ive), /.test(line))).toHaveLength(16);
    expect(words(walked)).toBeLessThanOrEqual(300);
  });

  test('one valve takes at most 20 words and 7 s from zero to result, paused at every count', () => {
    const run = bench(setUp(), terse);
    for (const afterS of [10, 30, 10]) run.act({ type: 'advance' }, afterS);
    const before = run.heard.length;
    for (let count = 0; count < 4; count += 1) run.act({ type: 'step', size: 'step' }, 4);
    run.act({ type: 'advance' }, 4);
    run.act({ type: 'land', word: 'half' }, 2);
    const said = linesOf(run).slice(before);
    console.log(`${words(said)} words from zero to result: ${said.join(' / ')}`);
    expect(said).toHaveLength(6);
    expect(said.at(-1)).toBe('Four and a half, eighty-eight, fits.');
    expect(words(said)).toBeLessThanOrEqual(20);
    expect(words(said) / WORDS_A_SECOND).toBeLessThanOrEqual(7);
  });

  test('nothing is said twice: no two lines in a row are equal', () => {
    for (const said of [linesOf(steady), steady.captions, linesOf(walk(setUp(), terse, true))]) {
      expect(said.filter((line, i) => line === said[i - 1])).toEqual([]);
    }
  });

  test('the crank is told to turn once a position, and by no other line', () => {
    const moves = linesOf(steady).filter((line) => /\bturn\b|bring/i.test(line));
    expect(moves).toHaveLength(8);
    expect(moves[1]).toBe('Eight. Turn ninety. Watch five cross.');
  });
});

test('with a helper the turn is named only after hands clear was answered', () => {
  const helper = setUp({ hands: 'with helper' });
  const said = linesOf(walk(helper, context('terse', 'inch', { hands: 'with helper' }), false));
  const turns = said.flatMap((line, i) => (/^Turn|^Bring/.test(line) ? [said[i - 1]] : []));
  expect(turns).toHaveLength(8);
  expect(turns.every((line) => /^To \w+\. Hands clear\?$/.test(line ?? ''))).toBe(true);
});
