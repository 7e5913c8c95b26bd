import { describe, expect, test } from 'vitest';
import type { Keymap } from '#pressing';
import { defaultKeymap, withPedal } from '#pressing';
import type { KeyEvent } from './run';
import { pressed, run } from './run';

const P = 'PageDown';
const learned: Keymap = withPedal(defaultKeymap, { codes: ['F5', 'Escape'], sendsKeyUp: true });
const tapsOnly: Keymap = withPedal(defaultKeymap, { codes: ['KeyB'], sendsKeyUp: false });

describe('one pedal', () => {
  test.each<[string, readonly KeyEvent[], readonly string[]]>([
    ['down alone does nothing', [[0, 'down', P]], []],
    [
      'a tap is one more, as it comes up',
      [
        [0, 'down', P],
        [150, 'up', P],
      ],
      ['step'],
    ],
    [
      'just short of 0.6 s is a tap',
      [
        [0, 'down', P],
        [599, 'up', P],
      ],
      ['step'],
    ],
    [
      '0.6 s is the next stage',
      [
        [0, 'down', P],
        [600, 'up', P],
      ],
      ['next stage'],
    ],
    [
      'just short of 1.5 s is the next stage',
      [
        [0, 'down', P],
        [1499, 'up', P],
      ],
      ['next stage'],
    ],
    [
      '1.5 s is take back',
      [
        [0, 'down', P],
        [1500, 'up', P],
      ],
      ['take back'],
    ],
    [
      '3 s is still take back',
      [
        [0, 'down', P],
        [3000, 'up', P],
      ],
      ['take back'],
    ],
    [
      'past 3 s is nothing',
      [
        [0, 'down', P],
        [3000.5, 'up', P],
      ],
      [],
    ],
    [
      'long past 3 s is nothing',
      [
        [0, 'down', P],
        [9000, 'up', P],
      ],
      [],
    ],
    [
      'repeats while held are ignored',
      [
        [0, 'down', P],
        [500, 'repeat', P],
        [530, 'repeat', P],
        [700, 'up', P],
      ],
      ['next stage'],
    ],
    [
      'a second tap counts again',
      [
        [0, 'down', P],
        [100, 'up', P],
        [300, 'down', P],
        [400, 'up', P],
      ],
      ['step', 'step'],
    ],
    ['a key-up without a down is nothing', [[0, 'up', P]], []],
    [
      'a bounce going down does not cut the hold',
      [
        [0, 'down', P],
        [3, 'up', P],
        [6, 'down', P],
        [700, 'up', P],
      ],
      ['next stage'],
    ],
    [
      'a bounce coming up is not a second tap',
      [
        [0, 'down', P],
        [200, 'up', P],
        [205, 'down', P],
        [210, 'up', P],
      ],
      ['step'],
    ],
    [
      'bounces at both ends make one press',
      [
        [0, 'down', P],
        [3, 'up', P],
        [6, 'down', P],
        [200, 'up', P],
        [204, 'down', P],
        [208, 'up', P],
      ],
      ['step'],
    ],
    [
      'a very short tap settles and counts',
      [
        [0, 'down', P],
        [20, 'up', P],
      ],
      ['step'],
    ],
    [
      'blur cancels the hold',
      [
        [0, 'down', P],
        [700, 'blur'],
        [800, 'up', P],
      ],
      [],
    ],
    [
      'repeats after a blur do not start a hold',
      [
        [0, 'down', P],
        [700, 'blur'],
        [800, 'repeat', P],
        [900, 'up', P],
      ],
      [],
    ],
    [
      'after a blur the next press works',
      [
        [0, 'down', P],
        [700, 'blur'],
        [2000, 'down', P],
        [2100, 'up', P],
      ],
      ['step'],
    ],
    [
      'a lost key-up: the old hold does nothing, the new one works',
      [
        [0, 'down', P],
        [2000, 'down', P],
        [2100, 'up', P],
      ],
      ['step'],
    ],
  ])('%s', (_, events, expected) => {
    expect(pressed(events)).toEqual(expected);
  });

  test('a tone as each threshold is passed, and the end told', () => {
    expect(
      run([
        [0, 'down', P],
        [4000, 'up', P],
      ]).cues,
    ).toEqual([
      { at: 600, press: 'next stage' },
      { at: 1500, press: 'take back' },
      { at: 3001, press: 'nothing' },
      { at: 4000, press: 'hold ended' },
    ]);
  });

  test('a tap has no tones', () => {
    expect(
      run([
        [0, 'down', P],
        [300, 'up', P],
      ]).cues,
    ).toEqual([]);
  });

  test('a blur in a hold tells that it ended', () => {
    expect(
      run([
        [0, 'down', P],
        [700, 'blur'],
      ]).cues,
    ).toEqual([
      { at: 600, press: 'next stage' },
      { at: 700, press: 'hold ended' },
    ]);
  });

  test('late timers: the time held decides, and no tone comes after letting go', () => {
    const ran = run(
      [
        [0, 'down', P],
        [700, 'up', P],
      ],
      { timers: false },
    );
    expect(ran.presses).toEqual([{ at: 700, press: 'next stage' }]);
    expect(ran.cues).toEqual([]);
  });

  test('a timer that ran before an earlier key-up was told does not change what it was', () => {
    expect(
      pressed([
        [0, 'down', P],
        [610, 'look'],
        [590, 'up', P],
      ]),
    ).toEqual(['step']);
  });

  test('another key while the pedal is held acts, and the hold goes on', () => {
    expect(
      pressed([
        [0, 'down', P],
        [200, 'down', 'Space'],
        [260, 'up', 'Space'],
        [700, 'up', P],
      ]),
    ).toEqual(['step', 'next stage']);
  });

  test('once another pedal is learned, Page down is one more as it goes down', () => {
    const ran = run(
      [
        [0, 'down', P],
        [900, 'up', P],
      ],
      { keymap: learned },
    );
    expect(ran.presses).toEqual([{ at: 0, press: 'step' }]);
  });

  test.each(['F5', 'Escape'])('of two codes sent in turn, %s is the pedal', (code) => {
    const ran = run(
      [
        [0, 'down', code],
        [700, 'up', code],
      ],
      { keymap: learned },
    );
    expect(ran.presses).toEqual([{ at: 700, press: 'next stage' }]);
  });

  test('two codes in turn are debounced as one pedal', () => {
    const events: readonly KeyEvent[] = [
      [0, 'down', 'F5'],
      [200, 'up', 'F5'],
      [230, 'down', 'Escape'],
      [260, 'up', 'Escape'],
    ];
    expect(pressed(events, { keymap: learned })).toEqual(['step']);
  });

  test('a pedal that sends no key-up taps as it goes down and has no hold', () => {
    const ran = run(
      [
        [0, 'down', 'KeyB'],
        [2000, 'down', 'KeyB'],
      ],
      { keymap: tapsOnly },
    );
    expect(ran.presses).toEqual([
      { at: 0, press: 'step' },
      { at: 2000, press: 'step' },
    ]);
    expect(ran.cues).toEqual([]);
    expect(ran.wakeAt).toBeUndefined();
  });

  test('a game pad button takes the same road as a key', () => {
    const keymap = withPedal(defaultKeymap, { codes: ['Gamepad1'], sendsKeyUp: true });
    expect(
      pressed(
        [
          [0, 'down', 'Gamepad1'],
          [1600, 'up', 'Gamepad1'],
        ],
        { keymap },
      ),
    ).toEqual(['take back']);
  });
});
