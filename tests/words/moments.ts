import type { CylinderSummary, Fact, Figures, Reading, Standing, ValveLine } from '#counting';
import { turn48, type ValveId, type ValveKind, verdict } from '#valvetrain';
import { position, thou, valve, window } from './samples';

/** One moment on the bench: what it is called and the fact that is told. */
export interface Moment {
  readonly moment: string;
  readonly fact: Fact;
}

/** Figures of a preload in thou: judged in the sample window, or only counted. */
export function figures(preload: number | null, judged = true): Figures {
  const preloadMm = preload === null ? null : thou(preload);
  if (preloadMm === null || !judged) {
    return { preloadMm, verdict: null, window: null, pastTravel: false, sure: null };
  }
  const { word } = verdict(preloadMm, window);
  return {
    preloadMm,
    verdict: word,
    window,
    pastTravel: preload !== null && preload > 200,
    sure: null,
  };
}

export function standing(change: Partial<Standing> = {}): Standing {
  return {
    stage: 'counting',
    valve: valve(1, 'intake'),
    direction: 'on',
    count48: turn48(36),
    figures: figures(58.6),
    position: position(1),
    ...change,
  };
}

export function line(id: ValveId, preload: number, count48: number): ValveLine {
  const reading: Reading = {
    kind: 'counted',
    direction: 'on',
    count48: turn48(count48),
    landing: { told: 'nothing', past48: turn48(0) },
    mark48: turn48(12),
    id: 9,
    valve: id,
    round: 1,
    pushrod: null,
    position: null,
    at: 0,
    setUp: 1,
    takenOn: null,
    repeatOf: null,
    torqued: false,
  };
  const one = { valve: id, reading, figures: figures(preload), earlier: null, readings: 1 };
  return { ...one, standing: null, skipped: false };
}

const cylinderOne: CylinderSummary = {
  cylinder: 1,
  lines: [line(valve(1, 'exhaust'), 78.2, 48), line(valve(1, 'intake'), 88, 54)],
  done: true,
};

const all = (kind: ValveKind, cylinders: readonly number[]) =>
  cylinders.map((cylinder) => valve(cylinder, kind));
const engine = {
  wanted: 16,
  read: 16,
  left: [],
  verdicts: [
    {
      verdict: 'fits' as const,
      valves: [...all('intake', [1, 2, 4, 5, 6, 7, 8]), ...all('exhaust', [1, 2, 3, 4, 5, 6, 7])],
    },
    { verdict: 'light' as const, valves: [valve(3, 'intake'), valve(8, 'exhaust')] },
  ],
  unnamed: 0,
  unproven: [],
};
const oneLength = {
  kind: 'lengths' as const,
  scheme: 'one for all' as const,
  lengths: [{ label: {}, lengthMm: thou(8150), valves: 16 }],
  fits: 16,
  of: 16,
  failing: [],
};
const twoLengths = {
  ...oneLength,
  scheme: 'by valve' as const,
  lengths: [
    { label: { valve: 'exhaust' as const }, lengthMm: thou(8150), valves: 8 },
    { label: { valve: 'intake' as const }, lengthMm: thou(8175), valves: 8 },
  ],
};
const stops = { kind: 'stops' as const, stops: [{ group: 'All valves', count48: turn48(54) }] };
const eight = { position: position(8), index: 2, of: 8 };
const crank = { ...eight, kind: 'turn crank' as const, turnDeg: 90, companion: 5 };
const t = turn48;
/** The second of two positions: what a published list has there for this order. */
const stopTwo = {
  position: {
    angleDeg: 360,
    cylinder: 6,
    valves: [...all('exhaust', [2, 5, 6, 7]), ...all('intake', [3, 4, 6, 8])],
  },
  index: 2,
  of: 2,
};
const byProof = {
  kind: 'turn crank' as const,
  position: { angleDeg: 120, cylinder: null, valves: [valve(8, 'intake')] },
  index: 3,
  of: 16,
  turnDeg: 60,
  companion: null,
};
const exhaust8 = valve(8, 'exhaust');
const repeated = (agrees: boolean) => ({
  figures: figures(86),
  readings: 2,
  compared: {
    with: 'repeat' as const,
    agreement: { agrees, differenceMm: thou(agrees ? 4 : 14), allowedMm: thou(9) },
  },
});
const foretold = (agrees: boolean) => ({
  preloadMm: thou(103),
  agreement: { agrees, differenceMm: thou(agrees ? 3 : -25), allowedMm: thou(9) },
});
const counted = (count48: number, preload: number | null, verdictChanged = false): Fact => ({
  kind: 'counted',
  count48: t(count48),
  figures: figures(preload),
  verdictChanged,
});
const asked = (
  why: 'jumps' | 'position' | 'clock' | 'began before the seat',
  counted48: number,
  ...options: number[]
): Fact => ({
  kind: 'asked back',
  question: {
    about: 'count',
    why,
    counted48: t(counted48),
    options: options.map(turn48),
    by: 'number',
  },
});

const half = { told: 'half' as const, past48: t(6) };
const read: Extract<Fact, { kind: 'read' }> = {
  kind: 'read',
  valve: exhaust8,
  count48: t(54),
  landing: half,
  figures: figures(88),
  repeat: 1,
  unproven: 0,
  settlesMost: null,
};

/** Every kind of moment, in the order of the work. */
export const moments: readonly Moment[] = [
  { moment: 'job opened', fact: { kind: 'job opened', name: 'Harrow Fen pump engine' } },
  { moment: 'cautions, once a job', fact: { kind: 'cautions' } },
  { moment: 'position, with a helper', fact: { kind: 'hands clear?', ...eight } },
  { moment: 'turn, hands clear', fact: crank },
  { moment: 'turn, more than once round', fact: { ...crank, turnDeg: 630 } },
  { moment: 'turn, nowhere to go', fact: { ...crank, turnDeg: 0 } },
  { moment: 'first position', fact: { ...crank, turnDeg: null } },
  { moment: 'turn, no companion', fact: { ...crank, turnDeg: 144, companion: null } },
  { moment: 'position, overshot', fact: { kind: 'hands clear?', ...eight, again: true } },
  { moment: 'turn, overshot', fact: { ...crank, turnDeg: 720, again: true } },
  { moment: 'position of many valves', fact: { kind: 'hands clear?', ...stopTwo } },
  {
    moment: 'turn, to a position of many valves',
    fact: { kind: 'turn crank', ...stopTwo, turnDeg: 360, companion: 1 },
  },
  {
    moment: 'turn, by a degree wheel',
    fact: {
      ...byProof,
      proof: { kind: 'degree wheel', pastDeg: 45, firing: 6, crossing: 1 },
    },
  },
  {
    moment: 'turn, watching its valves',
    fact: { ...crank, companion: null, proof: { kind: 'watching', firing: 8 } },
  },
  {
    moment: 'turn, exhaust opening',
    fact: { ...byProof, proof: { kind: 'exhaust starts to open', cylinder: 8 } },
  },
  {
    moment: 'turn, intake closing',
    fact: { ...byProof, proof: { kind: 'intake nearly shut', cylinder: 8 } },
  },
  {
    moment: 'turn, timing dots',
    fact: {
      ...crank,
      companion: null,
      proof: { kind: 'timing dots together', crossing: 1, firing: 8 },
    },
  },
  {
    moment: 'first position, past the dots',
    fact: {
      ...crank,
      turnDeg: null,
      first: {
        proof: { kind: 'timing dots together', crossing: 1, firing: 6 },
        turnDeg: 180,
      },
    },
  },
  {
    moment: 'turn, the cam dot',
    fact: { ...crank, companion: null, proof: { kind: 'cam dot at twelve', firing: 8 } },
  },
  { moment: 'before the crank moves again', fact: { kind: 'pushrods loose?' } },
  { moment: 'pushrods loose', fact: { kind: 'pushrods loose' } },
  {
    moment: 'valve',
    fact: { kind: 'valve', valve: exhaust8, direction: 'on', sameCylinder: false, repeat: false },
  },
  {
    moment: 'next on the cylinder',
    fact: {
      kind: 'valve',
      valve: valve(8, 'intake'),
      direction: 'on',
      sameCylinder: true,
      repeat: false,
    },
  },
  {
    moment: 'valve without a name',
    fact: { kind: 'valve', valve: null, direction: 'on', sameCylinder: false, repeat: false },
  },
  {
    moment: 'valve again',
    fact: { kind: 'valve', valve: exhaust8, direction: 'on', sameCylinder: true, repeat: true },
  },
  {
    moment: 'valve, counting off',
    fact: { kind: 'valve', valve: exhaust8, direction: 'off', sameCylinder: false, repeat: false },
  },
  { moment: 'zero', fact: { kind: 'start', direction: 'on' } },
  { moment: 'off its stand', fact: { kind: 'start', direction: 'off' } },
  { moment: 'pause after a count', fact: counted(48, 78.2) },
  { moment: 'the verdict changed', fact: counted(48, 78.2, true) },
  { moment: 'past the window', fact: counted(72, 117.2, true) },
  { moment: 'past the travel', fact: counted(132, 215) },
  {
    moment: 'no window',
    fact: { kind: 'counted', count48: t(48), figures: figures(78.2, false), verdictChanged: false },
  },
  { moment: 'travel not known', fact: counted(48, null) },
  { moment: 'the same count again', fact: { kind: 'still', count48: t(48) } },
  { moment: 'zero again at zero', fact: { kind: 'still', count48: t(0) } },
  { moment: 'asked back', fact: asked('jumps', 24, 108) },
  { moment: 'asked back, position', fact: asked('position', 36, 24, 72) },
  { moment: 'asked back, twelve at zero', fact: asked('clock', 0, 48) },
  { moment: 'asked back, crossing the seat', fact: asked('began before the seat', 48, 60) },
  {
    moment: 'asked back, zero',
    fact: { kind: 'asked back', question: { about: 'zero', counted48: t(48) } },
  },
  {
    moment: 'asked back, doubtful seat',
    fact: { kind: 'asked back', question: { about: 'seat', counted48: t(48), loose: false } },
  },
  { moment: 'speech over the voice', fact: { kind: 'doubted' } },
  { moment: 'seated', fact: { kind: 'how far?', count48: t(48) } },
  { moment: 'landing tapped', fact: { kind: 'tapped', count48: t(48), past48: t(6) } },
  { moment: 'result', fact: read },
  { moment: 'result, landing not asked', fact: { ...read, landing: null } },
  {
    moment: 'result, second reading, light',
    fact: { ...read, count48: t(42), figures: figures(68.4), repeat: 2 },
  },
  {
    moment: 'result, no window',
    fact: { ...read, valve: null, figures: figures(88, false) },
  },
  { moment: 'result, count only', fact: { ...read, figures: figures(null) } },
  {
    moment: 'seated loose',
    fact: { ...read, count48: null, landing: null, figures: figures(0) },
  },
  { moment: 'seated at zero', fact: { ...read, count48: t(0), figures: figures(0) } },
  {
    moment: 'a repeat, agreeing',
    fact: { ...read, repeat: 2, repeated: repeated(true) },
  },
  {
    moment: 'a repeat, not agreeing',
    fact: { ...read, repeat: 2, repeated: repeated(false) },
  },
  { moment: 'first reading of the job', fact: { ...read, bias: true } },
  {
    moment: 'by dial indicator',
    fact: { kind: 'dial read', valve: exhaust8, figures: figures(88), repeated: null },
  },
  { moment: 'final check, one as predicted', fact: { ...read, foretold: foretold(true) } },
  { moment: 'final check, one not as predicted', fact: { ...read, foretold: foretold(false) } },
  {
    moment: 'final check by dial',
    fact: {
      kind: 'dial read',
      valve: exhaust8,
      figures: figures(78),
      repeated: null,
      foretold: foretold(false),
    },
  },
  {
    moment: 'checking pushrod, valve',
    fact: {
      kind: 'valve',
      valve: exhaust8,
      direction: 'on',
      sameCylinder: false,
      repeat: false,
      checking: true,
    },
  },
  { moment: 'checking pushrod, closed', fact: { kind: 'start', direction: 'on', checking: true } },
  {
    moment: 'checking pushrod, how far',
    fact: { kind: 'how far?', count48: t(480), checking: true },
  },
  {
    moment: 'checking pushrod, read',
    fact: { ...read, count48: t(480), figures: { ...figures(null), lengthMm: thou(7300) } },
  },
  {
    moment: 'final check, as predicted',
    fact: {
      kind: 'all read',
      summary: engine,
      order: { kind: 'final', agree: 16, of: 16, differ: [] },
      distrusted: [],
    },
  },
  { moment: 'cylinder done', fact: { kind: 'cylinder done', cylinder: cylinderOne, left: 7 } },
  { moment: 'last cylinder done', fact: { kind: 'cylinder done', cylinder: cylinderOne, left: 0 } },
  {
    moment: 'all done',
    fact: { kind: 'all read', summary: engine, order: oneLength, distrusted: [] },
  },
  {
    moment: 'all done, two lengths',
    fact: { kind: 'all read', summary: engine, order: twoLengths, distrusted: [] },
  },
  {
    moment: 'all done, one length does not fit all',
    fact: {
      kind: 'all read',
      summary: engine,
      order: { ...oneLength, fits: 14, failing: [valve(3, 'intake'), exhaust8] },
      distrusted: [{ valve: valve(3, 'intake'), offMm: thou(31), among: 8, causes: [] }],
    },
  },
  {
    moment: 'all done, adjustable rockers',
    fact: { kind: 'all read', summary: { ...engine, unnamed: 2 }, order: stops, distrusted: [] },
  },
  { moment: 'skipped', fact: { kind: 'skipped', valve: exhaust8 } },
  { moment: 'started over', fact: { kind: 'restarted', atZero: false, direction: 'on' } },
  { moment: 'started over, at zero', fact: { kind: 'restarted', atZero: true, direction: 'on' } },
  { moment: 'wrong valve', fact: { kind: 'moved', from: exhaust8, to: valve(5, 'exhaust') } },
  {
    moment: 'wrong valve, not shut where the crank stood',
    fact: { kind: 'moved', from: exhaust8, to: valve(5, 'exhaust'), offBaseDeg: -50 },
  },
  { moment: 'named later', fact: { kind: 'moved', from: null, to: exhaust8 } },
  { moment: 'torqued down', fact: { kind: 'torqued', valve: exhaust8 } },
  {
    moment: 'taken back',
    fact: {
      kind: 'taken back',
      undone: 'counted',
      undoneCount48: t(60),
      standing: standing({ count48: t(48), figures: figures(78.2) }),
      checkCrank: false,
    },
  },
  {
    moment: 'taken back across a position',
    fact: {
      kind: 'taken back',
      undone: 'positionReached',
      undoneCount48: null,
      standing: standing({ stage: 'turning', valve: null, figures: null, count48: t(0) }),
      checkCrank: true,
    },
  },
  {
    moment: 'taken back across a valve',
    fact: {
      kind: 'taken back',
      undone: 'valveLeft',
      undoneCount48: null,
      standing: standing({ stage: 'read', count48: t(54), figures: figures(88) }),
      checkCrank: false,
    },
  },
  {
    moment: 'question answered no',
    fact: {
      kind: 'taken back',
      undone: 'question',
      undoneCount48: null,
      standing: standing(),
      checkCrank: false,
    },
  },
  {
    moment: 'set-up change taken back',
    fact: {
      kind: 'taken back',
      undone: 'setupChanged',
      undoneCount48: null,
      standing: standing(),
      checkCrank: false,
    },
  },
  { moment: 'held', fact: { kind: 'held', standing: standing({ count48: t(48) }) } },
  {
    moment: 'resumed',
    fact: { kind: 'back at', standing: standing({ count48: t(54), figures: figures(88) }) },
  },
  {
    moment: 'resumed between positions',
    fact: { kind: 'back at', standing: standing({ stage: 'turning', valve: null, figures: null }) },
  },
  { moment: 'where am I', fact: { kind: 'where', standing: standing() } },
  {
    moment: 'where am I, counting off',
    fact: { kind: 'where', standing: standing({ direction: 'off' }) },
  },
  {
    moment: 'where am I, read',
    fact: {
      kind: 'where',
      standing: standing({ stage: 'read', count48: t(54), figures: figures(88) }),
    },
  },
  {
    moment: 'what’s left',
    fact: {
      kind: 'left',
      left: [valve(3, 'intake'), exhaust8],
      skipped: [valve(3, 'intake')],
    },
  },
  { moment: 'what’s left, nothing', fact: { kind: 'left', left: [], skipped: [] } },
  {
    moment: 'read the summary',
    fact: {
      kind: 'summary',
      summary: { ...engine, read: 2, verdicts: [], left: all('intake', [2, 3, 4, 5, 6, 7, 8]) },
      cylinders: [cylinderOne],
      order: { ...oneLength, fits: 2, of: 2 },
      distrusted: [],
    },
  },
  {
    moment: 'how sure',
    fact: {
      kind: 'how sure',
      standing: standing({ stage: 'read' }),
      repeated: null,
      summary: engine,
      settlesMost: null,
    },
  },
  {
    moment: 'set-up changed, for all',
    fact: { kind: 'set-up changed', appliesTo: 'all', readings: 4 },
  },
  {
    moment: 'set-up changed, from here',
    fact: { kind: 'set-up changed', appliesTo: 'from here', readings: 4 },
  },
  { moment: 'round started', fact: { kind: 'round started', purpose: 'measure' } },
  { moment: 'final check', fact: { kind: 'round started', purpose: 'final check' } },
  { moment: 'pushrod fitted', fact: { kind: 'pushrod fitted', lengthMm: thou(8175) } },
  { moment: 'no pushrod noted', fact: { kind: 'pushrod fitted', lengthMm: null } },
  { moment: 'job discarded', fact: { kind: 'job discarded' } },
  { moment: 'job restored', fact: { kind: 'job restored' } },
  {
    moment: 'refused',
    fact: {
      kind: 'refused',
      refusal: {
        code: 'not now',
        command: 'call',
        stage: 'to start',
        count48: t(0),
        direction: 'on',
        hands: 'alone',
      },
    },
  },
  { moment: 'storage slow', fact: { kind: 'not kept', why: 'slow' } },
  { moment: 'storage failed', fact: { kind: 'not kept', why: 'failed' } },
  { moment: 'storage full', fact: { kind: 'not kept', why: 'full' } },
  { moment: 'kept again', fact: { kind: 'kept again' } },
  { moment: 'another window writes', fact: { kind: 'read only' } },
  { moment: 'a newer version has the jobs', fact: { kind: 'read only', why: 'newer app' } },
  { moment: 'no voice', fact: { kind: 'no voice' } },
  { moment: 'ear open', fact: { kind: 'ear', state: 'open', why: 'asked', count48: null } },
  {
    moment: 'ear too loud',
    fact: { kind: 'ear lost', state: 'shut', why: 'too loud', count48: t(48) },
  },
  {
    moment: 'room too noisy for the ear',
    fact: { kind: 'ear lost', state: 'open', why: 'room louder', count48: t(48) },
  },
  {
    moment: 'room quiet enough again',
    fact: { kind: 'ear', state: 'open', why: 'room quieter', count48: t(48) },
  },
  {
    moment: 'another ear takes over',
    fact: { kind: 'ear lost', state: 'dead', why: 'network', count48: t(36), instead: 'offline' },
  },
  { moment: 'sound check: quiet', fact: { kind: 'sound check', step: 'quiet' } },
  { moment: 'sound check: count', fact: { kind: 'sound check', step: 'count' } },
  {
    moment: 'sound check: a command',
    fact: { kind: 'sound check', step: { command: 'take it back' } },
  },
  { moment: 'sound check: good', fact: { kind: 'sound check', step: 'good' } },
  { moment: 'sound check: carrier word', fact: { kind: 'sound check', step: 'carrier' } },
  { moment: 'sound check: pedal', fact: { kind: 'sound check', step: 'pedal' } },
  { moment: 'sound check: nothing heard', fact: { kind: 'sound check', step: 'nothing heard' } },
  { moment: 'ear dead', fact: { kind: 'ear lost', state: 'dead', why: 'network', count48: t(36) } },
];
