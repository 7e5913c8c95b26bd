import { describe, expect, test } from 'vitest';
import type { Keymap } from '#pressing';
import { defaultKeymap, withKey, withListen } from '#pressing';
import type { KeyEvent } from './run';
import { pressed, run } from './run';

const listening: Keymap = withListen(defaultKeymap, 'KeyL');

describe('keys that act as they go down', () => {
  test.each([
    ['Space', 'step'],
    ['Enter', 'step'],
    ['NumpadEnter', 'step'],
    ['ArrowRight', 'step'],
    ['NumpadDecimal', 'half'],
    ['KeyH', 'half'],
    ['NumpadSubtract', 'take back'],
    ['Backspace', 'take back'],
    ['PageUp', 'take back'],
    ['ArrowLeft', 'take back'],
    ['Numpad0', 'zero'],
    ['Digit0', 'zero'],
    ['NumpadAdd', 'seat and accept'],
    ['NumpadMultiply', 'say again'],
    ['NumpadDivide', 'ear'],
  ])('%s is %s', (code, expected) => {
    const ran = run([
      [0, 'down', code],
      [900, 'up', code],
    ]);
    expect(ran.presses).toEqual([{ at: 0, press: expected }]);
    expect(ran.consumed).toEqual([true, true]);
    expect(ran.wakeAt).toBeUndefined();
  });

  test('a key set to the next stage asks for it, for pedals that can only be tapped', () => {
    const keymap = withKey(defaultKeymap, 'KeyN', 'next stage');
    expect(pressed([[0, 'down', 'KeyN']], { keymap })).toEqual(['next stage']);
  });

  test.each<[string, readonly KeyEvent[], readonly string[]]>([
    [
      'repeats are ignored',
      [
        [0, 'down', 'Space'],
        [500, 'repeat', 'Space'],
      ],
      ['step'],
    ],
    [
      'a bounce within 80 ms is the same press',
      [
        [0, 'down', 'Space'],
        [4, 'up', 'Space'],
        [79, 'down', 'Space'],
      ],
      ['step'],
    ],
    [
      'a bounce coming up is the same press',
      [
        [0, 'down', 'Space'],
        [400, 'up', 'Space'],
        [405, 'down', 'Space'],
      ],
      ['step'],
    ],
    [
      'bounces at both ends of a long press are the same press',
      [
        [0, 'down', 'Space'],
        [2, 'up', 'Space'],
        [4, 'down', 'Space'],
        [600, 'up', 'Space'],
        [603, 'down', 'Space'],
      ],
      ['step'],
    ],
    [
      '80 ms after the last edge is a new press',
      [
        [0, 'down', 'Space'],
        [60, 'up', 'Space'],
        [140, 'down', 'Space'],
      ],
      ['step', 'step'],
    ],
    [
      'two keys are not each other’s bounce',
      [
        [0, 'down', 'Space'],
        [10, 'down', 'Enter'],
      ],
      ['step', 'step'],
    ],
    [
      'a lost key-up does not lose the next press',
      [
        [0, 'down', 'Space'],
        [1000, 'down', 'Space'],
      ],
      ['step', 'step'],
    ],
    ['a key-up whose down went elsewhere is nothing', [[0, 'up', 'Space']], []],
    ['a repeat whose down went elsewhere is nothing', [[0, 'repeat', 'Space']], []],
    ['a key without a meaning is nothing', [[0, 'down', 'KeyQ']], []],
    ['a code that is also a property of objects is nothing', [[0, 'down', 'constructor']], []],
  ])('%s', (_, events, expected) => {
    expect(pressed(events)).toEqual(expected);
  });
});

describe('what is prevented', () => {
  test.each([
    'F5',
    'PageDown',
    'PageUp',
    'Space',
    'ArrowUp',
    'ArrowDown',
    'ArrowLeft',
    'ArrowRight',
  ])('%s, also when it repeats', (code) => {
    expect(
      run([
        [0, 'down', code],
        [500, 'repeat', code],
      ]).consumed,
    ).toEqual([true, true]);
  });

  test('a bounce of a key is prevented as the key is', () => {
    expect(
      run([
        [0, 'down', 'Space'],
        [5, 'up', 'Space'],
        [9, 'down', 'Space'],
        [12, 'up', 'Space'],
      ]).consumed,
    ).toEqual([true, true, true, true]);
  });

  test('a key without a meaning is not', () => {
    expect(
      run([
        [0, 'down', 'KeyQ'],
        [50, 'up', 'KeyQ'],
      ]).consumed,
    ).toEqual([false, false]);
  });
});

describe('switched off', () => {
  test('nothing counts and nothing is prevented', () => {
    const ran = run(
      [
        [0, 'down', 'Space'],
        [200, 'down', 'F5'],
        [400, 'down', 'Numpad4'],
      ],
      {
        active: () => false,
      },
    );
    expect(ran.presses).toEqual([]);
    expect(ran.consumed).toEqual([false, false, false]);
  });

  test('what was held or waiting is cancelled, and works again once on', () => {
    const events: readonly KeyEvent[] = [
      [0, 'down', 'PageDown'],
      [50, 'down', 'Numpad7'],
      [700, 'up', 'PageDown'],
      [2000, 'down', 'Space'],
    ];
    const ran = run(events, { active: (at) => at < 100 || at > 1000 });
    expect(ran.presses).toEqual([{ at: 2000, press: 'step' }]);
  });

  test('a hold begun while off is not a hold', () => {
    const events: readonly KeyEvent[] = [
      [0, 'down', 'PageDown'],
      [900, 'up', 'PageDown'],
    ];
    expect(pressed(events, { active: (at) => at > 500 })).toEqual([]);
  });
});

describe('listen while held', () => {
  test.each<[string, readonly KeyEvent[], readonly (readonly [number, string])[]]>([
    [
      'on with the key, off after it',
      [
        [0, 'down', 'KeyL'],
        [900, 'up', 'KeyL'],
      ],
      [
        [0, 'listen on'],
        [980, 'listen off'],
      ],
    ],
    [
      'repeats change nothing',
      [
        [0, 'down', 'KeyL'],
        [500, 'repeat', 'KeyL'],
        [900, 'up', 'KeyL'],
      ],
      [
        [0, 'listen on'],
        [980, 'listen off'],
      ],
    ],
    [
      'a bounce does not shut the ear',
      [
        [0, 'down', 'KeyL'],
        [4, 'up', 'KeyL'],
        [9, 'down', 'KeyL'],
        [900, 'up', 'KeyL'],
      ],
      [
        [0, 'listen on'],
        [980, 'listen off'],
      ],
    ],
    [
      'a flicker later on does not shut the ear',
      [
        [0, 'down', 'KeyL'],
        [500, 'up', 'KeyL'],
        [520, 'down', 'KeyL'],
        [900, 'up', 'KeyL'],
      ],
      [
        [0, 'listen on'],
        [980, 'listen off'],
      ],
    ],
    [
      'blur shuts it',
      [
        [0, 'down', 'KeyL'],
        [300, 'blur'],
        [900, 'up', 'KeyL'],
      ],
      [
        [0, 'listen on'],
        [300, 'listen off'],
      ],
    ],
    [
      'a lost key-up is made good by the next press',
      [
        [0, 'down', 'KeyL'],
        [2000, 'down', 'KeyL'],
        [2500, 'up', 'KeyL'],
      ],
      [
        [0, 'listen on'],
        [2580, 'listen off'],
      ],
    ],
  ])('%s', (_, events, expected) => {
    const told = run(events, { keymap: listening }).presses.map(({ at, press }) => [at, press]);
    expect(told).toEqual(expected);
  });

  test('switching the keys off shuts it', () => {
    const events: readonly KeyEvent[] = [
      [0, 'down', 'KeyL'],
      [500, 'look'],
    ];
    expect(pressed(events, { keymap: listening, active: (at) => at < 400 })).toEqual([
      'listen on',
      'listen off',
    ]);
  });
});
