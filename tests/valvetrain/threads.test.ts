import { describe, expect, test } from 'vitest';
import { adjusterProblems, pitchFromThreadsPerInch, threadById, threads } from '#valvetrain';
import { adjuster } from './samples';

describe('threads', () => {
  test('ids and names are each used once', () => {
    expect(new Set(threads.map((thread) => thread.id)).size).toBe(threads.length);
    expect(new Set(threads.map((thread) => thread.name)).size).toBe(threads.length);
  });

  test('are found by id and named as the trade writes them', () => {
    expect(threadById('M8x1.25')?.name).toBe('M8 × 1.25');
    expect(threadById('5/16-18')?.name).toBe('5/16-18 UNC');
    expect(threadById('5/16-19')).toBeUndefined();
  });

  test('every listed pitch is accepted without a question', () => {
    for (const { pitchMm } of threads) expect(adjusterProblems(adjuster({ pitchMm }))).toEqual([]);
  });

  test.each([0, -18, Number.NaN, Number.POSITIVE_INFINITY])(
    '%d threads per inch is refused',
    (tpi) => {
      expect(() => pitchFromThreadsPerInch(tpi)).toThrow(RangeError);
    },
  );
});
