import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { grammarFor, hear, sayable } from '#words';
import { trimmedDictionary, vocabulary } from '../../../src/hearing/offline/dictionary';
import { HANDICAP } from '../../../src/hearing/offline/expected';
import { branchesFor, jsgfOf } from '../../../src/hearing/offline/grammar';
import { benchAt } from '../bench';

/** A valve being counted, at four quarters. */
function atFour(carrier: string | null = null) {
  return grammarFor(benchAt('counting').state(), { carrier });
}

const tierIn = (grammar: ReturnType<typeof atFour>) => {
  const tiers = new Map(branchesFor(grammar).map(({ words, tier }) => [words, tier]));
  return (words: string) => tiers.get(words);
};

describe('what is listened for', () => {
  test('every phrase that can be said is understood as it is', () => {
    for (const carrier of [null, 'count']) {
      const grammar = atFour(carrier);
      const phrases = sayable(grammar);
      expect(phrases.length).toBeGreaterThan(400);
      for (const { text } of phrases) {
        expect([text, hear(text, grammar)]).toMatchObject([text, { kind: 'meaning', cost: 0 }]);
      }
    }
  });

  test('the next count is likeliest, then its neighbours, then anything else', () => {
    const tier = tierIn(atFour());
    expect(tier('five')).toBe('expected');
    expect(tier('four')).toBe('near');
    expect(tier('six')).toBe('ahead');
    expect(tier('five and a half')).toBe('near');
    expect(tier('rocker seated')).toBe('near');
    expect(tier('two')).toBe('far');
    expect(tier('nine')).toBe('far');
    expect(tier('thirty')).toBe('remote');
    expect(tier('torqued down')).toBe('not now');
  });

  test('with a carrier word no count is listened for without it', () => {
    const tier = tierIn(atFour('count'));
    expect(tier('count five')).toBe('expected');
    expect(tier('five')).toBeUndefined();
  });

  test('at ‘how far?’ the answers are likeliest', () => {
    const grammar = grammarFor(benchAt('landing').state(), { carrier: null });
    const tier = tierIn(grammar);
    expect(tier('half')).toBe('expected');
    expect(tier('just shy')).toBe('expected');
  });

  test('every weight is written in full and above nought', () => {
    const branches = branchesFor(atFour());
    const weights = [...jsgfOf(branches).matchAll(/\/([^/]+)\//g)].map(
      ([, weight]) => weight ?? '',
    );
    expect(weights).toHaveLength(branches.length);
    for (const weight of weights) {
      expect(weight).toMatch(/^\d+\.\d+$/);
      expect(Number(weight)).toBeGreaterThan(0);
    }
    expect(Math.max(...Object.values(HANDICAP))).toBeLessThan(-Math.log(10 ** -24));
  });
});

describe('the dictionary', () => {
  const general = readFileSync('node_modules/soundswallower/model/en-us/dict.txt', 'utf8');

  test('has phones for every word of every phrase, and little else', () => {
    const lines = trimmedDictionary(general).trim().split('\n');
    const heads = new Set(lines.map((line) => line.split(' ', 1)[0]?.replace(/\(\d\)$/, '')));
    for (const word of vocabulary()) expect(heads).toContain(word);
    expect(heads.size).toBe(vocabulary().size + 39);
  });

  test('a word without phones fails the build by name', () => {
    expect(() => trimmedDictionary('one W AH N\n')).toThrow(/no phones for: .*rocker/);
  });
});
