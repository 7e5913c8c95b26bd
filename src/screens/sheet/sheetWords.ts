import type { Reading } from '#counting';
import type {
  Across,
  AdjusterKind,
  LengthConvention,
  OutlierCause,
  TravelBasis,
  ValveId,
  ValveKind,
  ZeroFeel,
} from '#valvetrain';

/** Words of the job sheet, English. */
export const sheetWords = {
  title: 'Job sheet',
  of: (name: string) => `Job sheet of ${name}`,
  toResults: 'Back to the results',
  print: 'Print',
  csv: 'Figures as CSV',
  json: 'Figures as JSON',
  papers: 'A4 and Letter, upright. Print and save as PDF from the same window.',
  readOnly: 'Another window has this job: the notes can’t be changed here.',
  noJob: 'No job is open.',

  notes: 'On the sheet',
  builder: 'Built by',
  customer: 'For',
  remark: 'Remark',
  tags: 'Tags',
  tagsHint: 'To find the job by; a comma between two.',
  keepNotes: 'Keep',
  kept: 'Kept with the job.',
  notKept: 'The notes could not be kept now.',
  scheme: 'Pushrods on the sheet',

  counted: 'Counted',
  notCounted: 'nothing yet',
  during: (from: string, to: string) => (from === to ? from : `${from} to ${to}`),
  blank: '…………………………',

  engine: 'Engine',
  noEngine: 'Not described',
  banks: (left: string, right: string) => `Left bank ${left}, right ${right}, seen from the rear`,
  bank: (cylinders: string) => `Bank ${cylinders}`,
  running: (direction: string, from: string) => `runs ${direction} seen from the ${from}`,
  scopePart: (valves: number, of: number) => `${valves} of ${of} valves`,
  parts: 'Parts',
  rockers: { 'bolt-down': 'Rockers bolted down', adjustable: 'Adjustable rockers' },
  turned: {
    pivot: 'pivot bolt or nut',
    'pushrod-end screw': 'screw at the pushrod end',
    'valve-end screw': 'screw at the valve end',
  } satisfies Record<AdjusterKind, string>,
  pitch: (mm: string, tpi: string) => `pitch ${mm} mm (${tpi} per inch)`,
  ratio: (ratio: string) => `ratio ${ratio}`,
  lean: (deg: string) => `pushrod leans ${deg}°`,
  noThread: 'Thread not known',
  testPushrod: (length: string) => `Test pushrod ${length}`,
  checking: (closed: string, perTurn: string) =>
    `Checking pushrod, ${closed} closed, ${perTurn} a turn`,
  conventions: {
    'tip to tip': 'tip to tip',
    'full ball': 'full ball',
  } satisfies Record<LengthConvention, string>,
  method: 'Method',
  direction: {
    on: 'Counted down from zero lash to the seat',
    off: 'Counted off from the seat to first play',
    both: 'Counted on, some counted off',
    none: 'To be counted',
  },
  calling: {
    quarters: 'in quarter turns',
    turns: 'in turns',
    strokes: 'in strokes',
  },
  dialRead: (valves: string) => `by dial indicator: ${valves}`,
  feel: {
    'up-and-down play': 'zero felt by up-and-down play',
    spinning: 'zero felt by spinning the pushrod',
  } satisfies Record<ZeroFeel, string>,
  read: (how: string) => `read ${how}`,
  crank: (method: string) => `Crank: ${method.toLowerCase()}`,
  travel: 'Travel a quarter turn',
  basis: {
    geometry: 'by pitch and lever, ± 7 %',
    measured: 'measured, ± 2 %',
    'dial readings': 'from dial readings',
    'two test lengths': 'from two test lengths',
  } satisfies Record<TravelBasis, string>,
  travelIs: (figure: string, basis: string) => `${figure}, ${basis}`,
  travelByLever: (lever: string) => `By pitch and lever ${lever}`,
  travelByPitch: (pitch: string) => `By pitch alone ${pitch}`,
  noTravel: 'Not known: counts only',
  windows: 'Windows',
  noWindows: 'No lifter chosen: counts are not judged',
  window: (usable: string, preferred: string, travel: string, keepOut: string) =>
    `usable ${usable}, preferred ${preferred}, plunger travel ${travel}, keep-out ${keepOut}`,
  range: (from: string, to: string) => `${from} to ${to}`,
  keepOut: (top: string, bottom: string) => (top === bottom ? top : `${top} and ${bottom}`),

  readings: 'Readings',
  round: (round: number) => `Readings of round ${round}`,
  letter: { intake: 'I', exhaust: 'E' } satisfies Record<ValveKind, string>,
  kind: { intake: 'intake', exhaust: 'exhaust' } satisfies Record<ValveKind, string>,
  valve: ({ cylinder, valve }: ValveId) => `${cylinder} ${valve}`,
  columns: {
    valve: 'Valve',
    quarters: 'Quarters',
    turns: 'Turns',
    preload: (unit: string) => `Preload, ${unit}`,
    length: 'Length',
    place: 'In its window',
    verdict: 'Verdict',
    order: 'Order',
    fitted: 'Fitted',
    predicted: 'Predicted',
    final: 'Final',
  },
  unit: { inch: 'thou', mm: 'mm' },
  none: '–',
  notRead: 'not read',
  skipped: 'skipped',
  by: { counted: '', dial: 'dial', 'seated loose': 'loose' } satisfies Record<
    Reading['kind'],
    string
  >,
  giveOrTake: (figure: string, band: string) => `${figure} ± ${band}`,
  band: (band: string) => `±${band}`,
  cantTell: (word: Across) => `(${word}?)`,
  differs: 'differs',
  agrees: 'agrees',
  tableKey: (cantTell: boolean, far: boolean) =>
    `The ± is the guard: inside a limit by that, a verdict is proven (one-sided, 95 %).${
      cantTell ? ' A word in brackets and a question mark can’t be told from the verdict.' : ''
    }${far ? ' An exclamation mark: far from its fellows.' : ''} Hatched is usable, clear preferred; a ring is predicted, a disc final.`,
  unjudged: 'count only',

  plan: (unit: string) => `Engine from above, preload in ${unit}`,
  planFront: 'Front',
  planHere: 'here',
  planWatch: 'watch',
  planState: { open: 'counting', next: 'next', skipped: 'skipped' },
  planKey: 'The shapes',

  order: 'Pushrods to order',
  fitted: 'Pushrods fitted',
  goesTo: 'Which goes where',
  orderLine: (length: string, how: string, quantity: number, spares: number) =>
    `${length} ${how}: ${quantity}${spares > 0 ? ` and ${spares} spare` : ''}`,
  forValves: (valves: string) => `for ${valves}`,
  fits: (fits: number, of: number) => `${fits} of ${of} proven usable.`,
  noOrder: 'None yet: no valve is read on a pushrod of known length.',
  stop: (group: string, count: string, preload: string) =>
    `${group}: stop ${count} quarters past zero lash, for ${preload}.`,
  stops: 'Where to stop',

  watch: 'To look at',
  nothingOdd: 'No outliers, no repeats that differ, nothing taken off base circle.',
  outlier: (valve: string, by: string, isMore: boolean, kind: string, cause: string) =>
    `${valve}: ${by} ${isMore ? 'more' : 'less'} than the other ${kind}s; look at ${cause} first.`,
  causes: {
    'off base circle': 'base circle',
    'plunger not up': 'the plunger',
    'rocker not seated': 'the seat',
    'pushrod off its cup': 'the cups',
    'bent pushrod': 'the pushrod',
    part: 'a part',
  } satisfies Record<OutlierCause, string>,
  repeat: (valve: string, difference: string, allowed: string) =>
    `${valve}: its readings are ${difference} apart, noise up to ${allowed}.`,
  offBase: (valve: string, margin: string, wanted: string) =>
    `${valve}: taken ${margin}° off its ramps, ${wanted}° wanted.`,
  finalDiffers: (valve: string, difference: string, allowed: string) =>
    `${valve}: the final check differs from the prediction by ${difference}, noise up to ${allowed}.`,
  left: (count: number, valves: string) =>
    count === 1 ? `Not read: ${valves}.` : `${count} not read: ${valves}.`,
  leftAll: 'No valve is read yet.',
  unnamed: (count: number) =>
    count === 1 ? 'One reading has no valve’s name.' : `${count} readings have no valve’s name.`,
  cantTellThese: (valves: string) => `Not proven across a limit that hurts: ${valves}.`,
  before: (rounds: number) =>
    rounds === 1 ? 'One earlier round is in the job.' : `${rounds} earlier rounds are in the job.`,
  loose: (valves: string) => `Seated loose: ${valves}.`,
  notAsked: (valves: string) => `How far past the last mark was not asked: ${valves}.`,

  cautions: 'Cautions',
  cautionLines: [
    'This is no leave to start the engine: recheck clearances, geometry and torque, and ask a qualified engine builder.',
    'Torque, tightening sequence, clearances and lifter limits come from the makers’ own service information; none are given here. The windows above were the builder’s own figures.',
    'Seating with the piston at the top can open a valve onto it while a lifter is full of oil. Before the crank turns, lifters must have bled down: each pushrod turns in the fingers again.',
    'Zero is called at the first drag felt: true preload is a little more than counted.',
  ],
  made: (version: string) => `Made with version ${version}.`,
};
