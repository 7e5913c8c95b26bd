import {
  allowed,
  type By,
  type Command,
  type CommandBody,
  type CommandType,
  type JobState,
  type LandingWord,
  noNotes,
  setUpOf,
  stepOf,
} from '#counting';
import { turn48, type ValveId, valveKinds } from '#valvetrain';
import type { Random } from './random';
import { anySetUp, badSetUp } from './setUps';

/** How often an allowed command is chosen, against 1 for the rest. */
const weights: Partial<Record<CommandType, number>> = {
  advance: 5,
  call: 5,
  step: 5,
  positionInTurn: 2,
  clock: 2,
  zero: 3,
  seat: 3,
  land: 3,
  next: 2,
  crankThere: 4,
  handsClear: 3,
  pushrodsLoose: 2,
  cautionsHeard: 5,
  carryOn: 5,
  discard: 0.3,
  changeSetUp: 0.5,
  startRound: 0.3,
  skip: 0.6,
};

const types: readonly CommandType[] = [
  'openJob',
  'changeSetUp',
  'startRound',
  'fitPushrod',
  'readDial',
  'cautionsHeard',
  'pushrodsLoose',
  'handsClear',
  'crankThere',
  'overshot',
  'advance',
  'chooseValve',
  'loosening',
  'zero',
  'call',
  'step',
  'positionInTurn',
  'clock',
  'seat',
  'land',
  'next',
  'skip',
  'restart',
  'repeat',
  'moveReading',
  'nameReading',
  'torqued',
  'hold',
  'carryOn',
  'takeBack',
  'doubt',
  'ask',
  'note',
  'discard',
  'restore',
];

/** A command for this state: four in five are of a kind that makes sense now, the rest wild. */
export function anyCommand(state: JobState, random: Random, at: number): Command {
  const wild = random.chance(0.2);
  const type = wild
    ? (types[random.whole(types.length)] ?? 'ask')
    : weighed(allowed(state), random);
  const by = random.pick<By>(['voice', 'voice', 'key', 'pedal', 'touch']);
  const body = bodyOf(type, state, random, wild);
  if (by !== 'voice' || random.chance(0.3)) return { ...body, at, by };
  const id = `u${random.chance(0.2) ? state.seq - 1 : state.seq}`;
  const agoMs = random.pick([300, 800, 800, 3000, 9000]);
  return { ...body, at, by, utterance: { id, beganAt: at - agoMs } };
}

function weighed(from: readonly CommandType[], random: Random): CommandType {
  const all = from.reduce((sum, type) => sum + (weights[type] ?? 1), 0);
  let left = random.next() * all;
  for (const type of from) {
    left -= weights[type] ?? 1;
    if (left < 0) return type;
  }
  return from[0] ?? 'ask';
}

function bodyOf(type: CommandType, state: JobState, random: Random, wild: boolean): CommandBody {
  switch (type) {
    case 'openJob':
      return {
        type,
        jobId: 'job',
        setUp: random.chance(0.2) ? badSetUp(random) : anySetUp(random),
        app: { version: '0', commit: '0' },
      };
    case 'changeSetUp':
      return {
        type,
        setUp: wild ? badSetUp(random) : changed(state, random),
        appliesTo: random.pick(['all', 'from here']),
      };
    case 'startRound':
      return { type, purpose: random.pick(['measure', 'final check']) };
    case 'fitPushrod': {
      const mm = random.pick(wild ? [3, Number.POSITIVE_INFINITY] : [200, 203.2, 207.645]);
      const length = random.chance(0.1) ? null : ({ mm, convention: 'tip to tip' } as const);
      return random.chance(0.3)
        ? { type, length, valves: [anyValve(state, random, wild)] }
        : { type, length };
    }
    case 'readDial':
      return {
        type,
        valve: anyValve(state, random, wild),
        travelMm: random.pick(wild ? [-1, 40, Number.NaN] : [1.9, 2.2, 2.24, 2.6, 0]),
      };
    case 'chooseValve': {
      const { cylinder, valve } = anyValve(state, random, wild);
      return {
        type,
        ...(random.chance(0.6) ? { cylinder } : {}),
        ...(random.chance(0.5) ? { valve } : {}),
      };
    }
    case 'call':
      return {
        type,
        to48: anyCount(state, random, wild),
        form: random.pick(['bare', 'bare', 'turns']),
      };
    case 'step':
      return { type, size: random.pick(['step', 'step', 'half quarter']) };
    case 'positionInTurn':
      return { type, within48: turn48(random.pick([12, 24, 36, 48])) };
    case 'clock':
      return { type, mark48: turn48(2 * random.whole(24)) };
    case 'seat':
      return { type, loose: random.chance(0.2) };
    case 'land': {
      const word = random.pick<LandingWord>(['nothing', 'a bit past', 'half', 'just shy']);
      return random.chance(0.7)
        ? { type, word }
        : { type, word, of48: turn48(12 * random.whole(6)) };
    }
    case 'next':
      return { type, cylinder: random.chance(0.3) };
    case 'moveReading': {
      const { cylinder, valve } = anyValve(state, random, wild);
      return {
        type,
        ...(random.chance(0.5) ? { cylinder } : {}),
        ...(random.chance(0.6) ? { valve: random.pick([valve, 'other']) } : {}),
      };
    }
    case 'nameReading': {
      const reading = state.readings[random.whole(state.readings.length)]?.id ?? 0;
      return { type, reading: wild ? -1 : reading, valve: anyValve(state, random, wild) };
    }
    case 'note':
      return { type, notes: { ...noNotes, remark: random.pick(['', ' spring  3 new ']) } };
    case 'ask':
      return { type, about: random.pick(['again', 'where', 'how sure', 'left', 'summary']) };
    default:
      return { type };
  }
}

function changed(state: JobState, random: Random) {
  const setUp = setUpOf(state);
  if (setUp === null || random.chance(0.3)) return anySetUp(random);
  const { calling, asksLanding, adjuster, groups } = anySetUp(random);
  return {
    ...setUp,
    ...random.pick<object>([{ calling }, { asksLanding }, { adjuster }, { groups }]),
  };
}

function anyValve(state: JobState, random: Random, wild: boolean): ValveId {
  const scope = setUpOf(state)?.scope ?? [];
  const chosen = scope[random.whole(scope.length)];
  if (!wild && chosen !== undefined && random.chance(0.9)) return chosen;
  return {
    cylinder: 1 + random.whole(wild ? 12 : 4),
    valve: valveKinds[random.whole(2)] ?? 'intake',
  };
}

/** Mostly the next count, or the one asked back; now and then the same, one behind, or far off. */
function anyCount(state: JobState, random: Random, wild: boolean) {
  const setUp = setUpOf(state);
  const step = setUp ? stepOf(setUp.calling) : 12;
  const now = state.open?.count48 ?? 0;
  const asked = state.asked?.question;
  if (asked?.about === 'count' && random.chance(0.4)) return asked.options[0] ?? turn48(0);
  const ahead = random.pick([step, step, step, 2 * step, 6, 0, -step, 96]);
  return turn48(Math.max(0, wild ? random.whole(4000) : now + ahead));
}
