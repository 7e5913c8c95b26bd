import type { Engine, EnginePreset, ValveKind } from '#valvetrain';
import type { Draft } from './draft';
import { lifterWords } from './lifterWords';
import { measuringWords } from './measuringWords';
import { problemWords } from './problemWords';
import {
  layoutName,
  layouts,
  membersName,
  numberings,
  outOfScopeNames,
  turns,
  valves,
} from './setUpNames';
import { whyWords } from './whyWords';

/** Everything the set-up screen shows in words, English. */
export const setUpWords = {
  title: 'Set up a job',
  titleChange: 'Change the set-up',
  copied: (name: string) => `Copied from ‘${name}’. Check what differs on this engine.`,
  restored: 'You are back where you left off: nothing you typed is lost.',
  planned: 'From ‘before buying’: its start length stands as the test pushrod. Fill in the rest.',
  inForce: 'Show the set-up in force instead',
  startEmpty: 'Start with nothing filled in',
  loading: 'Looking for your last set-up…',
  noJob: 'This job is not open here, so its set-up can’t be changed.',
  readOnly: 'This job can only be looked at here, so its set-up can’t be changed.',

  unit: { thou: 'thou', in: 'in', mm: 'mm' },

  jobStep: 'Job',
  name: 'Job name',
  nameHint: 'Left empty, the engine names it.',

  engineStep: 'Engine',
  engine: 'Layout and firing order',
  choose: 'Choose…',
  engineTyped: 'Another firing order, typed in',
  engineNotKnown: 'Leave the engine out for now',
  notForThis: 'Not for this method',
  typedIn: 'Something else',
  outOfScopeNames,
  presetLayout: ({ layout, cylinders }: EnginePreset) => layoutName(layout, cylinders),
  cylinders: 'Cylinders',
  order: 'Firing order',
  orderHint: 'As 1-8-4-3-6-5-7-2, or with spaces.',
  layout: 'Layout',
  layouts,
  numbering: 'How the cylinders are numbered',
  numberings,
  banks: 'Banks, each from front to rear',
  banksHint: 'A stroke between the banks: 1 3 5 7 / 2 4 6 8.',
  firstBank: 'The bank with number one, seen from the rear',
  left: 'Left',
  right: 'Right',
  direction: 'The crank runs',
  clockwise: 'Clockwise',
  anticlockwise: 'Anticlockwise',
  seenFrom: 'Seen from',
  front: 'The front (pulley end)',
  rear: 'The rear (flywheel end)',
  plan: 'Cylinder numbers from above',
  planHint: 'Hold it against the engine. Small figures: place in the firing order.',
  planFront: 'Front',
  planRear: 'Rear',
  runs: (direction: string, from: string) => `Runs ${direction}, seen from the ${from}`,
  fires: (place: number) => `fires ${place}`,
  planLabel: (engine: Engine) =>
    `Engine from above, front at the top. ${engine.banks
      .map(
        (bank, at) =>
          `${engine.banks.length === 2 ? membersName({ kind: 'bank', bank: at }, true) : 'Row'}: ${bank.join(', ')}`,
      )
      .join('. ')}.`,

  scopeFold: 'Which valves',
  which: 'Valves to count',
  whichAll: 'All of them',
  whichOne: 'One cylinder',
  whichPicked: 'Picked ones',
  oneCylinder: 'Cylinder',
  picked: 'Tick the valves',
  valve: (cylinder: number, valve: ValveKind) => `${cylinder} ${valves[valve]}`,
  scopeNow: (count: number) => (count === 1 ? '1 valve' : `${count} valves`),

  rockerStep: 'Rocker and thread',
  rockers: 'Rockers',
  boltDown: 'Bolt down: pushrod length sets the preload',
  adjustable: 'Adjustable: turned to the preload wanted',
  turnsLabel: 'What turns',
  turns,
  thread: 'Thread',
  threadPitch: 'Pitch typed in, mm',
  threadTpi: 'Threads per inch, typed in',
  threadNotKnown: 'Not known yet: count only, no preload',
  metric: 'Metric',
  unified: 'Inch',
  pitch: 'Pitch',
  tpi: 'Threads per inch',
  ratio: 'Rocker ratio',
  ratioHint: 'Valve lift over lifter lift, as 1.6.',
  finerFold: 'Lean and measured travel',
  lean: 'Pushrod’s lean from the bolt',
  leanHint: 'Degrees. Left empty, none.',
  degree: '°',
  measured: 'Travel per quarter turn, measured',
  measuredHint: 'From a dial indicator. It takes the place of pitch and lever.',

  ...lifterWords,
  ...measuringWords,
  screenStep: 'Screen',
  screenUnknown: 'how large it is, and from how far the count then reads',
  screenReads: (metres: string) => `the count reads from about ${metres} m`,
  callingStep: 'Calling and help',
  callingNow: (draft: Pick<Draft, 'calling' | 'degrees' | 'hands'>) =>
    `${draft.calling === 'strokes' ? `strokes of ${draft.degrees}°` : draft.calling}, ${draft.hands}`,
  calling: 'You call',
  callings: { quarters: 'Quarter turns', turns: 'Whole turns', strokes: 'Ratchet strokes' },
  degrees: 'One stroke is',
  asksLanding: 'Ask ‘how far?’ past the last mark when the rocker seats',
  callsLastOnly: 'I call only the last number',
  clock: 'Read the mark on the socket as a clock hour',
  hands: 'Hands',
  alone: 'I work alone',
  helper: 'A helper turns the crank',

  begin: 'Start counting',
  beginAsIs: 'Count on it as it stands',
  keepChange: 'Change the set-up',
  applyAll: 'Change it for all readings',
  applyFromHere: 'Change it from here on',
  applyAsk: (readings: number) =>
    readings === 1
      ? '1 reading is taken. Work it out anew, or leave it as it was?'
      : `${readings} readings are taken. Work them all out anew, or leave them as they were?`,
  missing: (count: number) =>
    count === 1
      ? 'One thing is missing or can’t be right:'
      : `${count} things are missing or can’t be right:`,
  ready: 'Everything needed is here.',
  notKept: 'The job could not be started.',
  refused: 'The set-up could not be changed now.',
  keep: (text: string) => (text === '' ? 'Keep it so' : `Keep ${text}`),

  nameOf: (engine: Engine | null) =>
    engine === null
      ? 'Unnamed job'
      : `${layoutName(engine.layout, engine.cylinders)}, ${engine.firingOrder.join('-')}`,
  ...whyWords,
  problems: problemWords,
};
