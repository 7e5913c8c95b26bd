import { allowed, type CommandType, type Refusal, type Stage } from '#counting';
import { turn48 } from '#valvetrain';
import { valve } from './samples';
import { stateAt } from './stages';

const problem = {
  field: 'rockerRatio',
  code: 'ratio zero',
  severity: 'refused',
  sentence: 'The rocker ratio is 0. Enter 1 to 2.5.',
} as const;
const t = turn48;

/** Refusals with a reason of their own, one a code. */
export const reasons: readonly Refusal[] = [
  { code: 'nothing to take back' },
  { code: 'past the most', most48: t(480), counted48: t(48) },
  { code: 'clock is off' },
  { code: 'not in this job', valve: valve(3, 'intake') },
  { code: 'no such cylinder', cylinder: 9, cylinders: 8 },
  { code: 'say which valve' },
  { code: 'already that valve', valve: valve(8, 'exhaust') },
  { code: 'already counted', counted48: t(48) },
  { code: 'loose after counting', counted48: t(48) },
  { code: 'landing outside the mark', counted48: t(48), said48: t(72) },
  { code: 'no reading' },
  { code: 'unknown reading' },
  { code: 'already torqued', valve: valve(8, 'exhaust') },
  { code: 'nothing left here' },
  { code: 'bad set-up', problems: [problem, problem] },
  { code: 'bad length', problems: [problem] },
  { code: 'bad dial reading', problems: [problem] },
];

export const stages: readonly Stage[] = [
  'not opened',
  'discarded',
  'held',
  'cautions',
  'pushrods loose',
  'hands clear',
  'turning',
  'choose valve',
  'to start',
  'counting',
  'landing',
  'read',
  'all read',
];

export const commandTypes: readonly CommandType[] = [
  'openJob',
  'changeSetUp',
  'startRound',
  'fitPushrod',
  'cautionsHeard',
  'pushrodsLoose',
  'handsClear',
  'crankThere',
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
  'readDial',
  'torqued',
  'hold',
  'carryOn',
  'takeBack',
  'doubt',
  'ask',
  'discard',
  'restore',
];

export function notNow(command: CommandType, stage: Stage, off = false): Refusal {
  return {
    code: 'not now',
    command,
    stage,
    count48: t(stage === 'counting' || stage === 'landing' || stage === 'read' ? 48 : 0),
    direction: off ? 'off' : 'on',
    hands: 'with helper',
  };
}

/** The commands that are refused at a stage. */
export function refusedAt(stage: Stage): readonly CommandType[] {
  const taken = allowed(stateAt[stage]);
  return commandTypes.filter((command) => !taken.includes(command));
}
