import { describe, expect, test } from 'vitest';
import {
  preloadAtLengthMm,
  pushrodCall,
  startingSets,
  type Verdict,
  verdict,
  type Window,
} from '#valvetrain';

const INCH = 25.4;
const THOU = INCH / 1000;

function startingWindow(id: string): Window {
  const set = startingSets.find((each) => each.id === id);
  if (set === undefined) throw new Error(`no starting set ${id}`);
  return set.window;
}

describe('windows', () => {
  // Common practice, no source.
  test('a long-travel hydraulic roller: usable 75-110 thou, preferred 80-100', () => {
    const w = startingWindow('long-travel-roller');
    const band = [w.usableMinMm, w.usableMaxMm, w.preferredMinMm, w.preferredMaxMm];
    expect(band.map((mm) => mm / THOU)).toEqual(
      [75, 110, 80, 100].map((t) => expect.closeTo(t, 9)),
    );
  });

  // Engine Builder Magazine, June 2011, hydraulic lifter preload: 20-60 thou for most engines.
  test.each(['standard-travel-roller', 'flat-tappet'])('%s: usable 20-60 thou', (id) => {
    const w = startingWindow(id);
    expect(w.usableMinMm / THOU).toBeCloseTo(20, 9);
    expect(w.usableMaxMm / THOU).toBeCloseTo(60, 9);
  });

  // Common practice, no source: the middle of the travel ± 25 thou is clear of both ends.
  test('the long-travel set leaves mid-travel ± 25 thou clear of both keep-outs', () => {
    const w = startingWindow('long-travel-roller');
    const middleMm = w.plungerTravelMm / 2;
    expect(middleMm - 25 * THOU).toBeGreaterThan(w.keepOutTopMm);
    expect(middleMm + 25 * THOU).toBeLessThan(w.plungerTravelMm - w.keepOutBottomMm);
  });
});

describe('verdicts, usable 75-110 thou', () => {
  const w = startingWindow('long-travel-roller');

  // Common practice, no source.
  test.each<[number, Verdict, string]>([
    [35, 'light', 'longer'],
    [125, 'heavy', 'shorter'],
    [100, 'fits', 'keep'],
    [110, 'fits, heavy side', 'keep'],
  ])('%d thou is %s: %s', (thou, word, call) => {
    expect(verdict(thou * THOU, w).word).toBe(word);
    expect(pushrodCall(word)).toBe(call);
  });

  // Common practice, no source: 7.400 in measured 101 thou.
  test.each<[number, number, boolean]>([
    [7.4, 101, true],
    [7.375, 76, true],
    [7.45, 151, false],
  ])('%f in gives %d thou; fits: %s', (inches, thou, fits) => {
    const preloadMm = preloadAtLengthMm(101 * THOU, 7.4 * INCH, inches * INCH);
    expect(preloadMm / THOU).toBeCloseTo(thou, 6);
    expect(verdict(preloadMm, w).word.startsWith('fits')).toBe(fits);
  });
});

// Derived, after the guard bands of ISO 14253-1 (edition from memory).
describe('limits 20-60 thou with a guard of 6', () => {
  const w = startingWindow('flat-tappet');
  const uncertaintyMm = (6 * THOU) / 1.65;

  test.each<[number, 'in' | "can't tell" | 'out']>([
    [13.9, 'out'],
    [14, "can't tell"],
    [20, "can't tell"],
    [25.9, "can't tell"],
    [26, 'in'],
    [40, 'in'],
    [54, 'in'],
    [54.1, "can't tell"],
    [60, "can't tell"],
    [66, "can't tell"],
    [66.1, 'out'],
  ])('%d thou: %s', (thou, expected) => {
    const { word, cantTell } = verdict(thou * THOU, w, uncertaintyMm);
    const settled = word.startsWith('fits') ? 'in' : 'out';
    expect(cantTell ? "can't tell" : settled).toBe(expected);
  });

  test('with no uncertainty there is nothing that can’t be told', () => {
    for (let thou = -10; thou <= 160; thou += 0.5) {
      expect(verdict(thou * THOU, w).cantTell).toBe(false);
    }
  });
});
