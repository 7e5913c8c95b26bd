import { describe, expect, test } from 'vitest';
import { branchesFor } from '../../../src/hearing/offline/grammar';
import {
  askedFor,
  CHECK_COMMANDS,
  CHECK_NUMBERS,
  checkGrammar,
  noCheck,
  printsOf,
  reduceCheck,
  type SoundCheck,
} from '../../../src/hearing/offline/soundCheck';
import { PRINT_SHAPE } from '../../../src/hearing/offline/wordPrint';

const print = { shape: Array.from({ length: 20 * PRINT_SHAPE }, (_, i) => i % 7) };
const SPEAKING_MS = 1500;

/** A check with its clock; the app's lines take a while to say. */
function rig({ voiceless = false } = {}) {
  let at = 1_000_000;
  let check: SoundCheck = noCheck;
  const began = at;
  const said: unknown[] = [];
  type Input = Parameters<typeof reduceCheck>[1];
  type Untimed<T> = T extends unknown ? Omit<T, 'at'> : never;
  function feed(untimed: Untimed<Input>): void {
    const outcome = reduceCheck(check, { ...untimed, at } as Input);
    check = outcome.check;
    if (outcome.say === null) return;
    said.push(outcome.say);
    if (voiceless) return;
    feed({ type: 'mouth', busy: true });
    at += SPEAKING_MS;
    feed({ type: 'mouth', busy: false });
  }
  const passes = (seconds: number, noiseDb = -60) => {
    for (let i = 0; i < seconds * 4; i += 1) {
      at += 250;
      feed({ type: 'level', noiseDb });
      feed({ type: 'time' });
    }
  };
  const says = (words: string | null, db = -30) => {
    at += 1200;
    feed({ type: 'heard', words, lastedMs: 500, db, print });
  };
  return {
    feed,
    passes,
    says,
    said,
    now: () => check,
    took: () => at - began,
    begin(noiseDb = -60) {
      feed({ type: 'begin' });
      if (voiceless) feed({ type: 'mouth', busy: false });
      passes(4, noiseDb);
    },
    answers(of: (asked: string) => string | null = (asked) => asked, db = -30) {
      for (let i = 0; i < 30; i += 1) {
        const asked = askedFor(check);
        if (asked === null) return;
        says(of(asked), db);
      }
    },
  };
}

describe('the sound check', () => {
  test('asks for quiet, a count to twelve and six commands, and ends good in under a minute', () => {
    const { begin, answers, said, now, took } = rig();
    begin();
    expect(now().phase).toBe('numbers');
    answers();
    expect(said).toEqual([
      'quiet',
      'count',
      ...CHECK_COMMANDS.map((command) => ({ command })),
      'good',
    ]);
    expect(took()).toBeLessThan(60_000);
    expect(printsOf(now())?.words.map(({ words }) => words)).toEqual([
      ...CHECK_NUMBERS,
      ...CHECK_COMMANDS,
    ]);
  });

  test('goes the same way where there is no voice to ask', () => {
    const { begin, answers, now } = rig({ voiceless: true });
    begin();
    answers();
    expect(now().verdict).toBe('good');
  });

  test.each([
    ['a room not far below the voice', -45, 0, 'carrier'],
    ['a room close below the voice', -38, 0, 'pedal'],
    ['a few words misheard', -60, 4, 'carrier'],
    ['most words misheard', -60, 9, 'pedal'],
  ] as const)('%s', (_, noiseDb, misheard, verdict) => {
    const { begin, answers, said, now } = rig();
    begin(noiseDb);
    let left: number = misheard;
    answers((asked) => {
      left -= 1;
      return left >= 0 ? null : asked;
    });
    expect(now().verdict).toBe(verdict);
    expect(said.at(-1)).toBe(verdict);
    expect(printsOf(now()) === null).toBe(verdict === 'pedal');
  });

  test('a number it was not sure of is kept by its place in the count', () => {
    const { begin, answers, now } = rig();
    begin();
    answers((asked) => (asked === 'six' ? null : asked));
    expect(printsOf(now())?.words.map(({ words }) => words)).toContain('six');
  });

  test('a number that was not noticed is passed over, and nothing is guessed of the others', () => {
    const { begin, says, answers, now } = rig();
    begin();
    for (const word of ['one', 'two', 'four', null, 'six']) says(word);
    answers();
    const kept = printsOf(now())?.words.map(({ words }) => words) ?? [];
    expect(kept).not.toContain('three');
    expect(kept).not.toContain('five');
    expect(kept).toContain('twelve');
  });

  test('the app’s own voice is no answer', () => {
    const { begin, feed, now } = rig();
    begin();
    feed({ type: 'mouth', busy: true });
    feed({ type: 'heard', words: 'one', lastedMs: 500, db: -20, print });
    feed({ type: 'mouth', busy: false });
    feed({ type: 'heard', words: 'one', lastedMs: 500, db: -20, print });
    expect(now().heard).toEqual([]);
  });

  test('how far the app’s own voice lags behind its end is measured and kept', () => {
    const { begin, feed, passes, answers, now } = rig();
    begin();
    feed({ type: 'mouth', busy: true });
    passes(1);
    feed({ type: 'mouth', busy: false });
    passes(1);
    // Ended 780 ms after the mouth had, and begun before that.
    feed({ type: 'heard', words: null, lastedMs: 1500, db: -20, print });
    expect(now().heard).toEqual([]);
    answers();
    expect(printsOf(now())?.tailMs).toBe(780);
  });

  test('no answer at all ends it, and says so', () => {
    const { begin, passes, now, said, took } = rig();
    begin();
    passes(20);
    expect(now()).toMatchObject({ phase: 'over', verdict: 'nothing heard' });
    expect(said.at(-1)).toBe('nothing heard');
    expect(took()).toBeLessThan(60_000);
    expect(printsOf(now())).toBeNull();
  });

  test('what is asked for is what is listened for', () => {
    const { begin, says, now } = rig();
    begin();
    for (const number of CHECK_NUMBERS.slice(0, 6)) says(number);
    const branches = branchesFor(checkGrammar(now()));
    const expected = branches.filter(({ tier }) => tier === 'expected').map(({ words }) => words);
    expect(expected).toContain('seven');
    for (const words of expected) expect(words).toMatch(/^seven/);
    for (const command of CHECK_COMMANDS) {
      expect(branches.find(({ words }) => words === command)?.tier).toBe('near');
    }
  });
});
