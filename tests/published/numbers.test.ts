import rbnf from 'cldr-rbnf/rbnf/en.json' with { type: 'json' };
import { toCardinal } from 'n2words/en-US';
import { describe, expect, test } from 'vitest';
import { cardinal } from '../../src/words/en/numbers';

// Unicode CLDR 48, common/rbnf/en.xml, ruleset %spellout-cardinal, as published in the
// package cldr-rbnf; the rule syntax is that of UTS #35 part 3, 'Rule-Based Number Formatting'.
const rules = rbnf.rbnf.rbnf.SpelloutRules['%spellout-cardinal']
  .map(([base = '', body = '']) => ({ base: Number(base), body: body.replace(/;$/, '') }))
  .filter(({ base }) => Number.isInteger(base));

/** The rules carried out as UTS #35 tells: ←← is the quotient, →→ the remainder, [...] is left out when there is none. */
function byTheRules(n: number): string {
  const rule = rules.findLast(({ base }) => base <= n);
  if (rule === undefined) {
    throw new Error(`no rule for ${n}`);
  }
  const divisor = rule.base === 0 ? 1 : 10 ** Math.floor(Math.log10(rule.base) + 1e-9);
  const remainder = n % divisor;
  return rule.body
    .replace(/\[(.*)\]/, remainder === 0 ? '' : '$1')
    .replace('←←', () => byTheRules(Math.floor(n / divisor)))
    .replace('→→', () => byTheRules(remainder));
}

describe('cardinals', () => {
  // Worked by hand from the rules of CLDR common/rbnf/en.xml, %spellout-cardinal.
  test.each([
    [0, 'zero'],
    [1, 'one'],
    [10, 'ten'],
    [12, 'twelve'],
    [13, 'thirteen'],
    [19, 'nineteen'],
    [20, 'twenty'],
    [21, 'twenty-one'],
    [40, 'forty'],
    [88, 'eighty-eight'],
    [99, 'ninety-nine'],
    [100, 'one hundred'],
    [105, 'one hundred five'],
    [117, 'one hundred seventeen'],
    [121, 'one hundred twenty-one'],
    [999, 'nine hundred ninety-nine'],
    [1000, 'one thousand'],
    [1001, 'one thousand one'],
    [1100, 'one thousand one hundred'],
    [8175, 'eight thousand one hundred seventy-five'],
    [12_000, 'twelve thousand'],
    [21_105, 'twenty-one thousand one hundred five'],
    [100_000, 'one hundred thousand'],
    [999_999, 'nine hundred ninety-nine thousand nine hundred ninety-nine'],
  ])('%i is "%s"', (n, words) => {
    expect(cardinal(n)).toBe(words);
    expect(byTheRules(n)).toBe(words);
  });

  // The rules as published, carried out by the small reader above.
  test('every whole number to 9,999 and each 37th to 999,999 follows the published rules', () => {
    let tried = 0;
    for (let n = 0; n <= 999_999; n += n < 9999 ? 1 : 37) {
      expect(cardinal(n)).toBe(byTheRules(n));
      tried += 1;
    }
    console.log(`cardinals against the CLDR rules: ${tried}`);
    expect(tried).toBeGreaterThan(36_000);
  });

  // n2words 4.0.0 (MIT), American English: right for whole numbers; its decimals are not used.
  test('a general-purpose library says the same', () => {
    let tried = 0;
    for (let n = 0; n <= 999_999; n += n < 9999 ? 1 : 41) {
      expect(cardinal(n)).toBe(toCardinal(n));
      tried += 1;
    }
    console.log(`cardinals against a library: ${tried}`);
    expect(tried).toBeGreaterThan(34_000);
  });
});
