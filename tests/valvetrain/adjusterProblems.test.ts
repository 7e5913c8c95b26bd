import { describe, expect, test } from 'vitest';
import { type Adjuster, adjusterProblems } from '#valvetrain';
import { adjuster } from './samples';

function found(changes: Partial<Adjuster>) {
  return adjusterProblems(adjuster(changes)).map(
    ({ field, code, severity }) => `${severity} ${field}: ${code}`,
  );
}

function sentences(changes: Partial<Adjuster>) {
  return adjusterProblems(adjuster(changes))
    .map((problem) => problem.sentence)
    .join(' ');
}

describe('an adjuster', () => {
  test.each<[string, Partial<Adjuster>]>([
    ['usual', {}],
    ['with the finest pitch usual', { pitchMm: 0.7 }],
    ['with the least ratio usual', { rockerRatio: 1.3 }],
    ['leaning 15°', { leanDeg: 15 }],
    ['measured 14 % off', { measuredTravelPerQuarterMm: (1.25 / 4) * (1 + 1 / 1.5) * 1.14 }],
  ])('%s has no problem', (_, changes) => {
    expect(found(changes)).toEqual([]);
  });

  test.each<[string, Partial<Adjuster>]>([
    ['refused pitchMm: missing', { pitchMm: Number.NaN }],
    ['refused pitchMm: out of range', { pitchMm: 0 }],
    ['refused pitchMm: out of range', { pitchMm: -1.25 }],
    ['refused pitchMm: out of range', { pitchMm: 3.1 }],
    ['odd pitchMm: unusual', { pitchMm: 3 }],
    ['odd pitchMm: unusual', { pitchMm: 0.2 }],
    ['refused rockerRatio: missing', { rockerRatio: Number.NaN }],
    ['refused rockerRatio: out of range', { rockerRatio: 0 }],
    ['refused rockerRatio: out of range', { rockerRatio: 0.99 }],
    ['refused rockerRatio: out of range', { rockerRatio: 2.51 }],
    ['odd rockerRatio: unusual', { rockerRatio: 1 }],
    ['odd rockerRatio: unusual', { rockerRatio: 2.5 }],
    ['refused leanDeg: missing', { leanDeg: Number.NaN }],
    ['refused leanDeg: out of range', { leanDeg: -1 }],
    ['refused leanDeg: out of range', { leanDeg: 46 }],
    ['odd leanDeg: unusual', { leanDeg: 45 }],
    ['refused measuredTravelPerQuarterMm: not above 0', { measuredTravelPerQuarterMm: 0 }],
    ['refused measuredTravelPerQuarterMm: not above 0', { measuredTravelPerQuarterMm: Number.NaN }],
    ['odd measuredTravelPerQuarterMm: far from the geometry', { measuredTravelPerQuarterMm: 0.43 }],
    ['odd measuredTravelPerQuarterMm: far from the geometry', { measuredTravelPerQuarterMm: 0.61 }],
  ])('%s: %j', (expected, changes) => {
    expect(found(changes)).toEqual([expected]);
  });

  test('a measured travel is not held against a geometry that is refused itself', () => {
    expect(found({ rockerRatio: 0, measuredTravelPerQuarterMm: 0.5 })).toEqual([
      'refused rockerRatio: out of range',
    ]);
  });

  test('likely slips are named with what was probably meant', () => {
    expect(sentences({ pitchMm: 24 })).toContain(
      'If 24 is threads per inch, the pitch is 1.06 mm (0.042 in).',
    );
    expect(sentences({ rockerRatio: 0.588 })).toContain('Divided the other way round it is 1.701.');
    expect(sentences({ measuredTravelPerQuarterMm: 2.08 })).toContain(
      'is 4.0 times the 0.52 mm (0.021 in) that pitch and lever give. It looks like the travel of a whole turn.',
    );
    expect(sentences({ measuredTravelPerQuarterMm: 0.31 })).toContain(
      'is 40 % below the 0.52 mm (0.021 in) that pitch and lever give. It looks like the fastener’s own advance',
    );
  });

  test('a ratio of 0 is answered with what would be right', () => {
    expect(sentences({ rockerRatio: 0 })).toBe(
      'A rocker ratio of 0 is out of range: it must be from 1 to 2.5; most are 1.3 to 2.',
    );
  });
});
