import { describe, expect, test } from 'vitest';
import type { KeyEvent, World } from './run';
import { run } from './run';

type Row = readonly [
  title: string,
  count: number,
  events: readonly KeyEvent[],
  expected: readonly (readonly [number, string])[],
];

function digits(row: 'Numpad' | 'Digit', ...typed: readonly (readonly [number, number])[]) {
  return typed.map(([at, digit]): KeyEvent => [at, 'down', `${row}${digit}`]);
}

const rows = (row: 'Numpad' | 'Digit'): readonly Row[] => [
  ['within the step it is taken at once', 3, digits(row, [0, 4]), [[0, 'number 4']]],
  ['the present count is answered at once', 3, digits(row, [0, 3]), [[0, 'number 3']]],
  ['further on it waits, then stands as it is', 3, digits(row, [0, 8]), [[700, 'number 8']]],
  ['going back it waits, then stands as it is', 8, digits(row, [0, 2]), [[700, 'number 2']]],
  ['1, 0 at eight is ten', 8, digits(row, [0, 1], [300, 0]), [[300, 'number 10']]],
  ['1, 0 at nine is ten', 9, digits(row, [0, 1], [300, 0]), [[300, 'number 10']]],
  ['1, 1 at ten is eleven', 10, digits(row, [0, 1], [300, 1]), [[300, 'number 11']]],
  ['a second digit in the last moment', 8, digits(row, [0, 1], [699, 0]), [[699, 'number 10']]],
  [
    'too late it is a digit of its own',
    8,
    digits(row, [0, 1], [701, 9]),
    [
      [700, 'number 1'],
      [701, 'number 9'],
    ],
  ],
  [
    'nought too late is zero',
    8,
    digits(row, [0, 1], [701, 0]),
    [
      [700, 'number 1'],
      [701, 'zero'],
    ],
  ],
  [
    '1, 0 at none: taken as one, then ten to be asked back, never zero',
    0,
    digits(row, [0, 1], [300, 0]),
    [
      [0, 'number 1'],
      [300, 'number 10'],
    ],
  ],
  [
    '1, then long after 0, is one and zero',
    0,
    digits(row, [0, 1], [700, 0]),
    [
      [0, 'number 1'],
      [700, 'zero'],
    ],
  ],
  [
    '1, 2 called fast are two counts',
    0,
    digits(row, [0, 1], [300, 2], [600, 3]),
    [
      [0, 'number 1'],
      [300, 'number 2'],
      [600, 'number 3'],
    ],
  ],
  [
    '1, 5 at none is fifteen to be asked back',
    0,
    digits(row, [0, 1], [300, 5]),
    [
      [0, 'number 1'],
      [300, 'number 15'],
    ],
  ],
  [
    '9, then 1, 0 called fast is nine and ten',
    8,
    digits(row, [0, 9], [300, 1], [600, 0]),
    [
      [0, 'number 9'],
      [600, 'number 10'],
    ],
  ],
  [
    'a third digit begins anew',
    9,
    digits(row, [0, 1], [200, 0], [400, 1], [600, 1]),
    [
      [200, 'number 10'],
      [600, 'number 11'],
    ],
  ],
  [
    'another key settles a waiting digit first',
    3,
    [
      [0, 'down', `${row}8`],
      [200, 'down', 'Space'],
    ],
    [
      [200, 'number 8'],
      [200, 'step'],
    ],
  ],
  [
    'the pedal settles it as it goes down',
    3,
    [
      [0, 'down', `${row}8`],
      [200, 'down', 'PageDown'],
      [350, 'up', 'PageDown'],
    ],
    [
      [200, 'number 8'],
      [350, 'step'],
    ],
  ],
  [
    'blur drops it',
    3,
    [
      [0, 'down', `${row}8`],
      [200, 'blur'],
    ],
    [],
  ],
  [
    'repeats are no second digit',
    3,
    [
      [0, 'down', `${row}8`],
      [500, 'repeat', `${row}8`],
    ],
    [[700, 'number 8']],
  ],
  [
    'a bounce is no second digit',
    8,
    [
      [0, 'down', `${row}2`],
      [3, 'up', `${row}2`],
      [8, 'down', `${row}2`],
    ],
    [[700, 'number 2']],
  ],
  ['the same digit twice is two digits', 20, digits(row, [0, 2], [300, 2]), [[300, 'number 22']]],
];

describe.each(['Numpad', 'Digit'] as const)('digits, %s', (row) => {
  test.each(rows(row))('%s', (_, count, events, expected) => {
    const told = run(events, { count }).presses.map(({ at, press }) => [at, press]);
    expect(told).toEqual(expected);
  });
});

test('pad and top row make one number together', () => {
  const ran = run(
    [
      [0, 'down', 'Numpad1'],
      [200, 'down', 'Digit2'],
    ],
    { count: 9 },
  );
  expect(ran.presses).toEqual([{ at: 200, press: 'number 12' }]);
});

test('a digit whose timer ran late is given before the key that follows it', () => {
  const world: World = { count: 3, timers: false };
  const ran = run(
    [
      [0, 'down', 'Numpad8'],
      [900, 'down', 'Numpad0'],
    ],
    world,
  );
  expect(ran.presses.map((told) => told.press)).toEqual(['number 8', 'zero']);
});
