// How long choosing pushrods takes: sixteen valves on three grids and from stock, then growth by
// doubling the valves. Usage: node scripts/bench-choosing.mjs
import { ensureInstalled } from './installed.mjs';

ensureInstalled();
const { loadTs } = await import('./load-ts.mjs');
const { choosePushrods, countedPreload, startingSets, travelOf } =
  await loadTs('src/valvetrain/index.ts');

const THOU = 25.4 / 1000;
const AIM_MS = 2;
const RUNS = 200;
const travel = travelOf({ kind: 'pivot', pitchMm: 1.25, rockerRatio: 1.7, leanDeg: 0 });
const [{ window }] = startingSets;
const counts = [{ resolution48: 6, zeroFeelQuarters: 0.15 }];

/**
 * Readings that want several lengths: intakes and exhausts apart, some scatter, one far off.
 * @param {number} valves
 */
function engine(valves) {
  const cylinders = Array.from({ length: valves / 2 }, (_, index) => index + 1);
  return {
    banks: [cylinders.filter((one) => one % 2 === 1), cylinders.filter((one) => one % 2 === 0)],
    valves: cylinders.flatMap((cylinder) =>
      ['intake', 'exhaust'].map((valve, place) => {
        const quarters = 3.5 + place * 2 + ((cylinder * 7) % 5) / 4 + (cylinder === 3 ? 3 : 0);
        const preload = countedPreload(quarters, counts, travel);
        return { id: { cylinder, valve }, preload, testLengthMm: 200, window };
      }),
    ),
  };
}

/**
 * Median of many runs, and what 95 in 100 keep within, ms.
 * @param {number} valves
 * @param {object} offer
 */
function timed(valves, offer) {
  const bench = engine(valves);
  const run = () => choosePushrods(bench.valves, offer, bench);
  for (let warm = 0; warm < 30; warm += 1) run();
  const times = Array.from({ length: RUNS }, () => {
    const from = performance.now();
    run();
    return performance.now() - from;
  }).sort((a, b) => a - b);
  return { median: Number(times[RUNS / 2]), p95: Number(times[Math.floor(RUNS * 0.95)]) };
}

const grid = (/** @type {number} */ thou) => ({ kind: 'grid', stepMm: thou * THOU, offsetMm: 0 });
const stock = {
  kind: 'stock',
  lines: Array.from({ length: 12 }, (_, place) => ({
    lengthMm: 200 + (place - 6) * 25 * THOU,
    quantity: 4,
  })),
};
const show = (/** @type {number} */ ms) => `${ms.toFixed(2)} ms`.padStart(10);

console.log(`choosing pushrods, ${RUNS} runs each: median, 95 %`);
const offers = {
  'every 50 thou': grid(50),
  'every 25 thou': grid(25),
  'every 5 thou': grid(5),
  'every thou': grid(1),
  'stock of 12 × 4': stock,
};
for (const [name, offer] of Object.entries(offers)) {
  const { median, p95 } = timed(16, offer);
  console.log(`  16 valves, ${name.padEnd(17)}${show(median)}${show(p95)}`);
}
const asked = timed(16, grid(25)).median;
console.log(`  aim: ${AIM_MS} ms for 16 valves on a grid: ${asked <= AIM_MS ? 'met' : 'missed'}`);
console.log('growth, every 25 thou:');
let before = Number.NaN;
for (const valves of [4, 8, 16, 32, 64]) {
  const { median } = timed(valves, grid(25));
  const growth = Number.isNaN(before) ? '' : `  × ${(median / before).toFixed(2)}`;
  console.log(`  ${String(valves).padStart(2)} valves${show(median)}${growth}`);
  before = median;
}
