import { describe, expect, test } from 'vitest';
import { parseValveKey, sameValve, valveKey, valvesOf } from '#valvetrain';

describe('valve keys', () => {
  test('say which valve', () => {
    expect(valveKey({ cylinder: 3, valve: 'intake' })).toBe('3 intake');
  });

  test('read back every valve of the largest engine, all different', () => {
    const valves = valvesOf({ cylinders: 12 });
    expect(new Set(valves.map(valveKey)).size).toBe(24);
    expect(valves.map((id) => parseValveKey(valveKey(id)))).toEqual(valves);
  });

  test.each([
    '',
    '3',
    'intake',
    '0 intake',
    '03 intake',
    '3  intake',
    '3 inlet',
    '3 intake ',
    '3.5 intake',
    '100 intake',
  ])('do not read %j', (key) => {
    expect(parseValveKey(key)).toBeUndefined();
  });

  test('the same valve is the same cylinder and kind', () => {
    expect(sameValve({ cylinder: 3, valve: 'intake' }, { cylinder: 3, valve: 'intake' })).toBe(
      true,
    );
    expect(sameValve({ cylinder: 3, valve: 'intake' }, { cylinder: 3, valve: 'exhaust' })).toBe(
      false,
    );
    expect(sameValve({ cylinder: 3, valve: 'intake' }, { cylinder: 4, valve: 'intake' })).toBe(
      false,
    );
  });
});
