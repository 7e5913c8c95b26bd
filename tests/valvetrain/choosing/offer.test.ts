import { describe, expect, test } from 'vitest';
import { hasRefusal, type Offer, offerProblems } from '#valvetrain';

const line = (lengthMm: number, quantity: number): Offer => ({
  kind: 'stock',
  lines: [
    { lengthMm: 200, quantity: 4 },
    { lengthMm, quantity },
  ],
});

describe('what is on offer', () => {
  test.each<[Offer]>([
    [{ kind: 'grid', stepMm: 0.635, offsetMm: 0 }],
    [{ kind: 'grid', stepMm: 0.01, offsetMm: 200.3 }],
    [line(200.635, 0)],
  ])('%j can be chosen from', (offer) => {
    expect(offerProblems(offer)).toEqual([]);
  });

  test.each<[Offer, string]>([
    [{ kind: 'grid', stepMm: 0, offsetMm: 0 }, 'step too fine'],
    [{ kind: 'grid', stepMm: -1, offsetMm: 0 }, 'step too fine'],
    [{ kind: 'grid', stepMm: Number.NaN, offsetMm: 0 }, 'step too fine'],
    [{ kind: 'grid', stepMm: 1, offsetMm: Number.NaN }, 'missing'],
    [{ kind: 'stock', lines: [] }, 'no stock'],
    [{ kind: 'stock', lines: [{ lengthMm: 200, quantity: 0 }] }, 'no stock'],
    [line(Number.NaN, 2), 'no length'],
    [line(-200, 2), 'no length'],
    [line(201, 1.5), 'no quantity'],
    [line(201, -1), 'no quantity'],
  ])('%j is refused: %s', (offer, code) => {
    const problems = offerProblems(offer);
    expect(hasRefusal(problems)).toBe(true);
    expect(problems.map((problem) => problem.code)).toEqual([code]);
    expect(problems[0]?.sentence).not.toMatch(/NaN|Infinity|undefined/);
  });
});
