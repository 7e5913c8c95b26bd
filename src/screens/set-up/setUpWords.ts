import type {
  AdjusterKind,
  Engine,
  EngineLayout,
  EnginePreset,
  Evidence,
  LengthConvention,
  Numbering,
  OutOfScopeKind,
  ValveKind,
} from '#valvetrain';
import type { Draft, GroupsBy, MembersDraft, WindowDraft } from './draft';

const layouts: Readonly<Record<EngineLayout, string>> = {
  inline: 'Inline',
  V: 'V',
  flat: 'Flat',
  other: 'Other',
};

const numberings: Readonly<Record<Numbering, string>> = {
  'in line': 'In line, front to rear',
  'by bank': 'By bank: one bank, then the other',
  alternating: 'Alternately: odd on one bank, even on the other',
  typed: 'Bank by bank, typed in',
};

const turns: Readonly<Record<Draft['turns'], string>> = {
  pivot: 'The bolt or nut that holds the rocker’s pivot',
  'pushrod-end screw': 'A screw in the pushrod end of the rocker',
  'valve-end screw': 'A screw in the valve end of the rocker',
  'shared rocker shaft or bridge': 'One shaft or bridge that holds several rockers',
};

const outOfScopeNames: Readonly<Record<OutOfScopeKind, string>> = {
  'solid lifters': 'Solid lifters',
  'overhead cam': 'Overhead cam',
  'shared rocker shaft or bridge': 'Shared rocker shaft or bridge',
  'converted-solid test lifters': 'Test lifters converted to solid',
};

const valves: Readonly<Record<ValveKind, string>> = { intake: 'intake', exhaust: 'exhaust' };

const windowFigures: Readonly<Record<keyof WindowDraft, string>> = {
  travel: 'Plunger travel',
  keepTop: 'Keep-out at the top',
  keepBottom: 'Keep-out at the bottom',
  usableMin: 'Usable from',
  usableMax: 'Usable to',
  preferredMin: 'Preferred from',
  preferredMax: 'Preferred to',
};

const groupings: Readonly<Record<GroupsBy, string>> = {
  all: 'One kind for all valves',
  valve: 'Intakes and exhausts differ',
  bank: 'The banks differ',
  cylinders: 'Some cylinders differ',
  mixed: 'As they were set before',
};

const evidences: Readonly<Record<Evidence, string>> = {
  published: 'Published for most engines: confirm against the lifter maker’s own figures',
  'common practice': 'Common practice: confirm against the lifter maker’s own figures',
};

const kinds: Readonly<Record<AdjusterKind, string>> = {
  pivot: 'The pivot goes down by the pitch, and the lever adds the pitch divided by the ratio.',
  'pushrod-end screw': 'The screw moves the pushrod by its pitch; the lever adds nothing.',
  'valve-end screw': 'The screw moves the pushrod by its pitch divided by the ratio.',
};

/** 'V8', 'Inline 6', '5 cylinders'. */
function layoutName(layout: EngineLayout, cylinders: number): string {
  if (layout === 'other') return `${cylinders} cylinders`;
  return layout === 'V' ? `V${cylinders}` : `${layouts[layout]} ${cylinders}`;
}

function membersName(members: MembersDraft, several: boolean): string {
  switch (members.kind) {
    case 'all':
      return several ? 'The rest' : 'All valves';
    case 'valve':
      return members.valve === 'intake' ? 'Intakes' : 'Exhausts';
    case 'bank':
      return members.bank === 0 ? 'Left bank' : 'Right bank';
    case 'cylinders':
      return members.text.trim() === '' ? 'Named cylinders' : `Cylinders ${members.text.trim()}`;
    default: {
      const never: never = members;
      return never;
    }
  }
}

/** Everything the set-up screen shows in words, English. */
export const setUpWords = {
  title: 'Set up a job',
  titleChange: 'Change the set-up',
  copied: (name: string) => `Copied from ‘${name}’. Check what differs on this engine.`,
  restored: 'You are back where you left off: nothing you typed is lost.',
  inForce: 'Show the set-up in force instead',
  startEmpty: 'Start with nothing filled in',
  loading: 'Looking for your last set-up…',
  noJob: 'This job is not open here, so its set-up can’t be changed.',
  readOnly: 'This job can only be looked at here, so its set-up can’t be changed.',

  units: 'Units',
  inch: 'Inches and thou',
  mm: 'Millimetres',
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
  orderHint: 'Any even-fire order: 1-8-4-3-6-5-7-2, or with spaces.',
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

  why: 'Why this figure',
  whyPerQuarter: 'Pushrod travel per quarter turn',
  whyByLever: 'By pitch and lever: what is used',
  whyByLeverUnused: 'By pitch and lever',
  whyByPitch: 'By the pitch alone',
  whyMeasured: 'Measured: what is used',
  perQuarter: 'per quarter turn',
  perTurn: 'per turn',
  whyConflict: (lever: string, pitch: string) =>
    `Much trade text takes the pitch alone as the preload: ${pitch} a turn here. The rocker is a lever about the valve’s tip, so the pushrod really goes ${lever}. Verdicts here go by the lever.`,
  whySame: 'Here pitch and lever give the same: this screw moves the pushrod by its pitch.',
  whyKinds: kinds,
  whyMeasuredOff: (percent: number) =>
    percent === 0
      ? 'Measured and geometry agree.'
      : `Measured is ${Math.abs(percent)} % ${percent < 0 ? 'below' : 'above'} what pitch and lever give. Geometry is good for about 7 % either way.`,
  whyUnmeasured:
    'Geometry is good for about 7 % either way. A dial indicator on the pushrod settles it.',
  whyNotYet: 'Choose the thread and give the rocker ratio: the figure is worked out here.',
  lever: {
    label: 'The rocker as a lever',
    pushrod: 'pushrod',
    valve: 'valve, seated',
    pitch: 'pitch p',
    travel: 'travel',
    arm: 'arm 1',
    ratioArm: 'arm R',
  },
  formula: { pivot: 'p × (1 + 1/R)', 'pushrod-end screw': 'p', 'valve-end screw': 'p / R' },
  formulaLean: 'p × (cos φ + 1/R)',

  lifterStep: 'Lifters',
  groupsFold: 'Different lifters on one engine',
  groupsBy: 'Lifters',
  groupings,
  groupName: membersName,
  groupCylinders: 'Cylinders in this group',
  lifter: 'Lifter kind',
  lifterNotKnown: 'Not known yet: count only, no verdict',
  evidences,
  windowFold: 'Window figures',
  windowFigures,
  windowUnit: (unit: string) => `Figures in ${unit} of preload, from the plunger’s top stop.`,
  wantsDial: 'This window is narrow for counted turns: check with a dial indicator.',
  putStarting: 'Put the starting figures in',
  ownFigures: 'These are your own figures, not the starting ones.',
  window: {
    label: 'Plunger travel from the top stop',
    top: 'top stop',
    bottom: 'bottom stop',
    usable: 'usable',
    preferred: 'preferred',
    keepOut: 'keep out',
  },
  noWindow: 'No window until the lifter kind is chosen.',

  pushrodStep: 'Test pushrod',
  pushrod: 'Length of the test pushrod',
  pushrodHint: {
    inch: 'As 7.400. A figure in mm is taken with ‘mm’ behind it.',
    mm: 'As 188.0. A figure in inches is taken with ‘in’ behind it.',
  },
  convention: 'How that length is taken',
  conventions: {
    'tip to tip': 'Tip to tip, over the oil-hole flats',
    'full ball': 'Full ball, to the uncut poles',
  } satisfies Record<LengthConvention, string>,

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
  problems: {
    engineMissing:
      'Choose the engine’s layout and firing order, type one in, or leave the engine out for now.',
    directionMissing: 'Say which way the crank runs: it must never be turned back.',
    orderMissing: 'The firing order is missing: type each cylinder once, as 1-3-4-2.',
    oneCylinder: (cylinders: number) => `Give one cylinder’s number, 1 to ${cylinders}.`,
    noValves: 'No valve is ticked. Tick at least one to count.',
    threadMissing:
      'Choose the thread, type its pitch or threads per inch, or say it is not known yet.',
    tpi: 'Threads per inch must be a number above 0, as 24.',
    lifterMissing: 'Choose the lifter kind, or say it is not known yet.',
    lifterOfOthers:
      'Other valves have their lifter kind: choose one here too, or leave all of them unknown.',
    cylindersMissing: 'Name the cylinders of this group by number, as 1, 4, 6, 7.',
    noPushrod:
      'Without the test pushrod’s length the preload can be read, but no pushrod length worked out.',
    notANumber: (text: string) => `‘${text.trim()}’ is no figure. Type digits, as 1.6 or 75.`,
  },
};
