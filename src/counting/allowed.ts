import type { CommandType } from './commands';
import { type JobState, setUpOf } from './state';
import { nextStop, nextValveHere, standsAt, valvesLeft } from './walk';

/** What the bench is doing now: the one thing that decides which commands make sense. */
export type Stage =
  | 'not opened'
  | 'discarded'
  | 'held'
  | 'cautions'
  | 'pushrods loose'
  | 'hands clear'
  | 'turning'
  | 'choose valve'
  | 'to start'
  | 'counting'
  | 'landing'
  | 'read'
  | 'all read';

/** The stage a job stands at. */
export function stageOf(state: JobState): Stage {
  if (state.status !== 'open') return state.status;
  if (state.held) return 'held';
  if (!state.cautionsHeard) return 'cautions';
  if (state.open !== null) return state.open.phase;
  return stageBetweenValves(state);
}

function stageBetweenValves(state: JobState): Stage {
  const setUp = setUpOf(state);
  if (setUp === null || setUp.engine === null) return 'choose valve';
  if (valvesLeft(state).length === 0 && state.crank.heading === null) return 'all read';
  const stop = nextStop(state);
  if (stop === null) return 'all read';
  if (standsAt(state, stop.position) && nextValveHere(state) !== undefined) return 'choose valve';
  if (state.crank.loaded) return 'pushrods loose';
  if (setUp.hands === 'with helper' && !state.crank.handsClear) return 'hands clear';
  return 'turning';
}

const ALWAYS: readonly CommandType[] = [
  'ask',
  'takeBack',
  'doubt',
  'changeSetUp',
  'nameReading',
  'note',
  'discard',
];
const BETWEEN: readonly CommandType[] = [
  'advance',
  'chooseValve',
  'skip',
  'hold',
  'moveReading',
  'repeat',
  'torqued',
  'pushrodsLoose',
  'fitPushrod',
  'readDial',
  'startRound',
];

const BY_STAGE: Readonly<Record<Stage, readonly CommandType[]>> = {
  'not opened': ['openJob'],
  discarded: ['restore'],
  held: [...ALWAYS, 'advance', 'carryOn'],
  cautions: [...ALWAYS, 'advance', 'cautionsHeard', 'fitPushrod', 'readDial', 'startRound'],
  'pushrods loose': [...ALWAYS, ...BETWEEN],
  'hands clear': [...ALWAYS, ...BETWEEN, 'handsClear', 'crankThere'],
  turning: [...ALWAYS, ...BETWEEN, 'handsClear', 'crankThere', 'overshot'],
  'choose valve': [...ALWAYS, ...BETWEEN, 'next', 'loosening'],
  'to start': [...ALWAYS, ...BETWEEN, 'next', 'zero', 'loosening', 'seat', 'overshot'],
  counting: [
    ...ALWAYS,
    'advance',
    'call',
    'step',
    'positionInTurn',
    'clock',
    'land',
    'zero',
    'seat',
    'restart',
    'skip',
    'moveReading',
    'hold',
  ],
  landing: [...ALWAYS, ...BETWEEN, 'land', 'step', 'call', 'clock', 'next'],
  read: [...ALWAYS, ...BETWEEN, 'next'],
  'all read': [
    ...ALWAYS,
    'chooseValve',
    'moveReading',
    'repeat',
    'torqued',
    'pushrodsLoose',
    'startRound',
    'fitPushrod',
    'readDial',
    'hold',
  ],
};

/**
 * The commands that make sense now. The one place that says so: decide, the ears' grammars, the
 * hint strip and the docs all read it.
 */
export function allowed(state: JobState): readonly CommandType[] {
  return BY_STAGE[stageOf(state)];
}

/** The commands 'advance' may stand for. */
export type StageCommand =
  | 'carryOn'
  | 'cautionsHeard'
  | 'pushrodsLoose'
  | 'handsClear'
  | 'crankThere'
  | 'chooseValve'
  | 'zero'
  | 'seat'
  | 'next';

/** The command 'advance' stands for now: what a held pedal does. Null when nothing is next. */
export function nextStage(state: JobState): StageCommand | null {
  const stage = stageOf(state);
  const off = state.open?.direction === 'off';
  switch (stage) {
    case 'held':
      return 'carryOn';
    case 'cautions':
      return 'cautionsHeard';
    case 'pushrods loose':
      return 'pushrodsLoose';
    case 'hands clear':
      return 'handsClear';
    case 'turning':
      return 'crankThere';
    case 'choose valve':
      return 'chooseValve';
    case 'to start':
      return off ? 'seat' : 'zero';
    case 'counting':
      return off ? 'zero' : 'seat';
    case 'landing':
    case 'read':
      return 'next';
    case 'not opened':
    case 'discarded':
    case 'all read':
      return null;
    default: {
      const never: never = stage;
      return never;
    }
  }
}
