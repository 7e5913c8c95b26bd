import { describe, expect, test } from 'vitest';
import {
  type CountedReading,
  landingOf,
  readingCount48,
  readingResolution48,
  readingSaid48,
  tapOf,
} from '#counting';
import { CLOCK_HOUR, QUARTER, turn48 } from '#valvetrain';

const marks = {
  quarter: QUARTER,
  'stroke of 30°': turn48(4),
  'stroke of 45°': turn48(6),
  'stroke of 60°': turn48(8),
};

function reading(landing: CountedReading['landing'], mark48 = QUARTER): CountedReading {
  return {
    kind: 'counted',
    id: 1,
    valve: null,
    round: 1,
    pushrod: null,
    position: null,
    at: 0,
    setUp: 1,
    takenOn: null,
    repeatOf: null,
    torqued: false,
    direction: 'on',
    count48: turn48(48),
    landing,
    mark48,
  };
}

describe('C8: landing', () => {
  test.each([
    ['nothing', 0],
    ['a bit past', 3],
    ['half', 6],
    ['just shy', 9],
  ] as const)('%s adds %d forty-eighths past a quarter mark', (word, past48) => {
    expect(landingOf(word, QUARTER)).toEqual({ told: word, past48 });
  });

  test.each(Object.entries(marks))('every word stays within a %s', (_, mark48) => {
    const past = (['nothing', 'a bit past', 'half', 'just shy'] as const).map(
      (word) => landingOf(word, mark48).past48,
    );
    expect(past.toSorted((a, b) => a - b)).toEqual(past);
    expect(past.every((past48) => past48 >= 0 && past48 < mark48)).toBe(true);
    expect(tapOf(mark48)).toBeGreaterThan(0);
  });

  test('not asked: half a mark more, and anywhere in a whole mark', () => {
    expect(readingCount48(reading(null))).toBe(54);
    expect(readingResolution48(reading(null))).toBe(12);
    expect(readingCount48(reading(null, turn48(6)))).toBe(51);
    expect(readingSaid48(reading(null, turn48(5)))).toBe(51);
  });

  test('told: half a mark; by the clock: an hour', () => {
    expect(readingResolution48(reading(landingOf('half', QUARTER)))).toBe(6);
    expect(readingResolution48(reading({ told: 'clock', past48: turn48(4) }))).toBe(CLOCK_HOUR);
    expect(readingResolution48(reading(landingOf('half', turn48(4)), turn48(4)))).toBe(2);
  });
});
