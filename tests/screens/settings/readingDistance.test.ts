import { expect, test } from 'vitest';
import { countHeightPx, readingDistanceM } from '../../../src/screens/settings/readingDistance';

// 1/200 of the distance: 15 mm at 3 m (a rule of sign-making, common practice).
test('a 24 inch screen of 1920 by 1080 draws 120 px at 33.2 mm: read from 6.6 m', () => {
  const size = { screenWidthPx: 1920, screenHeightPx: 1080, diagonalIn: 24 };
  expect(readingDistanceM(size, countHeightPx(1920))).toBe(6.6);
});

test('a 10 inch tablet of 1024 by 768 draws 96 px at 19.05 mm: read from 3.8 m', () => {
  const size = { screenWidthPx: 1024, screenHeightPx: 768, diagonalIn: 10 };
  expect(readingDistanceM(size, countHeightPx(1024))).toBe(3.8);
});

test.each([
  { screenWidthPx: 0, screenHeightPx: 0, diagonalIn: 10 },
  { screenWidthPx: 1024, screenHeightPx: 768, diagonalIn: Number.NaN },
])('makes nothing of %o', (size) => {
  expect(readingDistanceM(size, 96)).toBeNull();
});
