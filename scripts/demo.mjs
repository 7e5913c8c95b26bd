// npm run demo: makes demo-data/harrow-fen-pump-4.json, the half-counted job shown while there is no
// other. Every figure in it is invented; the events are what the app's own rooms decide.
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { ensureInstalled } from './installed.mjs';
import { root } from './root.mjs';

ensureInstalled();
const { loadTs } = await import('./load-ts.mjs');
const { decide, evolve, initial, stageOf } = await loadTs('src/counting/index.ts');
const { engineFromPreset, engines, valvesOf } = await loadTs('src/valvetrain/index.ts');
const { writeJobFile } = await loadTs('src/keeping/index.ts');

const THOU = 0.0254;
const app = { version: 'demo', commit: 'demo' };
const preset = engines.find(
  (/** @type {{ name: string }} */ { name }) => /V8/.test(name) && /1-8-4-3-6-5-7-2/.test(name),
);
const engine = engineFromPreset(preset, { runningDirection: 'clockwise', seenFrom: 'front' });

const setUp = {
  name: 'Demo: Harrow Fen workshop, pump engine 4',
  engine,
  scope: valvesOf(engine),
  adjuster: { kind: 'pivot', pitchMm: 1.25, rockerRatio: 1.65, leanDeg: 0 },
  rockers: 'bolt-down',
  groups: [
    {
      id: 'all',
      name: 'All valves',
      window: {
        lifter: 'long-travel hydraulic roller',
        plungerTravelMm: 172 * THOU,
        keepOutTopMm: 18 * THOU,
        keepOutBottomMm: 22 * THOU,
        usableMinMm: 64 * THOU,
        usableMaxMm: 118 * THOU,
        preferredMinMm: 78 * THOU,
        preferredMaxMm: 104 * THOU,
      },
      members: { kind: 'all' },
    },
  ],
  calling: { way: 'quarters' },
  callsLastOnly: false,
  asksLanding: true,
  clock: 'mark',
  hands: 'alone',
  testPushrod: { mm: 9270 * THOU, convention: 'tip to tip' },
};

/**
 * Whole quarters called, and the answer to 'how far?', valve by valve in the order of the walk.
 * @type {[number, string][]}
 */
const counted = [
  [4, 'half'],
  [4, 'a bit past'],
  [5, 'nothing'],
  [4, 'half'],
  [3, 'just shy'],
  [4, 'half'],
  [6, 'half'],
  [4, 'just shy'],
];

let at = Date.UTC(2026, 9, 14, 9, 12, 0);
let job = initial;
/** @type {unknown[]} */
const events = [];

/**
 * @param {{ type: string } & Record<string, unknown>} body
 * @param {number} [afterMs]
 */
function run(body, afterMs = 1400) {
  at += afterMs;
  const decision = decide(job, { ...body, at, by: 'key' });
  if (decision.kind !== 'events') throw new Error(`${body.type}: ${JSON.stringify(decision)}`);
  for (const event of decision.events) {
    events.push(event);
    job = evolve(job, event);
  }
}

function toCounting() {
  while (stageOf(job) !== 'counting') run({ type: 'advance' }, 6000);
}

run({ type: 'openJob', jobId: 'demo-harrow-fen-pump-4', setUp, app });
for (const [quarters, word] of counted) {
  toCounting();
  for (let i = 0; i < quarters; i += 1) run({ type: 'step', size: 'step' });
  run({ type: 'seat', loose: false });
  run({ type: 'land', word }, 2200);
  run({ type: 'next', cylinder: false }, 4000);
}
toCounting();
for (let i = 0; i < 3; i += 1) run({ type: 'step', size: 'step' });

mkdirSync(join(root, 'demo-data'), { recursive: true });
const file = await writeJobFile(events, app, at);
writeFileSync(join(root, 'demo-data', 'harrow-fen-pump-4.json'), file);
console.log(
  `${events.length} events, standing at ${stageOf(job)} of ${JSON.stringify(job.open.valve)}`,
);
