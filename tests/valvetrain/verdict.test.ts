import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { EDGE_TOLERANCE_MM, type Verdict, verdict, verdictWords } from '#valvetrain';
import { checkProperty } from './checkProperty';
import { THOU, windowInThou } from './samples';

const w = windowInThou();
/** An uncertainty whose guard (1.65 u) is so many thou. */
const guard = (thou: number) => (thou * THOU) / 1.65;

describe('the word', () => {
  test.each<[number, Verdict]>([
    [-5, 'lash'],
    [0, 'lash'],
    [0.1, 'light'],
    [74.9, 'light'],
    [75, 'fits, light side'],
    [79.9, 'fits, light side'],
    [80, 'fits'],
    [100, 'fits'],
    [100.1, 'fits, heavy side'],
    [110, 'fits, heavy side'],
    [110.1, 'heavy'],
    [179.9, 'heavy'],
    [180, 'near bottom'],
    [260, 'near bottom'],
  ])('%d thou is %s', (thou, word) => {
    expect(verdict(thou * THOU, w)).toEqual({ word, cantTell: false });
  });

  test('edges are inclusive within the tolerance and no further', () => {
    const inside = EDGE_TOLERANCE_MM * 0.9;
    const outside = EDGE_TOLERANCE_MM * 1.1;
    expect(verdict(w.usableMinMm - inside, w).word).toBe('fits, light side');
    expect(verdict(w.usableMinMm - outside, w).word).toBe('light');
    expect(verdict(w.usableMaxMm + inside, w).word).toBe('fits, heavy side');
    expect(verdict(w.usableMaxMm + outside, w).word).toBe('heavy');
    expect(verdict(w.preferredMinMm - inside, w).word).toBe('fits');
    expect(verdict(w.preferredMaxMm + inside, w).word).toBe('fits');
    expect(verdict(inside, w).word).toBe('lash');
    expect(verdict(outside, w).word).toBe('light');
    expect(verdict(180 * THOU - inside, w).word).toBe('near bottom');
    expect(verdict(180 * THOU - outside, w).word).toBe('heavy');
  });

  test('where a usable limit stands on lash or on the keep-out, the worse word wins', () => {
    const tight = windowInThou({ travel: 130, top: 0, min: 0, preferredMin: 0 });
    expect(verdict(0, tight).word).toBe('lash');
    expect(verdict(110 * THOU, tight).word).toBe('near bottom');
  });

  test('rises with the preload and reaches every word', () => {
    const met = Object.fromEntries(verdictWords.map((word) => [word, 0]));
    const preload = fc
      .oneof(fc.integer({ min: -300, max: 2300 }), fc.integer({ min: 700, max: 1150 }))
      .map((tenths) => (tenths / 10) * THOU);
    checkProperty(
      'verdict order',
      fc.property(preload, preload, (a, b) => {
        const word = verdict(a, w).word;
        met[word] = (met[word] ?? 0) + 1;
        const [low, high] = [Math.min(a, b), Math.max(a, b)].map((p) =>
          verdictWords.indexOf(verdict(p, w).word),
        );
        expect(low).toBeLessThanOrEqual(high!);
      }),
      met,
    );
  });
});

describe("can't tell", () => {
  test.each([
    [78, 'fits, light side', 'light', 75],
    [72, 'light', 'fits', 75],
    [108, 'fits, heavy side', 'heavy', 110],
    [113, 'heavy', 'fits', 110],
    [3, 'light', 'lash', 0],
    [-3, 'lash', 'light', 0],
    [177, 'heavy', 'near bottom', 180],
    [183, 'near bottom', 'heavy', 180],
  ] as const)('%d thou is %s and may be %s', (thou, word, across, limit) => {
    const result = verdict(thou * THOU, w, guard(6));
    expect(result).toMatchObject({ word, cantTell: true, against: { word: across } });
    expect(result.against?.limitMm).toBeCloseTo(limit * THOU, 9);
  });

  test('the preferred band is judged on the plain number', () => {
    expect(verdict(81 * THOU, w, guard(5))).toEqual({ word: 'fits', cantTell: false });
    expect(verdict(99 * THOU, w, guard(5))).toEqual({ word: 'fits', cantTell: false });
  });

  test('names the nearest of two limits in reach, the worse one where they stand together', () => {
    expect(verdict(90 * THOU, w, guard(30)).against?.word).toBe('light');
    expect(verdict(95 * THOU, w, guard(30)).against?.word).toBe('heavy');
    const tight = windowInThou({ travel: 130 });
    expect(verdict(108 * THOU, tight, guard(6)).against?.word).toBe('near bottom');
    expect(verdict(110 * THOU, tight, guard(6)).against?.word).toBe('fits');
  });

  test('never at no uncertainty; more uncertainty never settles anything nor changes the word', () => {
    const met = { 'settled twice': 0, 'lost to more': 0, 'unsettled twice': 0 };
    const preload = fc.oneof(
      fc.integer({ min: -300, max: 2300 }).map((tenths) => (tenths / 10) * THOU),
      fc.constantFrom(0, w.usableMinMm, w.usableMaxMm, 180 * THOU),
    );
    const u = fc.integer({ min: 0, max: 200 }).map((tenths) => (tenths / 10) * THOU);
    checkProperty(
      "can't tell",
      fc.property(preload, u, u, (p, a, b) => {
        const plain = verdict(p, w);
        const less = verdict(p, w, Math.min(a, b));
        const more = verdict(p, w, Math.max(a, b));
        expect(plain.cantTell).toBe(false);
        expect([less.word, more.word]).toEqual([plain.word, plain.word]);
        if (less.cantTell) expect(more.cantTell).toBe(true);
        for (const each of [less, more]) {
          expect(each.against !== undefined).toBe(each.cantTell);
          expect(each.against?.word).not.toBe(each.word);
        }
        if (less.cantTell) met['unsettled twice'] += 1;
        else if (more.cantTell) met['lost to more'] += 1;
        else met['settled twice'] += 1;
      }),
      met,
    );
  });
});

test.each([
  [Number.NaN, 0],
  [Number.POSITIVE_INFINITY, 0],
  [1, -0.1],
  [1, Number.NaN],
])('a preload of %d with uncertainty %d is no question', (preloadMm, uncertaintyMm) => {
  expect(() => verdict(preloadMm, w, uncertaintyMm)).toThrow(RangeError);
});
