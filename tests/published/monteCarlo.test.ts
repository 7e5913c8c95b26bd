import { describe, expect, test } from 'vitest';
import {
  AGREEMENT_FACTOR,
  countedPreload,
  guardEdges,
  rootSumOfSquares,
  travelFromTwoLengths,
  uncertaintyMm,
} from '#valvetrain';
import { seeded } from '../valvetrain/random';
import { quartersBy, SET_UP, THOU, terms } from './projectExample';

// JCGM 101:2008: the distributions are propagated by drawing from them, which knows nothing of the formula.
const TRIALS = 1_000_000;
const HALF_WIDTHS = { travel: 0.07, zero: 0.15 };
const seed = Date.now() % 1_000_000;
console.info(`Monte Carlo: seed ${seed}, ${TRIALS} trials each`);
const random = seeded(seed);

const within = (halfWidth: number) => (2 * random() - 1) * halfWidth;
/** What a true count is read as, or (the same distribution) what a read one may truly be. */
const count = (quarters: number, resolution: number) =>
  quarters + within(resolution / 2) + within(HALF_WIDTHS.zero);
const perQuarter = () => 19.54 * (1 + within(HALF_WIDTHS.travel));

function spread(draw: () => number, trials = TRIALS): { mean: number; sd: number } {
  let mean = 0;
  let squares = 0;
  for (let trial = 1; trial <= trials; trial += 1) {
    const value = draw();
    const off = value - mean;
    mean += off / trial;
    squares += off * (value - mean);
  }
  return { mean, sd: Math.sqrt(squares / (trials - 1)) };
}

describe('a million trials against the formula', () => {
  test.each([
    [4.5, 6, 1],
    [3.5, 12, 1],
    [5 + 1 / 3, 4, 1],
    [4.5, 6, 3],
  ])('%f quarters, resolution %d/48, %d counts', (quarters, resolution48, n) => {
    const p = countedPreload(
      quarters,
      quartersBy(1, n).map(() => terms(resolution48)),
      SET_UP.byGeometry,
    );
    const drawn = spread(() => {
      let sum = 0;
      for (let each = 0; each < n; each += 1) sum += count(quarters, resolution48 / 12);
      return (sum / n) * perQuarter();
    });
    expect(drawn.mean / (p.preloadMm / THOU)).toBeCloseTo(1, 3);
    // The formula leaves out u(q)²u(k)²; together with a million draws' own noise well below 0.5 %.
    expect(Math.abs(drawn.sd / (uncertaintyMm(p) / THOU) - 1)).toBeLessThan(0.005);
  });

  test('at the edge of proof about one in twenty is beyond the limit, never much more', () => {
    const ownMm = 19.54 * THOU * Math.sqrt(0.5 ** 2 / 12 + 0.15 ** 2 / 3);
    const edge = guardEdges(75 * THOU, ownMm, 0.07 / Math.sqrt(3)).toMm / THOU;
    const beyond = spread(() => (count(edge / 19.54, 0.5) * perQuarter() < 75 ? 1 : 0)).mean;
    expect(beyond).toBeGreaterThan(0.035);
    expect(beyond).toBeLessThan(0.055);
  });

  test('two readings of one valve differ by 1.96 u or less 95 times in a hundred', () => {
    const ownMm = countedPreload(4.5, [terms(6)], SET_UP.byGeometry).ownMm;
    const allowed = (AGREEMENT_FACTOR * rootSumOfSquares(ownMm, ownMm)) / THOU;
    const share = spread(() => {
      const k = perQuarter();
      return Math.abs(count(4.5, 0.5) - count(4.5, 0.5)) * k <= allowed ? 1 : 0;
    }).mean;
    expect(share).toBeGreaterThan(0.945);
    expect(share).toBeLessThan(0.965);
  });

  test('sixteen valves on two lengths 50 thou apart give the travel to 2.3 %', () => {
    const counts = [terms(6)];
    const rise = 50 / 19.54;
    const drawn = spread(() => {
      const valves = quartersBy(1, 16).map(() => ({
        onShorter: { quarters: count(3, 0.5), counts },
        onLonger: { quarters: count(3 + rise, 0.5), counts },
      }));
      return travelFromTwoLengths(valves, 50 * THOU).perQuarterMm / THOU;
    }, TRIALS / 16);
    expect(drawn.sd / drawn.mean).toBeCloseTo(0.0233, 3);
  });
});
