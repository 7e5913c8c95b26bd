import { describe, expect, test } from 'vitest';
import {
  AGREEMENT_FACTOR,
  agree,
  countedPreload,
  countUncertaintyQuarters,
  GUARD_FACTOR,
  groupDifferences,
  guardEdges,
  pitchFromThreadsPerInch,
  rectangular,
  rootSumOfSquares,
  settles,
  startingSets,
  type Travel,
  travelFromTwoLengths,
  travelOf,
  travelPerQuarterMm,
  turn48,
  uncertaintyMm,
  usableZone,
  ZERO_FEEL_QUARTERS,
} from '#valvetrain';
import { quartersBy, SET_UP, THOU, terms } from './projectExample';

describe('GUM H.1, end-gauge calibration (JCGM 100:2008)', () => {
  const gaugeNm = 50_000_623;
  const differenceNm = 215;
  const expansion = 11.5e-6;
  const offsetK = -0.1;
  const first = [
    25,
    rootSumOfSquares(5.8, 3.9, 6.7),
    gaugeNm * offsetK * rectangular(1e-6),
    gaugeNm * expansion * rectangular(0.05),
  ];

  test('length 50.000838 mm, u 31.66 nm (the text rounds to 32)', () => {
    expect((gaugeNm + differenceNm) / 1e6).toBeCloseTo(50.000838, 9);
    expect(rootSumOfSquares(...first)).toBeCloseTo(31.66, 2);
  });

  // H.1.7: θ has u 0.2 and, with a cycle of amplitude 0.5, 0.5/√2; the standard's expansion ± 2e-6.
  // The text rounds to 34.
  test('with the terms of second order 33.8 nm', () => {
    const second = [
      gaugeNm * rectangular(1e-6) * rootSumOfSquares(0.2, 0.5 / Math.SQRT2),
      gaugeNm * rectangular(2e-6) * rectangular(0.05),
    ];
    expect(rootSumOfSquares(...first, ...second)).toBeCloseTo(33.8, 1);
    expect(Math.round(rootSumOfSquares(...first, ...second))).toBe(34);
  });
});

// JCGM 101:2008, 9.2.3: four rectangular terms of u = 1. Formula derived, the example from memory.
test('four rectangular terms of u 1: 95 % within ±3.88 exactly, ±3.92 by the guide', () => {
  const halfWidth = Math.sqrt(3);
  const u = rootSumOfSquares(...[1, 2, 3, 4].map(() => rectangular(halfWidth)));
  expect(u).toBeCloseTo(2, 12);
  expect(AGREEMENT_FACTOR * u).toBeCloseTo(3.92, 9);
  // The sum of four uniforms on 0-1 lies below s < 1 with probability s⁴/4!.
  const s = (0.025 * 24) ** 0.25;
  expect(2 * halfWidth * (2 - s)).toBeCloseTo(3.88, 2);
});

// Derived: 3/8-24, R 1.5 ± 0.05, three quarters read to a whole quarter, zero ± 0.002 in.
test('3/8-24 at 1.5, three quarters: 0.05208 in, u 0.00516', () => {
  const pitchMm = pitchFromThreadsPerInch(24);
  const perQuarterMm = travelPerQuarterMm({
    kind: 'pivot',
    pitchMm,
    rockerRatio: 1.5,
    leanDeg: 0,
  });
  const byRatioMm = ((pitchMm / 4) * rectangular(0.05)) / 1.5 ** 2;
  const travel: Travel = { perQuarterMm, uMm: byRatioMm, basis: 'geometry' };
  const p = countedPreload(3, [{ resolution48: 12, zeroFeelQuarters: 0 }], travel);
  expect(p.preloadMm / 25.4).toBeCloseTo(0.05208, 5);
  expect(rootSumOfSquares(uncertaintyMm(p) / 25.4, rectangular(0.002))).toBeCloseTo(0.00516, 5);
});

// Derived, by the figures of the project's own example: 19.54 thou a quarter, feel for zero 0.15,
// limits 75 and 110. Quoted figures are rounded to the safe side, away from the limit.
describe('the project example', () => {
  const up = (mm: number) => Math.ceil((mm / THOU) * 10) / 10;
  const down = (mm: number) => Math.floor((mm / THOU) * 10) / 10;
  const edges = (limitThou: number, resolution48: number, travel: Travel) =>
    guardEdges(
      limitThou * THOU,
      travel.perQuarterMm * countUncertaintyQuarters(terms(resolution48)),
      travel.uMm / travel.perQuarterMm,
    );

  test.each([
    ['landing asked', 6, SET_UP.byGeometry, 82.8, 101.3],
    ['by the hour', 4, SET_UP.byGeometry, 81.9, 102],
    ['travel measured', 6, SET_UP.measured, 80.7, 104.2],
  ] as const)('%s: proven in from %5$f to %6$f thou', (_, resolution, travel, from, to) => {
    expect(up(edges(75, resolution, travel).toMm)).toBeCloseTo(from, 9);
    expect(down(edges(110, resolution, travel).fromMm)).toBeCloseTo(to, 9);
  });

  test('proven out below 67.9 and above 119.7', () => {
    expect(down(edges(75, 6, SET_UP.byGeometry).fromMm)).toBeCloseTo(67.9, 9);
    expect(up(edges(110, 6, SET_UP.byGeometry).toMm)).toBeCloseTo(119.7, 9);
  });

  test.each([
    [6, [4.25, 4.5, 4.75, 5], [3.5, 3.75, 4, 5.25, 5.5, 5.75, 6]],
    [12, [4.5, 4.75, 5], [4.25, 5.25]],
  ])('resolution %d/48: quarters proven in %j, can’t tell %j', (resolution, provenIn, cantTell) => {
    const zones = quartersBy(0.25, 8)
      .map((q) => ({ q, ...countedPreload(q, [terms(resolution)], SET_UP.byGeometry) }))
      .map((p) => ({ q: p.q, zone: usableZone(p.preloadMm, uncertaintyMm(p), SET_UP.window) }));
    const at = (zone: string) => zones.filter((one) => one.zone === zone).map(({ q }) => q);
    expect(at('proven in')).toEqual(provenIn);
    for (const q of cantTell) expect(at("can't tell")).toContain(q);
  });

  test('at four quarters no count settles 75, the floor is 5.2; with the travel measured four do', () => {
    const counts = [terms(6)];
    const found = settles({ quarters: 4, counts, travel: SET_UP.byGeometry }, SET_UP.window);
    const recount = found?.remedies.find(({ kind }) => kind === 'recount');
    expect(recount).toMatchObject({ settles: false, counts: { enough: false } });
    if (recount?.kind !== 'recount' || recount.counts.enough) throw new Error('no floor');
    expect(recount.counts.floorMm / THOU).toBeCloseTo(5.2, 1);
    expect(found?.remedies[0]).toEqual({
      kind: 'measure the travel',
      settles: false,
      recounts: { enough: true, inAll: 4, more: 3 },
    });
  });

  test('two readings of one valve agree within about 9 thou', () => {
    const reading = countedPreload(4.5, [terms(6)], SET_UP.byGeometry);
    expect(agree(reading, reading).allowedMm / THOU).toBeCloseTo(9.1, 1);
  });

  test('a difference of two groups of eight is noise up to about 3 thou', () => {
    const valves = quartersBy(1, 8).flatMap((cylinder) =>
      (['intake', 'exhaust'] as const).map((valve) => ({
        id: { cylinder, valve },
        preload: countedPreload(4.5, [terms(6)], SET_UP.byGeometry),
        testLengthMm: 200,
        window: SET_UP.window,
      })),
    );
    const [kinds] = groupDifferences(valves, { banks: [quartersBy(1, 8)] });
    expect(kinds?.by).toBe('valve');
    expect((kinds?.allowedMm ?? 0) / THOU).toBeCloseTo(3.2, 1);
  });

  test('sixteen valves on two test lengths 50 thou apart give the travel to about 2.3 %', () => {
    const counts = [terms(6)];
    const rise = 50 / 19.54;
    const valves = quartersBy(1, 16).map(() => ({
      onShorter: { quarters: 3, counts },
      onLonger: { quarters: 3 + rise, counts },
    }));
    const found = travelFromTwoLengths(valves, 50 * THOU);
    expect(found.perQuarterMm / THOU).toBeCloseTo(19.54, 9);
    expect(found.uMm / found.perQuarterMm).toBeCloseTo(0.0233, 4);
  });
});

// Derived from the starting set (common practice) and M8 × 1.25 at 1.7 with the usual counts.
describe('long-travel starting set, M8 × 1.25 at 1.7', () => {
  const window = startingSets.find(({ id }) => id === 'long-travel-roller')!.window;
  const travel = travelOf({ kind: 'pivot', pitchMm: 1.25, rockerRatio: 1.7, leanDeg: 0 });
  const zeroFeelQuarters = ZERO_FEEL_QUARTERS['up-and-down play'];

  test.each([
    ['a quarter of a quarter', 3, 6],
    ['an hour', 4, 4],
  ])('no landing on %s inside the preferred band is can’t tell', (_, step48, resolution48) => {
    const inBand = quartersBy(1, 200)
      .map((step) =>
        countedPreload(turn48(step * step48) / 12, [{ resolution48, zeroFeelQuarters }], travel),
      )
      .filter(
        ({ preloadMm }) => preloadMm >= window.preferredMinMm && preloadMm <= window.preferredMaxMm,
      );
    expect(inBand.length).toBeGreaterThanOrEqual(3);
    for (const p of inBand) {
      expect(usableZone(p.preloadMm, uncertaintyMm(p), window)).toBe('proven in');
    }
  });

  test.each([75, 110])('%d thou itself is', (thou) => {
    for (const resolution48 of [6, 4]) {
      const quarters = (thou * THOU) / travel.perQuarterMm;
      const p = countedPreload(quarters, [{ resolution48, zeroFeelQuarters }], travel);
      expect(usableZone(p.preloadMm, uncertaintyMm(p), window)).toBe("can't tell");
    }
  });
});

// ISO 14253-1:2017, one-sided 95 % (edition from memory): 1.645 of a normal distribution, rounded up.
test('the guard factor is 1.65', () => {
  expect(GUARD_FACTOR).toBe(1.65);
});
