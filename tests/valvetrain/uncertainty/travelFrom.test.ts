import { describe, expect, test } from 'vitest';
import { travelFromDial, travelFromTwoLengths } from '#valvetrain';
import { asked } from './readings';

describe('travel from dial readings', () => {
  test('least squares through zero', () => {
    const found = travelFromDial([
      { quarters: 1, travelMm: 0.52 },
      { quarters: 2, travelMm: 0.98 },
      { quarters: 4, travelMm: 2.01 },
    ]);
    expect(found.perQuarterMm).toBeCloseTo((0.52 + 2 * 0.98 + 4 * 2.01) / 21, 12);
    expect(found.basis).toBe('dial readings');
    expect(found.contradicting).toEqual([]);
    const products = found.residualsMm.reduce((sum, mm, i) => sum + mm * [1, 2, 4][i]!, 0);
    expect(products).toBeCloseTo(0, 12);
  });

  test('perfect readings are as sure as dial and mark are stated to be; longer counts are surer', () => {
    const terms = { dialHalfWidthMm: 0.03, markHalfWidthQuarters: 0 };
    const at = (quarters: number) => [{ quarters, travelMm: quarters / 2 }];
    const short = travelFromDial(at(1), terms);
    expect(short.uMm).toBeCloseTo(0.03 / Math.sqrt(3), 12);
    expect(travelFromDial(at(4), terms).uMm).toBeCloseTo(short.uMm / 4, 12);
  });

  test('scatter beyond that makes it less sure, and the reading that does not fit is named', () => {
    const terms = { dialHalfWidthMm: 0.01, markHalfWidthQuarters: 0.01 };
    const readings = [1, 2, 3, 4, 5].map((quarters) => ({ quarters, travelMm: quarters / 2 }));
    const good = travelFromDial(readings, terms);
    readings[1] = { quarters: 2, travelMm: 1.4 };
    const bad = travelFromDial(readings, terms);
    expect(good.contradicting).toEqual([]);
    expect(bad.contradicting).toContain(1);
    expect(bad.uMm).toBeGreaterThan(5 * good.uMm);
  });

  test.each([
    [[]],
    [[{ quarters: 0, travelMm: 1 }]],
    [[{ quarters: 1, travelMm: Number.NaN }]],
    [[{ quarters: 2, travelMm: -1 }]],
  ])('not from %j', (readings) => {
    expect(() => travelFromDial(readings)).toThrow(RangeError);
  });
});

describe('travel from two test lengths', () => {
  const valve = (shorter: number, longer: number) => ({
    onShorter: { quarters: shorter, counts: [asked] },
    onLonger: { quarters: longer, counts: [asked] },
  });

  test('the difference of the lengths over the mean rise', () => {
    const found = travelFromTwoLengths([valve(3, 5.5), valve(2.5, 5)], 1.25);
    expect(found).toMatchObject({ basis: 'two test lengths', valves: 2, scatterRatio: 0 });
    expect(found.perQuarterMm).toBeCloseTo(0.5, 12);
  });

  test('more valves are surer, by their square root', () => {
    const one = travelFromTwoLengths([valve(3, 5.5)], 1.25).uMm;
    const nine = travelFromTwoLengths(Array(9).fill(valve(3, 5.5)), 1.25).uMm;
    expect(nine).toBeCloseTo(one / 3, 12);
  });

  test('a doubtful length and rises that scatter make it less sure', () => {
    const valves = [valve(3, 5.5), valve(3, 5.5), valve(3, 5.5), valve(3, 5.5)];
    const exact = travelFromTwoLengths(valves, 1.25).uMm;
    expect(travelFromTwoLengths(valves, 1.25, 0.05).uMm).toBeGreaterThan(exact);
    const wild = [valve(3, 4.5), valve(3, 6.5), valve(3, 4.5), valve(3, 6.5)];
    expect(travelFromTwoLengths(wild, 1.25).uMm).toBeGreaterThan(exact);
    expect(travelFromTwoLengths(wild, 1.25).scatterRatio).toBeGreaterThan(3);
  });

  test('not when the counts do not rise, the lengths do not differ, or nobody was counted', () => {
    expect(() => travelFromTwoLengths([valve(3, 3)], 1.25)).toThrow(RangeError);
    expect(() => travelFromTwoLengths([valve(3, 5)], 0)).toThrow(RangeError);
    expect(() => travelFromTwoLengths([], 1.25)).toThrow(RangeError);
  });
});
