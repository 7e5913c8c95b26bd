import { describe, expect, test } from 'vitest';
import type { KeyMeaning, Keymap, Meaning } from '#pressing';
import {
  defaultKeymap,
  keymapProblems,
  keyName,
  meaningOf,
  needsStageKey,
  stripOf,
  withKey,
  withListen,
  withPedal,
} from '#pressing';

describe('a key has one meaning', () => {
  test('the keys before anything is learned are in order', () => {
    expect(keymapProblems(defaultKeymap)).toEqual([]);
  });

  test.each<[string, Keymap, readonly string[]]>([
    [
      'a pedal that is also take back',
      { ...defaultKeymap, pedal: { codes: ['PageUp'], sendsKeyUp: true } },
      ["Page up can't be both the pedal and take back."],
    ],
    [
      'a listening key that is also half',
      { ...defaultKeymap, listen: 'KeyH' },
      ["H can't be both listen while held and half a quarter more."],
    ],
    [
      'a listening key that is also the pedal',
      { ...defaultKeymap, listen: 'PageDown' },
      ["Page down can't be both the pedal and listen while held."],
    ],
    [
      'a digit as the pedal',
      { ...defaultKeymap, pedal: { codes: ['Numpad5'], sendsKeyUp: true } },
      ["Number pad 5 can't be both the pedal and the digit 5."],
    ],
    [
      'no pedal',
      { ...defaultKeymap, pedal: { codes: [], sendsKeyUp: true } },
      ['No key is set as the pedal.'],
    ],
    [
      'a key that moves the focus',
      { ...defaultKeymap, listen: 'Tab' },
      ["Tab can't be used here: choose another key."],
    ],
  ])('%s is told', (_, keymap, expected) => {
    expect(keymapProblems(keymap)).toEqual(expected);
  });

  test('a pedal that is also one more is in order: a tap is one more', () => {
    const keymap = { ...defaultKeymap, pedal: { codes: ['Enter'], sendsKeyUp: true } };
    expect(keymapProblems(keymap)).toEqual([]);
    expect(meaningOf(keymap, 'Enter')).toBe('pedal');
  });

  test.each<[string, Keymap, string, Meaning | null]>([
    [
      'a learned pedal',
      withPedal(defaultKeymap, { codes: ['PageUp'], sendsKeyUp: true }),
      'PageUp',
      'pedal',
    ],
    [
      'the old pedal',
      withPedal(defaultKeymap, { codes: ['PageUp'], sendsKeyUp: true }),
      'PageDown',
      'one more',
    ],
    ['a learned listening key', withListen(defaultKeymap, 'KeyH'), 'KeyH', 'listen'],
    ['a learned key', withKey(defaultKeymap, 'Space', 'zero'), 'Space', 'zero'],
    [
      'the pedal set to something else',
      withKey(defaultKeymap, 'PageDown', 'zero'),
      'PageDown',
      'zero',
    ],
    [
      'the listening key set to something else',
      withKey(withListen(defaultKeymap, 'KeyL'), 'KeyL', 'zero'),
      'KeyL',
      'zero',
    ],
    ['a key never set', defaultKeymap, 'KeyQ', null],
  ])('%s', (_, keymap, code, expected) => {
    expect(meaningOf(keymap, code)).toBe(expected);
  });

  test('learning takes the key from what it meant', () => {
    const keymap = withListen(
      withPedal(defaultKeymap, { codes: ['PageUp'], sendsKeyUp: true }),
      'KeyH',
    );
    expect(keymapProblems(keymap)).toEqual([]);
    expect(meaningOf(withPedal(keymap, { codes: ['F5'], sendsKeyUp: true }), 'PageUp')).toBeNull();
  });

  test('a keymap is plain data', () => {
    const keymap = withListen(defaultKeymap, 'KeyL');
    expect(JSON.parse(JSON.stringify(keymap))).toEqual(keymap);
  });
});

describe('a pedal that can only be tapped', () => {
  const tapsOnly = withPedal(defaultKeymap, { codes: ['KeyB'], sendsKeyUp: false });

  test.each<[string, Keymap, boolean]>([
    ['needs a key for the next stage', tapsOnly, true],
    ['has one', withKey(tapsOnly, 'KeyN', 'next stage'), false],
    ['is not the default', defaultKeymap, false],
  ])('%s', (_, keymap, expected) => {
    expect(needsStageKey(keymap)).toBe(expected);
  });
});

describe('key names', () => {
  test.each([
    ['PageDown', 'Page down'],
    ['NumpadAdd', 'Number pad +'],
    ['NumpadDecimal', 'Number pad .'],
    ['NumpadEnter', 'Number pad enter'],
    ['Numpad7', 'Number pad 7'],
    ['KeyH', 'H'],
    ['Digit4', '4'],
    ['F5', 'F5'],
    ['ArrowRight', 'Right arrow'],
    ['Space', 'Space'],
    ['Backspace', 'Backspace'],
    ['Period', 'Full stop'],
    ['AudioVolumeUp', 'Audio volume up'],
    ['Gamepad1', 'Gamepad button 1'],
    ['', 'Unnamed key'],
  ])('%s is %s', (code, expected) => {
    expect(keyName(code)).toBe(expected);
  });
});

describe('the key strip', () => {
  test('before anything is learned', () => {
    expect(stripOf(defaultKeymap).map(({ meaning, label }) => [meaning, label])).toEqual([
      ['pedal', 'Page down'],
      ['one more', 'Space, Enter, Number pad enter, Right arrow'],
      ['half', 'Number pad ., H'],
      ['number', 'Number pad 1 to 9, 1 to 9'],
      ['zero', 'Number pad 0, 0'],
      ['seat and accept', 'Number pad +'],
      ['take back', 'Number pad −, Backspace, Page up, Left arrow'],
      ['say again', 'Number pad ×'],
      ['ear', 'Number pad ÷'],
    ]);
  });

  test('what is learned stands on it, and every code once', () => {
    const keymap = withKey(
      withListen(withPedal(defaultKeymap, { codes: ['F5', 'Escape'], sendsKeyUp: true }), 'KeyL'),
      'Numpad5',
      'next stage' satisfies KeyMeaning,
    );
    const strip = stripOf(keymap);
    const label = (meaning: string) => strip.find((keys) => keys.meaning === meaning)?.label;
    expect(label('pedal')).toBe('F5, Escape');
    expect(label('listen')).toBe('L');
    expect(label('next stage')).toBe('Number pad 5');
    expect(label('number')).toMatch(/^1 to 9, Number pad 1, /);
    const codes = strip.flatMap((keys) => keys.codes);
    expect(new Set(codes).size).toBe(codes.length);
    expect(codes.length).toBe(Object.keys(keymap.keys).length + 3);
  });
});
