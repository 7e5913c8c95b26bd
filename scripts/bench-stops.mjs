// How long the fewest crank positions take to find: eight cylinders as a builder would ask for them,
// and how the search grows when its arcs double, beyond any engine. `node scripts/bench-stops.mjs`.
import { performance } from 'node:perf_hooks';
import { pathToFileURL } from 'node:url';
import { loadTs } from './load-ts.mjs';

const ORDER = [1, 8, 4, 3, 6, 5, 7, 2];
const WISHES = [
  { name: 'TDCs', wish: {} },
  { name: 'any angle', wish: { at: 'any angle' } },
  {
    name: 'any angle, pistons away from TDC',
    wish: { at: 'any angle', prefer: 'pistons away from TDC' },
  },
];
const ROUNDS = 60;
const SIZES = [32, 64, 128, 256, 512];

/**
 * Milliseconds of one run: the very first, then, once the code is warm, the middle and the slowest
 * twentieth of as many again.
 * @param {(round: number) => unknown} run
 * @param {number} rounds
 */
function timed(run, rounds) {
  const times = Array.from({ length: 2 * rounds }, (_, round) => {
    const began = performance.now();
    run(round % rounds);
    return performance.now() - began;
  });
  const rising = times.slice(rounds).toSorted((a, b) => a - b);
  const at = (/** @type {number} */ share) => rising[Math.floor(share * (rounds - 1))] ?? 0;
  return { firstMs: times[0] ?? 0, medianMs: at(0.5), p95Ms: at(0.95) };
}

/**
 * Arcs as an engine with so many valves would have them, ends spread by the golden ratio.
 * @param {number} count
 */
function arcsOf(count) {
  return Array.from({ length: count }, (_, place) => ({
    startDeg: (place * 444.9) % 720,
    lengthDeg: 250 + ((place * 37) % 90),
  }));
}

/** Figures for `npm run bench`: eight cylinders for each wish, and the search by number of arcs. */
export async function benchStops() {
  const { fewestStops, makeEngine, seatTiming } = await loadTs('src/valvetrain/index.ts');
  const { fewestPoints } = await loadTs('src/valvetrain/crank/stabbing.ts');
  const { shrunk, widestMarginDeg } = await loadTs('src/valvetrain/crank/widest.ts');
  const engine = makeEngine({
    layout: 'V',
    cylinders: ORDER.length,
    firingOrder: ORDER,
    numbering: 'alternating',
    runningDirection: 'clockwise',
    seenFrom: 'front',
  });
  const eight = WISHES.map(({ name, wish }) => ({
    name,
    ...timed((round) => {
      const duration = 255 + round;
      const cam = seatTiming({
        form: 'durations',
        statedAt: 'seat',
        lobes: {
          intakeDurationDeg: duration,
          exhaustDurationDeg: duration + 4,
          lobeSeparationDeg: 112,
          intakeCentrelineDeg: 108,
        },
      });
      return fewestStops(engine, cam, wish);
    }, ROUNDS),
  }));
  const growth = SIZES.map((arcs) => {
    const all = arcsOf(arcs);
    const { medianMs } = timed(() => {
      const points = fewestPoints(shrunk(all, 15), 'anywhere')[0] ?? [];
      return widestMarginDeg(all, 'anywhere', points.length, 15);
    }, 7);
    return { arcs, medianMs };
  });
  return { eight, growth };
}

if (process.argv[1] !== undefined && import.meta.url === pathToFileURL(process.argv[1]).href) {
  const { eight, growth } = await benchStops();
  const ms = (/** @type {number} */ value) => `${value.toFixed(2)} ms`;
  console.log('Fewest crank positions, eight cylinders (wanted: 5 ms or less):');
  for (const { name, firstMs, medianMs, p95Ms } of eight) {
    console.log(`  ${name}: median ${ms(medianMs)}, 95 % ${ms(p95Ms)}, first ${ms(firstMs)}`);
  }
  console.log('The search by number of arcs (two a cylinder):');
  growth.forEach(({ arcs, medianMs }, place) => {
    const before = growth[place - 1];
    const times = before === undefined ? '' : `, × ${(medianMs / before.medianMs).toFixed(1)}`;
    console.log(`  ${arcs}: ${ms(medianMs)}${times}`);
  });
}
