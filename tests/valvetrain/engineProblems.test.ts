import { describe, expect, test } from 'vitest';
import { type EngineInput, engineProblems } from '#valvetrain';
import { engine } from './samples';

const inline: Partial<EngineInput> = { layout: 'inline', numbering: 'in line' };

function sentences(order: readonly number[], changes: Partial<EngineInput> = {}) {
  return engineProblems(engine(order, changes)).map((problem) => problem.sentence);
}

function codes(order: readonly number[], changes: Partial<EngineInput> = {}) {
  return engineProblems(engine(order, changes)).map(
    ({ severity, field, code }) => `${severity} ${field}: ${code}`,
  );
}

describe('an engine', () => {
  test.each([0, 13, -4, 2.5, Number.POSITIVE_INFINITY])(
    'of %d cylinders is refused',
    (cylinders) => {
      expect(codes([1, 2], { cylinders })).toEqual(['refused cylinders: out of range']);
    },
  );

  test('of no stated number of cylinders is refused', () => {
    expect(codes([1, 2], { cylinders: Number.NaN })).toEqual(['refused cylinders: missing']);
  });

  test.each([1, 2, 3, 5, 12])('of %d cylinders in a row can be used', (n) => {
    const order = [...Array(n).keys()].map((k) => k + 1);
    expect(codes(order, { layout: 'other', numbering: 'in line' })).toEqual([]);
  });

  test('a cylinder missing, there twice, or not of this engine is named', () => {
    expect(sentences([1, 3, 4], { ...inline, cylinders: 4 })).toEqual([
      'Cylinder 2 is missing from the firing order: each of 1 to 4 belongs there once.',
    ]);
    expect(sentences([1, 3, 3, 2], inline)).toEqual([
      'Cylinder 3 is in the firing order more than once: each cylinder belongs there once.',
      'Cylinder 4 is missing from the firing order: each of 1 to 4 belongs there once.',
    ]);
    expect(sentences([1, 3, 9, 2], inline)[0]).toBe(
      'The firing order has 9 in it, but this engine’s cylinders are 1 to 4.',
    );
    expect(sentences([1, 3, Number.NaN, 2], inline)[0]).toContain('has a gap in it');
  });

  test.each([
    ['refused banks: missing', { numbering: 'typed' }],
    ['refused banks: missing', { numbering: 'typed', banks: [[1, 3], [2]] }],
    [
      'refused banks: twice',
      {
        numbering: 'typed',
        banks: [
          [1, 3],
          [2, 3, 4],
        ],
      },
    ],
    [
      'refused banks: no such cylinder',
      {
        numbering: 'typed',
        banks: [
          [1, 3],
          [2, 4, 5],
        ],
      },
    ],
    ['refused banks: wrong number', { numbering: 'in line' }],
    ['refused banks: wrong number', { layout: 'inline' }],
    ['refused banks: wrong number', { numbering: 'typed', banks: [[1, 2, 3, 4], []] }],
    ['odd banks: unequal', { numbering: 'typed', banks: [[1], [2, 3, 4]] }],
  ] as const)('%s: %j', (expected, changes) => {
    expect(codes([1, 2, 3, 4], changes)).toContain(expected);
  });

  test('an order not written from 1 is asked back, not refused', () => {
    expect(codes([3, 4, 2, 1], inline)).toEqual(['odd firingOrder: does not begin with 1']);
  });

  test('companions that the crank does not have are asked back', () => {
    expect(sentences([1, 2, 3, 4], inline)).toEqual([
      'This order puts 1 and 3 at TDC together; on an inline 4 it is mostly 1 and 4. Check the order for a slip, and confirm it if it is right.',
    ]);
    expect(codes([1, 2, 3, 4], { layout: 'flat' })).toEqual([
      'odd firingOrder: unusual companions',
    ]);
    expect(codes([1, 5, 3, 6, 2, 4], inline)).toEqual([]);
  });
});
