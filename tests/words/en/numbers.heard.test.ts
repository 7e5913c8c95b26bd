import { describe, expect, test } from 'vitest';
import type { Turn48 } from '#valvetrain';
import {
  hearClock,
  heardCount48,
  hearLength,
  hearNumber,
  hearWhole,
  NUMBER_HOMOPHONES,
} from '../../../src/words/en/numbers';

/** A heard number in one line: '4', '4 1/2', '1/4 turn'. */
function inShort(text: string): string | undefined {
  const heard = hearNumber(text);
  if (heard === undefined) {
    return undefined;
  }
  const { num, den } = heard.fraction;
  const part = num === 0 ? '' : `${num}/${den}`;
  const whole = heard.whole === 0 && num > 0 ? '' : String(heard.whole);
  return [whole, part, heard.unit ?? ''].filter((piece) => piece !== '').join(' ');
}

describe('counts as recognisers write them', () => {
  test.each([
    ['5', '5'],
    ['five', '5'],
    ['Five.', '5'],
    ['FIVE', '5'],
    ['five...', '5'],
    ['zero', '0'],
    ['0', '0'],
    ['for', '4'],
    ['to', '2'],
    ['too', '2'],
    ['won', '1'],
    ['ate', '8'],
    ['tree', '3'],
    ['sics', '6'],
    ['twenty-one', '21'],
    ['Twenty one', '21'],
    ['twenty-too', '22'],
    ['forty', '40'],
    ['5 1/2', '5 1/2'],
    ['5-1/2', '5 1/2'],
    ['5½', '5 1/2'],
    ['5 ½', '5 1/2'],
    ['4¾', '4 3/4'],
    ['4 1⁄3', '4 1/3'],
    ['five and a half', '5 1/2'],
    ['five and half', '5 1/2'],
    ['5 and a half', '5 1/2'],
    ['5 and 1/2', '5 1/2'],
    ['five an a half', '5 1/2'],
    ['for and a half', '4 1/2'],
    ['to and a haf', '2 1/2'],
    ['four and a quarter', '4 1/4'],
    ['four and a quota', '4 1/4'],
    ['four and one quarter', '4 1/4'],
    ['four and three quarters', '4 3/4'],
    ['four and three-quarters', '4 3/4'],
    ['four and a third', '4 1/3'],
    ['four and two thirds', '4 2/3'],
    ['four and 2/3', '4 2/3'],
    ['four and a 12th', '4 1/12'],
    ['1.5', '1 1/2'],
    ['1.25', '1 1/4'],
    ['1.75', '1 3/4'],
    ['1.33', '1 1/3'],
    ['1.67', '1 2/3'],
    ['4.0', '4'],
    ['one point five', '1 1/2'],
    ['one point seven five', '1 3/4'],
    ['one point twenty-five', '1 1/4'],
    ['half', '1/2'],
    ['a half', '1/2'],
    ['one half', '1/2'],
    ['1/2', '1/2'],
    ['½', '1/2'],
    ['two thirds', '2/3'],
    ['a quarter', '1 quarter'],
    ['quarter', '1 quarter'],
    ['one quarter', '1 quarter'],
    ['1/4', '1 quarter'],
    ['three quarters', '3 quarter'],
    ['3/4', '3 quarter'],
    ['¾', '3 quarter'],
    ['four quarters', '4 quarter'],
    ['for quarters', '4 quarter'],
    ['4 quarters', '4 quarter'],
    ['five and a half quarters', '5 1/2 quarter'],
    ['half a quarter', '1/2 quarter'],
    ['half quarter', '1/2 quarter'],
    ['a quarter of a quarter', '1/4 quarter'],
    ['1/4 of a quarter', '1/4 quarter'],
    ['three quarters of a quarter', '3/4 quarter'],
    ['two thirds of a quarter', '2/3 quarter'],
    ['quarter turn', '1/4 turn'],
    ['a quarter turn', '1/4 turn'],
    ['1/4 turn', '1/4 turn'],
    ['half turn', '1/2 turn'],
    ['half a turn', '1/2 turn'],
    ['half of a turn', '1/2 turn'],
    ['three quarters of a turn', '3/4 turn'],
    ['3/4 of a turn', '3/4 turn'],
    ['three quarter turn', '3/4 turn'],
    ['five quarter turns', '1 1/4 turn'],
    ['full turn', '1 turn'],
    ['a full turn', '1 turn'],
    ['one turn', '1 turn'],
    ['two turns', '2 turn'],
    ['to turns', '2 turn'],
    ['two terns', '2 turn'],
    ['two full turns', '2 turn'],
    ['one and a half turns', '1 1/2 turn'],
    ['1 1/2 turns', '1 1/2 turn'],
    ['1.5 turns', '1 1/2 turn'],
    ['one and a quarter turns', '1 1/4 turn'],
    ['four strokes', '4 stroke'],
    ['five and a half strokes', '5 1/2 stroke'],
  ])('"%s" is %s', (text, short) => {
    expect(inShort(text)).toBe(short);
  });

  test.each([
    '',
    ' ',
    '.',
    'and',
    'a',
    'oh',
    'o',
    'free',
    'sex',
    'forty-one',
    '41',
    'forty and a half',
    'one oh five',
    '117',
    'five five',
    'twenty zero',
    '1.3',
    '4.30',
    '1/5',
    '0/4',
    '4/0',
    '5 5/4',
    'one point',
    'one point banana five',
    'point five',
    'four and',
    'and a half',
    'four and a',
    'four and five',
    'for a half',
    'to turn',
    'going to turn',
    'turn',
    'turns',
    'of a turn',
    'half past one',
    'quarter to one',
    "four o'clock",
    '4:00',
    '-5',
    'minus five',
    'half of',
    'quarter of a',
    'what for',
    'that one is for you',
    'two or three',
    'NaN',
    'undefined',
    'Infinity',
    '1e1',
    '５',
  ])('"%s" is no count', (text) => {
    expect(hearNumber(text)).toBeUndefined();
  });

  test('every homophone is heard as the number it stands for', () => {
    for (const { written, said } of NUMBER_HOMOPHONES) {
      expect(hearWhole(said)).toBeDefined();
      expect(hearWhole(written)).toBe(hearWhole(said));
      expect(hearNumber(written)).toEqual(hearNumber(said));
    }
    expect(NUMBER_HOMOPHONES.length).toBe(15);
  });

  test('a heard number in 48ths: the unit named, else the unit called', () => {
    const in48ths = (text: string, unit48: number) => {
      const heard = hearNumber(text);
      return heard === undefined ? undefined : heardCount48(heard, unit48 as Turn48);
    };
    expect(in48ths('four and a half', 12)).toBe(54);
    expect(in48ths('four and a half', 48)).toBe(216);
    expect(in48ths('four quarters', 48)).toBe(48);
    expect(in48ths('half a turn', 12)).toBe(24);
    expect(in48ths('four', 8)).toBe(32);
    expect(in48ths('four strokes', 8)).toBe(32);
    expect(in48ths('four and a half strokes', 4)).toBe(18);
    expect(in48ths('four and an eighth', 12)).toBeUndefined();
  });
});

describe('clock hours as recognisers write them', () => {
  test.each([
    ["4 o'clock", 4, 0, true],
    ['4 o’clock', 4, 0, true],
    ["4o'clock", 4, 0, true],
    ["four o'clock", 4, 0, true],
    ["for o'clock", 4, 0, true],
    ['four o clock', 4, 0, true],
    ['Four oclock.', 4, 0, true],
    ['4:00', 4, 0, true],
    ['16:00', 4, 0, true],
    ['04:30', 4, 30, true],
    ['0:15', 12, 15, true],
    ['12:45', 12, 45, true],
    ['23:45', 11, 45, true],
    ['4:00 PM', 4, 0, true],
    ['4 p.m.', 4, 0, true],
    ['half past one', 1, 30, true],
    ['Half past 1', 1, 30, true],
    ['half passed won', 1, 30, true],
    ["half past one o'clock", 1, 30, true],
    ['1/2 past 12', 12, 30, true],
    ['½ past 12', 12, 30, true],
    ['quarter past twelve', 12, 15, true],
    ['a quarter past twelve', 12, 15, true],
    ['quarter to one', 12, 45, true],
    ['a quarter to one', 12, 45, true],
    ['quarter two one', 12, 45, true],
    ['quarter to to', 1, 45, true],
    ['1/4 to 10', 9, 45, true],
    ['quarter to twelve', 11, 45, true],
    ['twelve', 12, 0, false],
    ['12', 12, 0, false],
    ['for', 4, 0, false],
    ['one thirty', 1, 30, false],
    ['one forty-five', 1, 45, false],
    ['4.30', 4, 30, false],
  ] as const)('"%s" is %i:%i', (text, hour, minutes, explicit) => {
    expect(hearClock(text)).toEqual({ hour, minutes, explicit });
  });

  test.each([
    '',
    "o'clock",
    'pm',
    'i am four',
    'thirteen',
    '0',
    'zero',
    '16',
    '24:00',
    '4:20',
    '4:60',
    '4:5',
    '99:00',
    'half past',
    'half past thirteen',
    'half to one',
    'quarter of one',
    'half one',
    'twenty past four',
    'four zero',
    'four and a half',
    'quarter turn',
    'to one',
    'round the clock',
    'NaN:00',
  ])('"%s" is no clock hour', (text) => {
    expect(hearClock(text)).toBeUndefined();
  });
});

describe('lengths as recognisers write them', () => {
  test.each([
    ['eight one seventy-five', 8175],
    ['Eight, one seventy five.', 8175],
    ['ate one seventy-five', 8175],
    ['8 1 75', 8175],
    ['8 175', 8175],
    ['8,175', 8175],
    ['8175', 8175],
    ['8.175', 8175],
    ['8.175"', 8175],
    ['8.175 in', 8175],
    ['8.1750', 8175],
    ['8-1-7-5', 8175],
    ['81 75', 8175],
    ['8 1 70 5', 8175],
    ['eight one seven five', 8175],
    ['eight point one seven five', 8175],
    ['eight point one seventy-five', 8175],
    ['eight one hundred and seventy-five', 8175],
    ['eight one hundred seventy-five', 8175],
    ['eight a hundred and seventy-five', 8175],
    ['eight one seventy-five inches', 8175],
    ['eight one fifty', 8150],
    ['eight won fifty', 8150],
    ['8.15', 8150],
    ['eight point one five', 8150],
    ['eight one ten', 8110],
    ['eight one oh five', 8105],
    ['eight one hundred', 8100],
    ['eight even', 8000],
    ['8 even', 8000],
    ['eight flat', 8000],
    ['eight inches', 8000],
    ['8.0', 8000],
    ['eight oh five oh', 8050],
    ['8 0 5 0', 8050],
    ['8050', 8050],
    ['8 050', 8050],
    ['eight o fifty', 8050],
    ['eight nought five nought', 8050],
    ['eight oh seventy five', 8075],
    ['eight zero seven five', 8075],
    ['eight oh oh five', 8005],
    ['eight point oh five', 8050],
    ['seven four hundred', 7400],
    ['seven for hundred', 7400],
    ['seven three seventy-five', 7375],
    ['eleven one ten', 11110],
    ['ten one fifty', 10150],
    ['10150', 10150],
    ['10.15', 10150],
    ['12 150', 12150],
  ])('"%s" is %i thou', (text, thou) => {
    expect(hearLength(text)).toBe((thou * 254) / 10_000);
    expect(hearLength(text)).toBeCloseTo(thou * 0.0254, 9);
  });

  test.each([
    '',
    'eight',
    '8',
    'eight seventy-five',
    '8 75',
    '12 50',
    'eight one five',
    '815',
    'eight one',
    'eight one fifty fifty',
    'eight oh five',
    'eight hundred',
    'eight thousand one hundred',
    '8.1755',
    '8.',
    '.175',
    'eight point',
    'eight point oh oh oh five',
    'eight point banana',
    '0.175',
    'zero one fifty',
    'twenty one fifty',
    '99999',
    '123456',
    'even',
    'one',
    'test rod',
    'eight past one',
    'minus eight one fifty',
    '-8.175',
    'NaN',
    '8.1.75',
  ])('"%s" is no length', (text) => {
    expect(hearLength(text)).toBeUndefined();
  });
});

describe('whole numbers', () => {
  test.each([
    ['one oh five', 105],
    ['one o five', 105],
    ['105', 105],
    ['one seventeen', 117],
    ['1 17', 117],
    ['one one seven', 117],
    ['one hundred seventeen', 117],
    ['one hundred and seventeen', 117],
    ['a hundred', 100],
    ['to hundred', 200],
    ['seventy-eight', 78],
    ['zero', 0],
    ['ninty nine', 99],
  ])('"%s" is %i', (text, value) => {
    expect(hearWhole(text)).toBe(value);
  });

  test.each([
    '',
    'oh',
    'hundred',
    'one hundred zero',
    'one hundred and',
    'one five',
    'ten five',
    'oh one five',
    'ten hundred',
    'one thousand',
    '1000',
    'one seventeen five',
    'one twenty thirty',
  ])('"%s" is none', (text) => {
    expect(hearWhole(text)).toBeUndefined();
  });
});
