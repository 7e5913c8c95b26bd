import type { LandingWord, Stage } from '#counting';
import type { Engine, ValveId, ValveKind } from '#valvetrain';
import { sayMissed } from '#words';
import type { Heard } from '../services';

/** English of the bench screen that is nowhere else yet. */

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

/** What became of something heard. */
function became({ kind, understood, why }: Heard): string {
  switch (kind) {
    case 'taken':
      return understood === null ? '' : `, taken as ${understood}`;
    case 'missed':
      return understood === null || why === null ? ', not sure' : `. ${sayMissed(understood, why)}`;
    case 'outside':
      return ', no phrase';
    case 'doubt':
      return ', not taken: say it again';
    case 'own voice':
      return ', my own voice';
    case 'repeat':
      return ', the same again';
    case 'withdrawn':
      return ', withdrawn';
    default: {
      const never: never = kind;
      return never;
    }
  }
}

export const benchWords = {
  units: { inch: 'thou', mm: 'mm' },
  count: 'Count',
  preload: 'Preload',
  plan: 'Engine from above',
  next: 'Next',
  hold: 'Hold',
  tap: 'Tap',
  letGo: (does: string) => `Let go: ${does.charAt(0).toLowerCase()}${does.slice(1)}`,
  said: 'Said',
  notSaid: 'Nothing said yet',
  saidSoFar: 'Said so far',
  keys: 'Keys as they now are',
  keysOff: 'Keys are switched off: touch only.',
  touch: 'Touch',
  more: 'More',
  less: 'Shut',
  goOn: 'Go on',
  takeOver: 'Take over here',
  toJobs: 'Jobs',
  toAbout: 'About',
  practise: 'Practice run',
  toResults: 'Results',
  toSetUp: 'Set-up',
  toSettings: 'Settings',
  toCrank: 'Crank',
  goTo: 'Go to cylinder',
  half: 'Half a quarter',
  seatedLoose: 'Seated loose',
  otherValve: 'It was the other valve',
  nextCylinder: 'Next cylinder',
  yes: (what: string) => `Yes: ${what}`,
  no: 'No',
  quarters: {
    quarters: (one: boolean) => (one ? 'quarter' : 'quarters'),
    turns: (one: boolean) => (one ? 'turn' : 'turns'),
  },
  turn: (n: number) => `turn ${n}`,
  notAtZero: 'not at zero yet',
  onItsStand: 'still on its stand',
  countingOff: 'counting off',
  howFar: 'how far past?',
  seated: 'seated',
  seatedLooseAt: 'seated loose',
  inDoubt: 'in doubt',
  unnamed: 'Unnamed valve',
  valve: ({ cylinder, valve }: ValveId) => `${capital(valve)} of ${cylinder}`,
  stopWords: { cylinder: 'cylinder', stop: 'stop', exhaust: 'exhaust', intake: 'intake' },
  stopNamed: (figure: string, word: 'cylinder' | 'stop' | ValveKind) =>
    word === 'cylinder' || word === 'stop' ? `${word} ${figure}` : `${figure} ${word}`,
  toPlace: (place: string) => `To ${place}`,
  atPlace: (place: string) => `At ${place}`,
  countThere: (exhausts: readonly number[], intakes: readonly number[]) =>
    `Count there: exhaust ${exhausts.join(' ') || 'none'}, intake ${intakes.join(' ') || 'none'}.`,
  position: (n: number, m: number) => `Position ${n} of ${m}`,
  readOf: (n: number, m: number) => `${n} of ${m} read`,
  kept: 'Kept',
  writing: 'Writing',
  notKept: {
    slow: 'Not kept yet: writing is slow',
    failed: 'Not kept: writing failed',
    full: 'Not kept: the disk is full',
  },
  ear: {
    open: 'Listening',
    byKey: 'Listening while held',
    opening: 'Opening the ear',
    fetching: (percent: number) => `Fetching the ear, ${percent} %`,
    tooNoisy: 'Too noisy to hear: use the pedal',
    shut: 'Ear shut: keys and pedal',
    shutByKey: 'Ear shut: hold its key to speak',
    none: 'No ear: keys and pedal',
    tooLoud: 'Ear shut, too loud: use the pedal',
    room: (db: number) => `, room ${db} dB`,
    listen: 'Listen',
    shutIt: 'Shut the ear',
    noticeTitle: 'Your speech would leave this device',
    notice:
      'While the ear is open, this browser sends what it hears to a service on the network. Keys, pedal and touch need none.',
    agree: 'Agree, and listen',
    refuse: 'No: keys and pedal',
    hearing: (heard: string) => `Hearing: ${heard} …`,
    nothingHeard: 'Nothing heard yet',
    notChecked: 'Nothing heard yet. A sound check under Settings tries the room and your voice.',
    heard: (last: Heard) => `Heard: ‘${last.heard}’${became(last)}`,
  },
  silent: {
    'switched off': 'Not speaking: switched off',
    'no voice': 'Not speaking: no voice here',
    'not woken': 'Not speaking until a press',
  },
  readOnly: 'Read only',
  otherWindow: 'Another window is counting: read only.',
  newerLog: 'Kept by a newer version of this app: read only. Reload to get that version.',
  newerApp: 'A newer version of this app has the jobs: read only. Reload to get that version.',
  opening: 'Opening the job.',
  closed: 'No job is open.',
  rest: 'Press any key to go on',
  restCounts: 'Nothing will be counted by it.',
  crankTo: (place: string) => `to ${place}`,
  roundTo: (place: string) => `round to ${place}`,
  nextIs: 'next',
  standsAt: 'cylinder at firing TDC',
  crankUnknown: 'crank not placed yet',
  running: ({ runningDirection, seenFrom }: Engine) => [runningDirection, `from the ${seenFrom}`],
  read: 'read',
  checking: {
    title: 'Checking pushrod',
    units: { inch: 'in', mm: 'mm' },
    phases: {
      none: 'Screwed right in',
      'to start': 'Screwed right in',
      counting: 'Opened so far',
      landing: 'At zero lash',
      read: 'At zero lash',
    },
    how: 'Rocker torqued down. Open the pushrod to zero lash, counting its turns.',
  },
  stopAt: (count: string, figure: string) => `Stop at about ${count}, for ${figure}`,
  nothingCounted: 'Nothing counted yet',
  noValveOpen: 'No valve open',
  noTravel: 'No thread or rocker set: counts are kept, no preload shown.',
  noLifter: 'No lifter chosen: no window to judge by.',
  cantTell: (across: string) => `can’t tell from ${across}`,
  pastTravel: 'Past the plunger’s travel',
  noEngine: 'No engine described: readings wait for a valve’s name.',
  limits: {
    keepOutTop: 'keep out',
    usable: 'usable',
    preferred: 'preferred',
    keepOutBottom: 'keep out',
    bottom: 'bottom',
  },
  letter: { exhaust: 'E', intake: 'I' },
  planWords: {
    front: 'Front',
    here: 'TDC',
    watch: 'watch',
    state: { open: 'open', next: 'next', skipped: 'skipped' },
  },
  dialLabel: (count: string, under: string, socket: string) =>
    `${count} ${under}, socket at ${socket}`,
  gaugeLabel: (figure: string, unit: string, word: string) =>
    word === '' ? `Preload ${figure} ${unit}` : `Preload ${figure} ${unit}, ${word}`,
  landing: {
    nothing: 'On the mark',
    'a bit past': 'A bit past',
    half: 'Half',
    'just shy': 'Just shy',
  } satisfies Record<LandingWord, string>,
  tapDoes: { counting: 'one more', landing: 'a quarter of a quarter past' },
  cautions: 'Before you start',
} as const;

/** What the builder does now, as a sentence; the turn of the crank has its own. */
export const todo: Readonly<Record<Exclude<Stage, 'turning'>, string>> = {
  'not opened': 'Open a job.',
  discarded: 'This job is discarded.',
  held: 'Holding: nothing is counted.',
  cautions: 'Read the cautions first.',
  'pushrods loose': 'Wait until the pushrods spin in the fingers.',
  'hands clear': 'Everybody’s hands clear?',
  'choose valve': 'Take up the next valve, or choose one under More.',
  'to start': 'Run it down to zero lash. Mark the socket at 12.',
  counting: 'Turn down to the seat. Tap at each mark.',
  landing: 'How far past the last mark?',
  read: 'This reading stands. Go on when ready.',
  'all read': 'Every valve is read. Results say which pushrods.',
};

export const todoOff = {
  'to start': 'Loosen until the rocker just leaves its stand.',
  counting: 'Loosen to first play. Tap at each mark.',
} as const;
