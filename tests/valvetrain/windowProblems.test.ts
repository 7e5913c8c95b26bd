import { describe, expect, test } from 'vitest';
import { windowProblems } from '#valvetrain';
import { windowInThou } from './samples';

/** Field, code and severity of each problem, in short. */
function found(changes: Parameters<typeof windowInThou>[0]) {
  return windowProblems(windowInThou(changes)).map(
    ({ field, code, severity }) => `${severity} ${field}: ${code}`,
  );
}

describe('a window', () => {
  test('without fault has no problem, nor one that just touches its keep-outs', () => {
    expect(found({})).toEqual([]);
    expect(found({ top: 75, bottom: 90 })).toEqual([]);
    expect(found({ min: 80, max: 100 })).toEqual([]);
    expect(found({ preferredMin: 90, preferredMax: 90 })).toEqual([]);
  });

  test('missing figures are named, each alone', () => {
    expect(found({ travel: Number.NaN, max: Number.POSITIVE_INFINITY })).toEqual([
      'refused plungerTravelMm: missing',
      'refused usableMaxMm: missing',
    ]);
  });

  test.each([
    ['upside down', { min: 110, max: 75 }, 'refused usableMinMm: upside down'],
    ['of no width', { min: 90, max: 90 }, 'refused usableMinMm: upside down'],
    ['inside the top keep-out', { top: 76 }, 'refused usableMinMm: outside the travel'],
    ['below nothing', { top: 0, min: -1 }, 'refused usableMinMm: outside the travel'],
    ['beyond the travel', { travel: 125 }, 'refused usableMaxMm: outside the travel'],
    [
      'preferring too little',
      { preferredMin: 74 },
      'refused preferredMinMm: outside the usable window',
    ],
    [
      'preferring too much',
      { preferredMax: 111 },
      'refused preferredMaxMm: outside the usable window',
    ],
    [
      'preferring upside down',
      { preferredMin: 100, preferredMax: 80 },
      'refused preferredMinMm: upside down',
    ],
    ['without travel', { travel: 0 }, 'refused plungerTravelMm: not above 0'],
    ['of too much travel', { travel: 5080 }, 'refused plungerTravelMm: too long'],
    ['of odd travel', { travel: 260 }, 'odd plungerTravelMm: unusual'],
    ['with a keep-out below 0', { bottom: -1 }, 'refused keepOutBottomMm: below 0'],
    [
      'all keep-out',
      { top: 100, bottom: 100 },
      'refused keepOutBottomMm: keep-outs fill the travel',
    ],
  ])('%s', (_, changes, expected) => {
    expect(found(changes)).toContain(expected);
  });

  test('an impossible travel or an upside-down window is reported alone', () => {
    expect(found({ travel: 0 })).toEqual(['refused plungerTravelMm: not above 0']);
    expect(found({ min: 110, max: 75 })).toEqual(['refused usableMinMm: upside down']);
    expect(found({ travel: 10 })).toEqual([
      'odd plungerTravelMm: unusual',
      'refused keepOutBottomMm: keep-outs fill the travel',
    ]);
  });

  test('says what would be right, in both units', () => {
    expect(windowProblems(windowInThou({ travel: 125 }))[0]?.sentence).toBe(
      'The usable maximum of 2.79 mm (0.110 in) is too near the bottom: a plunger travel of 3.17 mm (0.125 in) less a keep-out of 0.51 mm (0.020 in) allows at most 2.67 mm (0.105 in).',
    );
  });

  test('a travel typed in thou is recognised', () => {
    const w = { ...windowInThou(), plungerTravelMm: 200 };
    expect(windowProblems(w)[0]?.sentence).toContain(
      'If 200 is thousandths of an inch, the travel is 5.08 mm (0.200 in).',
    );
  });
});
