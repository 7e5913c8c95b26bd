import {
  type By,
  type CommandBody,
  decide,
  evolve,
  initial,
  type JobEvent,
  type JobState,
  type SetUp,
} from '#counting';
import { engineFromPreset, engines, makeEngine, startingSets, turn48, valvesOf } from '#valvetrain';

const preset = engines.find(({ layout }) => layout === 'inline');
if (preset === undefined) throw new Error('no inline engine among the presets');
const engine = engineFromPreset(preset, { runningDirection: 'clockwise', seenFrom: 'front' });
const window = startingSets[0]?.window;
if (window === undefined) throw new Error('no starting set');

/** An inline four, bolt-down rockers on M8 × 1.25, all valves, counted in quarters. */
export const pumpEngine: SetUp = {
  name: 'Harrow Fen, pump engine 2',
  engine,
  scope: valvesOf(engine),
  adjuster: { kind: 'pivot', pitchMm: 1.25, rockerRatio: 1.6, leanDeg: 0 },
  rockers: 'bolt-down',
  groups: [{ id: 'all', name: 'All valves', window, members: { kind: 'all' } }],
  calling: { way: 'quarters' },
  callsLastOnly: false,
  asksLanding: true,
  clock: 'mark',
  hands: 'with helper',
  testPushrod: { mm: 190, convention: 'tip to tip' },
};

/** A count started before any engine was described. */
export const nothingKnown: SetUp = {
  ...pumpEngine,
  name: 'Counted at once',
  engine: null,
  scope: [],
  adjuster: null,
  groups: [],
  hands: 'alone',
  testPushrod: null,
};

const START = Date.UTC(2026, 2, 3, 9, 0, 0);

/** Events that real commands come to, five seconds apart. A refused command is a mistake in the journey. */
export function journey(
  jobId: string,
  setUp: SetUp,
  commands: readonly CommandBody[],
  by: By = 'key',
): readonly JobEvent[] {
  const app = { version: '0.1.0', commit: 'fixture' };
  const all: readonly CommandBody[] = [{ type: 'openJob', jobId, setUp, app }, ...commands];
  let state: JobState = initial;
  const events: JobEvent[] = [];
  for (const [i, body] of all.entries()) {
    const decision = decide(state, { ...body, at: START + i * 5000, by });
    if (decision.kind !== 'events') {
      throw new Error(`${body.type} came to ${JSON.stringify(decision)}`);
    }
    state = decision.events.reduce(evolve, state);
    events.push(...decision.events);
  }
  return events;
}

const step: CommandBody = { type: 'step', size: 'step' };
const call = (quarters: number): CommandBody => ({
  type: 'call',
  to48: turn48(quarters * 12),
  form: 'bare',
});
const seat: CommandBody = { type: 'seat', loose: false };
const next: CommandBody = { type: 'next', cylinder: false };

/** Two valves counted on, with what happens on a normal day beside them. */
const walk: readonly CommandBody[] = [
  { type: 'cautionsHeard' },
  { type: 'handsClear' },
  { type: 'crankThere' },
  { type: 'zero' },
  step,
  call(3),
  { type: 'hold' },
  { type: 'carryOn' },
  { type: 'doubt' },
  call(4),
  seat,
  { type: 'land', word: 'half' },
  { type: 'torqued' },
  next,
  { type: 'zero' },
  call(1),
  { type: 'takeBack' },
  call(2),
  call(9),
  call(9),
  { type: 'takeBack' },
  { type: 'restart' },
  { type: 'zero' },
  step,
  step,
  step,
  { type: 'zero' },
  { type: 'zero' },
  { type: 'positionInTurn', within48: turn48(24) },
  { type: 'clock', mark48: turn48(40) },
  seat,
  { type: 'moveReading', valve: 'other' },
  { type: 'takeBack' },
];

/** Everything else that can happen to a job with an engine. */
const dayTwo: readonly CommandBody[] = [
  ...walk,
  next,
  { type: 'pushrodsLoose' },
  { type: 'chooseValve', cylinder: 2, valve: 'intake' },
  { type: 'handsClear' },
  { type: 'crankThere' },
  { type: 'loosening' },
  seat,
  step,
  step,
  { type: 'zero' },
  { type: 'land', word: 'just shy' },
  { type: 'repeat' },
  { type: 'zero' },
  step,
  step,
  seat,
  step,
  step,
  { type: 'skip' },
  { type: 'changeSetUp', setUp: { ...pumpEngine, asksLanding: false }, appliesTo: 'all' },
  {
    type: 'changeSetUp',
    setUp: { ...pumpEngine, calling: { way: 'strokes', degrees: 60 } },
    appliesTo: 'from here',
  },
  { type: 'fitPushrod', length: { mm: 191.25, convention: 'full ball' } },
  { type: 'startRound', purpose: 'final check' },
  { type: 'discard' },
  { type: 'restore' },
];

/** A second day's tools: dial indicator, checking pushrod, lengths to buy, a final check by groups. */
const dayThree: readonly CommandBody[] = [
  { type: 'cautionsHeard' },
  {
    type: 'note',
    notes: { builder: 'Wren', customer: 'Pump house', remark: 'Spring 3 is new', tags: ['spare'] },
  },
  { type: 'readDial', valve: { cylinder: 1, valve: 'exhaust' }, travelMm: 2.24 },
  {
    type: 'changeSetUp',
    setUp: {
      ...pumpEngine,
      zeroFeel: 'spinning',
      measuredTravel: { perQuarterMm: 0.47, uMm: 0.01, basis: 'dial readings' },
      calling: { way: 'turns' },
      checking: { closedMm: 180, perTurnMm: 1.27, convention: 'full ball' },
      buying: {
        offer: { kind: 'stock', lines: [{ lengthMm: 203.2, quantity: 9 }] },
        convention: 'tip to tip',
        spares: 1,
        ends: [
          { ballMm: 7.9375, holeMm: 2.54 },
          { ballMm: 7.9375, holeMm: 2.54 },
        ],
      },
    },
    appliesTo: 'from here',
  },
  { type: 'startRound', purpose: 'final check' },
  {
    type: 'fitPushrod',
    length: { mm: 203.2, convention: 'tip to tip' },
    valves: [{ cylinder: 1, valve: 'exhaust' }],
  },
];

/** An odd-fire V6 with its cam card: two positions, one of them overshot, then another walk. */
const oddFire: SetUp = {
  ...pumpEngine,
  name: 'Reserve pump set',
  engine: makeEngine({
    layout: 'V',
    cylinders: 6,
    firingOrder: [1, 6, 5, 4, 3, 2],
    firingAnglesDeg: [0, 90, 240, 330, 480, 570],
    numbering: 'alternating',
    runningDirection: 'clockwise',
    seenFrom: 'front',
  }),
  scope: valvesOf({ cylinders: 6 }),
  cam: {
    form: 'events',
    events: {
      intakeOpensBeforeTdcDeg: 20,
      intakeClosesAfterBdcDeg: 60,
      exhaustOpensBeforeBdcDeg: 60,
      exhaustClosesAfterTdcDeg: 20,
    },
    statedAt: 'seat',
    alsoPrinted: { intakeDurationDeg: 260, lobeSeparationDeg: 110 },
  },
  walk: {
    method: 'fewest stops',
    marginDeg: 15,
    at: 'any angle',
    prefer: 'pistons away from TDC',
  },
};

const crank: readonly CommandBody[] = [
  { type: 'cautionsHeard' },
  { type: 'handsClear' },
  { type: 'overshot' },
  { type: 'handsClear' },
  { type: 'crankThere' },
  { type: 'zero' },
  { type: 'call', to48: turn48(48), form: 'turns' },
  { type: 'seat', loose: false },
  { type: 'land', word: 'nothing' },
  {
    type: 'changeSetUp',
    setUp: {
      ...oddFire,
      cam: {
        form: 'durations',
        lobes: {
          intakeDurationDeg: 230,
          exhaustDurationDeg: 232,
          lobeSeparationDeg: 110,
          intakeCentrelineDeg: 108,
        },
        statedAt: '0.050 in',
      },
      walk: {
        method: 'exhaust opening, intake closing',
        marginDeg: 20,
        at: [0, 90.5],
        prefer: 'most margin',
      },
    },
    appliesTo: 'all',
  },
  { type: 'next', cylinder: false },
];

const unnamed: readonly CommandBody[] = [
  { type: 'cautionsHeard' },
  { type: 'chooseValve' },
  { type: 'zero' },
  step,
  step,
  step,
  step,
  seat,
  { type: 'land', word: 'nothing' },
  { type: 'nameReading', reading: 9, valve: { cylinder: 3, valve: 'exhaust' } },
];

/** The journeys that fixtures are made of and tests replay; between them every type of event happens. */
export const journeys: Readonly<Record<string, readonly JobEvent[]>> = {
  walk: journey('job-walk', pumpEngine, walk),
  'day-two': journey('job-day-two', pumpEngine, dayTwo, 'pedal'),
  'day-three': journey('job-day-three', pumpEngine, dayThree),
  crank: journey('job-crank', oddFire, crank, 'voice'),
  unnamed: journey('job-unnamed', nothingKnown, unnamed, 'touch'),
};
