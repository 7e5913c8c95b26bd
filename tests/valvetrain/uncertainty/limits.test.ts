import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { guardEdges, limitZones, usableZone, verdict } from '#valvetrain';
import { checkProperty } from '../checkProperty';
import { THOU, windowInThou } from '../samples';

const w = windowInThou();
const guardOf = (thou: number) => (thou * THOU) / 1.65;

describe('zones', () => {
  test.each([
    [68.9, 'proven out'],
    [69.1, "can't tell"],
    [75, "can't tell"],
    [79, "can't tell"],
    [81, 'proven in'],
    [104, 'proven in'],
    [106, "can't tell"],
    [110, "can't tell"],
    [115.9, "can't tell"],
    [116.1, 'proven out'],
  ] as const)('with a guard of 6 round 75-110, %d thou is %s', (thou, zone) => {
    expect(usableZone(thou * THOU, guardOf(6), w)).toBe(zone);
  });

  test('each limit that hurts has its own', () => {
    const zones = limitZones(78 * THOU, guardOf(6), w);
    expect(zones.map(({ limit, zone }) => [limit, zone])).toEqual([
      ['lash', 'proven in'],
      ['usable minimum', "can't tell"],
      ['usable maximum', 'proven in'],
      ['keep-out at the bottom', 'proven in'],
    ]);
    expect(zones[1]?.insideMm).toBeCloseTo(3 * THOU, 12);
  });

  test('say can’t tell of a limit exactly when the verdict does', () => {
    const met = { 'can’t tell': 0, settled: 0, 'proven in': 0 };
    const tenths = fc.integer({ min: -300, max: 2300 }).map((n) => (n / 10) * THOU);
    const guards = fc.integer({ min: 0, max: 300 }).map((n) => guardOf(n / 10));
    checkProperty(
      'zones and verdict',
      fc.property(tenths, guards, (p, u) => {
        const zones = limitZones(p, u, w);
        const { cantTell, word } = verdict(p, w, u);
        expect(zones.some(({ zone }) => zone === "can't tell")).toBe(cantTell);
        if (cantTell) met['can’t tell'] += 1;
        else met.settled += 1;
        if (usableZone(p, u, w) !== 'proven in') return;
        met['proven in'] += 1;
        expect(word.startsWith('fits')).toBe(true);
        expect(cantTell).toBe(false);
      }),
      met,
    );
  });
});

describe('edges of proof', () => {
  test('are where the guard of the preload itself meets the limit', () => {
    for (const limit of [0, 20, 75, 110, 180]) {
      const { fromMm, toMm } = guardEdges(limit * THOU, 3 * THOU, 0.04);
      for (const p of [fromMm, toMm]) {
        const guard = 1.65 * Math.hypot(3 * THOU, 0.04 * p);
        expect(Math.abs(p - limit * THOU)).toBeCloseTo(guard, 9);
      }
      expect(fromMm).toBeLessThan(toMm);
    }
  });

  test('lie on the limit when nothing is uncertain', () => {
    expect(guardEdges(2, 0, 0)).toEqual({ fromMm: 2, toMm: 2 });
  });

  test('are none when the travel is hardly known at all', () => {
    expect(() => guardEdges(2, 0.1, 1)).toThrow(RangeError);
  });
});
