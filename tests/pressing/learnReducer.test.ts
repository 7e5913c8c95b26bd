import { describe, expect, test } from 'vitest';
import type { LearnState, Meaning, PressInput } from '#pressing';
import { defaultKeymap, learn, startLearning } from '#pressing';
import type { KeyEvent } from './run';

/** Runs events through the learning, waking it when it asks; gives the words it went through. */
function teach(target: Meaning, events: readonly KeyEvent[], timers = true) {
  let state: LearnState = startLearning(target);
  let wakeAt: number | undefined;
  const words: string[] = [state.word];
  const consumed: boolean[] = [];

  function feed(input: PressInput): boolean {
    const result = learn(state, input, defaultKeymap);
    state = result.state;
    wakeAt = result.wakeAt;
    if (words.at(-1) !== state.word) words.push(state.word);
    return result.consumed;
  }

  function wakeUntil(at: number): void {
    while (timers && wakeAt !== undefined && wakeAt < at) feed({ type: 'time', at: wakeAt });
  }

  for (const [at, what, code = ''] of events) {
    wakeUntil(at);
    if (what === 'blur') feed({ type: 'blur', at });
    else if (what === 'look') feed({ type: 'time', at });
    else {
      const type = what === 'up' ? 'up' : 'down';
      consumed.push(feed({ type, code, repeat: what === 'repeat', at }));
    }
  }
  wakeUntil(Number.POSITIVE_INFINITY);
  const learned = state.step === 'done' ? state.learned : null;
  return { state, words, consumed, learned };
}

function tap(at: number, code: string, ms = 150): readonly KeyEvent[] {
  return [
    [at, 'down', code],
    [at + ms, 'up', code],
  ];
}

describe('learning a pedal', () => {
  test('pressed once, then held, it is learned; the words lead through it', () => {
    const { words, learned } = teach('pedal', [...tap(0, 'KeyB'), ...tap(1000, 'KeyB', 1300)]);
    expect(words).toEqual([
      'learn: press once',
      'learn: press and hold',
      'learn: let go',
      'learn: done',
    ]);
    expect(learned).toEqual({ codes: ['KeyB'], sendsKeyUp: true, problems: [] });
  });

  test.each<[string, readonly KeyEvent[], readonly string[], boolean]>([
    [
      'repeats while held',
      [...tap(0, 'KeyB'), [1000, 'down', 'KeyB'], [1500, 'repeat', 'KeyB'], [2200, 'up', 'KeyB']],
      ['KeyB'],
      true,
    ],
    [
      'repeats go on past five seconds: it is still held',
      [
        ...tap(0, 'KeyB'),
        [1000, 'down', 'KeyB'],
        [4000, 'repeat', 'KeyB'],
        [8000, 'repeat', 'KeyB'],
        [9000, 'up', 'KeyB'],
      ],
      ['KeyB'],
      true,
    ],
    [
      'a bounce going down is not an end at once',
      [
        ...tap(0, 'KeyB'),
        [1000, 'down', 'KeyB'],
        [1003, 'up', 'KeyB'],
        [1008, 'down', 'KeyB'],
        [2200, 'up', 'KeyB'],
      ],
      ['KeyB'],
      true,
    ],
    [
      'a bounce of the first press is not the second',
      [
        [0, 'down', 'KeyB'],
        [5, 'up', 'KeyB'],
        [9, 'down', 'KeyB'],
        [150, 'up', 'KeyB'],
        ...tap(1000, 'KeyB', 1200),
      ],
      ['KeyB'],
      true,
    ],
    [
      'no key-up ever comes',
      [
        [0, 'down', 'KeyB'],
        [1000, 'down', 'KeyB'],
      ],
      ['KeyB'],
      false,
    ],
    [
      'no key-up comes before the next press',
      [
        [0, 'down', 'KeyB'],
        [1000, 'down', 'KeyB'],
        [3000, 'down', 'KeyB'],
      ],
      ['KeyB'],
      false,
    ],
    [
      'key-up at once whatever the hold',
      [...tap(0, 'KeyB', 5), ...tap(1000, 'KeyB', 5)],
      ['KeyB'],
      false,
    ],
    [
      'too short a hold is asked for again',
      [...tap(0, 'KeyB'), ...tap(1000, 'KeyB', 200), ...tap(2000, 'KeyB', 700)],
      ['KeyB'],
      true,
    ],
    [
      'two codes in turn',
      [...tap(0, 'F5'), ...tap(1000, 'Escape', 1200), ...tap(3000, 'F5')],
      ['F5', 'Escape'],
      true,
    ],
    [
      'two codes in turn, held too short at first',
      [...tap(0, 'F5'), ...tap(1000, 'Escape', 200), ...tap(2000, 'F5', 1200)],
      ['F5', 'Escape'],
      true,
    ],
    [
      'two codes in turn, ended at once',
      [...tap(0, 'F5', 4), ...tap(1000, 'Escape', 4), ...tap(2000, 'F5', 4)],
      ['F5', 'Escape'],
      false,
    ],
    [
      'two codes in turn, no key-up',
      [
        [0, 'down', 'F5'],
        [1000, 'down', 'Escape'],
        [3000, 'down', 'F5'],
      ],
      ['F5', 'Escape'],
      false,
    ],
    [
      'a slip, then begun again',
      [
        ...tap(0, 'KeyA'),
        ...tap(1000, 'KeyB', 1200),
        ...tap(3000, 'KeyB'),
        ...tap(4000, 'KeyB'),
        ...tap(5000, 'KeyB', 1200),
      ],
      ['KeyB'],
      true,
    ],
    [
      'a blur begins again',
      [...tap(0, 'KeyA'), [500, 'blur'], ...tap(1000, 'KeyB'), ...tap(2000, 'KeyB', 1200)],
      ['KeyB'],
      true,
    ],
  ])('%s', (_, events, codes, sendsKeyUp) => {
    expect(teach('pedal', events).learned).toEqual({ codes, sendsKeyUp, problems: [] });
  });

  test('late timers do not make a held key one without a key-up', () => {
    const events = [...tap(0, 'KeyB'), ...tap(1000, 'KeyB', 9000)];
    expect(teach('pedal', events, false).learned?.sendsKeyUp).toBe(true);
  });

  test('words for a hold too short, for a pair, for a slip and for taps only', () => {
    expect(teach('pedal', [...tap(0, 'KeyB'), ...tap(1000, 'KeyB', 200)]).state.word).toBe(
      'learn: hold longer',
    );
    expect(teach('pedal', [...tap(0, 'F5'), ...tap(1000, 'Escape', 900)]).state.word).toBe(
      'learn: press once more',
    );
    const slip = [...tap(0, 'F5'), ...tap(1000, 'Escape', 900), ...tap(3000, 'KeyQ')];
    expect(teach('pedal', slip).state.word).toBe('learn: different keys, press once');
    expect(
      teach('pedal', [
        [0, 'down', 'KeyB'],
        [1000, 'down', 'KeyB'],
      ]).state.word,
    ).toBe('learn: done, taps only');
  });

  test('what the key would lose is told', () => {
    const { learned } = teach('pedal', [...tap(0, 'PageUp'), ...tap(1000, 'PageUp', 900)]);
    expect(learned?.problems).toEqual([
      'Page up is take back now: as the pedal it no longer will be.',
    ]);
  });

  test('a key that was one more loses nothing as the pedal', () => {
    expect(
      teach('pedal', [...tap(0, 'Enter'), ...tap(1000, 'Enter', 900)]).learned?.problems,
    ).toEqual([]);
  });

  test('the keys pressed are prevented from acting, also held on past the end', () => {
    const events: readonly KeyEvent[] = [
      ...tap(0, 'F5', 4),
      [1000, 'down', 'F5'],
      [1004, 'up', 'F5'],
      [2000, 'repeat', 'F5'],
    ];
    expect(teach('pedal', events).consumed).toEqual([true, true, true, true, true]);
  });

  test('Tab is left alone, and told', () => {
    const { state, consumed } = teach('pedal', [[0, 'down', 'Tab']]);
    expect(consumed).toEqual([false]);
    expect(state).toMatchObject({
      step: 'waiting',
      problem: "Tab can't be used here: choose another key.",
    });
  });
});

describe('learning other keys', () => {
  test('a plain key is learned by its first press', () => {
    expect(teach('zero', [[0, 'down', 'KeyZ']]).learned).toEqual({
      codes: ['KeyZ'],
      sendsKeyUp: true,
      problems: [],
    });
  });

  test('a key set to what it is loses nothing', () => {
    expect(teach('half', [[0, 'down', 'KeyH']]).learned?.problems).toEqual([]);
  });

  test('a plain key that was the pedal is told', () => {
    expect(teach('zero', [[0, 'down', 'PageDown']]).learned?.problems).toEqual([
      'Page down is the pedal now: as zero it no longer will be.',
    ]);
  });

  test('a listening key must be one that can be held', () => {
    expect(teach('listen', [...tap(0, 'KeyL'), ...tap(1000, 'KeyL', 900)]).learned?.codes).toEqual([
      'KeyL',
    ]);
    expect(teach('listen', [...tap(0, 'KeyL', 4), ...tap(1000, 'KeyL', 4)]).state.word).toBe(
      'learn: cannot be held, press once',
    );
    expect(teach('listen', [...tap(0, 'KeyL'), ...tap(1000, 'KeyM', 900)]).state.word).toBe(
      'learn: different keys, press once',
    );
  });
});
