import { describe, expect, test } from 'vitest';
import type { Tier } from '../../../src/hearing/offline/expected';
import { judge, LEAST_VOICED, TAKEN_FROM } from '../../../src/hearing/offline/rejection';

const candidate = (words: string, tier: Tier, fit: number, frames = 60) => ({
  branch: { words, tier, hearing: { kind: 'outside', waits: false } as const },
  fit,
  frames,
});
const spoken = { voiced: 30, crowded: false, opinion: 'none' } as const;

describe('what is taken', () => {
  test('the likelier a phrase was, the less is asked of it', () => {
    const { expected, ahead, near, far, remote } = TAKEN_FROM;
    expect([expected, ahead, near, far, remote]).toEqual(
      [expected, ahead, near, far, remote].toSorted((a, b) => a - b),
    );
    expect(judge(candidate('five', 'expected', -1), spoken)).toBe('taken');
    expect(judge(candidate('nine', 'far', -1), spoken)).toBe('nothing');
  });

  test('the next count nearly fitting is missed, never taken', () => {
    expect(judge(candidate('five', 'expected', TAKEN_FROM.expected - 0.1), spoken)).toBe('missed');
    expect(judge(candidate('five', 'expected', -4), spoken)).toBe('nothing');
  });

  test('the builder’s own words turn a near tie, and never a clear answer', () => {
    const from = TAKEN_FROM.expected;
    const five = (fit: number, opinion: 'agrees' | 'disagrees') =>
      judge(candidate('five', 'expected', fit), { ...spoken, opinion });
    expect(five(from - 0.3, 'agrees')).toBe('taken');
    expect(five(from + 0.3, 'disagrees')).toBe('missed');
    expect(five(from + 0.6, 'disagrees')).toBe('taken');
    expect(five(from - 0.6, 'agrees')).toBe('missed');
    expect(five(from - 1.5, 'agrees')).toBe('nothing');
  });

  test('what holds no voice is nothing, however well it fits', () => {
    const click = { ...spoken, voiced: LEAST_VOICED - 1 };
    expect(judge(candidate('five', 'expected', 3), click)).toBe('nothing');
  });

  test('what is too short or too long for its words is nothing', () => {
    expect(judge(candidate('five', 'expected', 3, 20), spoken)).toBe('nothing');
    expect(judge(candidate('five', 'expected', 3, 200), spoken)).toBe('nothing');
    expect(judge(candidate('go to cylinder five', 'near', 3, 200), spoken)).toBe('taken');
  });

  test('in the middle of talk more is asked', () => {
    const crowded = { ...spoken, crowded: true };
    expect(judge(candidate('five', 'expected', -1), crowded)).toBe('nothing');
    expect(judge(candidate('rocker seated', 'near', 0.6), crowded)).toBe('taken');
  });
});
