import type { LengthConvention, MaterialId } from '#valvetrain';
import type { Units } from '#words';
import { conventionNames } from '../set-up/measuringWords';
import { bases, formulas, partsAsked } from './partWords';
import type { StepChoice } from './planDraft';
import type { TrainPlace } from './trainPlaces';

const place: Readonly<Record<TrainPlace, string>> = {
  'base circle': 'base circle',
  'lifter cup': 'lifter cup',
  plunger: 'plunger',
  'deck milled': 'deck',
  gasket: 'gasket',
  'head milled': 'head face',
  'rocker cup': 'rocker’s cup',
  'pivot shim': 'pivot',
  'valve tip': 'valve tip',
};

/** Words of 'before buying', English. */
export const planWords = {
  title: 'Before buying',
  intro:
    'Other parts mean another pushrod length. Give what you mean to change: each change is worked out where it acts, before anything is ordered.',
  restored: 'This is the plan you left here.',
  startAfresh: 'Start a new plan',
  unit: { thou: 'thou', in: 'in', mm: 'mm' },
  keep: 'Keep it',

  partsStep: 'What changes',
  parts: partsAsked,
  partsField: 'Parts that change',
  give: 'May be off by ±',
  pivot: 'The rocker’s pivot',
  pivots: {
    fixed: 'stays where it is',
    'raised to match': 'is raised by as much',
  },

  engineStep: 'The engine as it is',
  ratio: 'Rocker ratio',
  ratioHint: 'Of the rockers to be used, as 1.6. Asked for where the lever comes in.',
  ratioGive: 'May be off by ±',
  present: 'Length of the present pushrod',
  presentHint: {
    inch: 'As 7.400. A figure in mm is taken with ‘mm’ behind it.',
    mm: 'As 188.0. A figure in inches is taken with ‘in’ behind it.',
  } satisfies Record<Units, string>,
  convention: 'How that length is taken',
  conventions: conventionNames,
  endsFold: 'Ball and oil hole, for lengths stated both ways',
  end: (at: number) => (at < 2 ? 'lifter' : 'rocker'),
  ball: (end: string) => `Ball at the ${end}`,
  hole: (end: string) => `Oil hole at the ${end}`,

  preloadStep: 'Preload',
  preload: 'Preload it has now',
  preloadHint: 'Counted or measured. Left empty, the preload stays as it is, whatever it is.',
  preloadGive: 'May be off by ±',
  lifter: 'Lifter kind to be used',
  choose: 'Choose…',
  otherLifter: 'Another: its own figure',
  target: 'Preload wanted',
  targetHint: 'The lifter maker’s own figure goes before this one.',

  drawing: (terms: readonly string[], sum: string, unit: string) =>
    `Valve train from the side. ${terms.length === 0 ? 'Nothing changes yet' : terms.join(', ')}. Pushrod ${sum}. Figures in ${unit}.`,
  place,
  pushrod: 'pushrod',
  figuresIn: (unit: string) => `figures in ${unit}`,

  comesTo: 'What it comes to',
  table: 'Terms',
  columns: {
    term: 'Term',
    entered: 'Change',
    longer: 'Pushrod longer by',
  },
  bases,
  formulas,
  giveOrTake: (figure: string) => `± ${figure}`,
  noGive: 'no ± given',
  morePreload: 'Another preload',
  morePreloadBasis: 'Lengthening adds as much preload: one to one.',
  morePreloadFormula: '+ wanted − now',
  inAll: 'In all',
  nothingYet: 'Nothing to work out yet: tick a change and give its figures.',
  basis:
    'Worked out from the rocker as a lever about the valve’s tip, both arms level, valve shut. All ± are taken together at 95 %, and never more than all of them at their ends.',
  partly: (count: number) =>
    count === 1
      ? 'One change is not complete and left out here.'
      : `${count} changes are not complete and left out here.`,

  kept: (preload: string, verdict: string | null) =>
    `With the present pushrod left in, the preload would be ${preload}${verdict === null ? '' : `: ${verdict.toLowerCase()}`}.`,
  keptUnknown: (figure: string) =>
    `With the present pushrod left in, the preload would change by ${figure}.`,
  start: 'Start for the test pushrod',
  exact: (length: string) => `Worked out ${length}; nearest that can be had:`,
  otherConvention: (length: string, convention: LengthConvention) =>
    `The same by the other way of measuring: ${length}, ${convention}.`,
  startPreload: (preload: string) => `With it the preload should come to ${preload}.`,
  startUnknown: 'With it the preload should be about as it is now.',
  noStart: 'Give the present pushrod’s length for a start length.',
  step: 'Test pushrods come',
  steps: {
    '25': 'every 25 thou (0.635 mm)',
    '50': 'every 50 thou (1.27 mm)',
    'half mm': 'every half millimetre',
    any: 'in any length',
  } satisfies Record<StepChoice, string>,
  startJob: 'Start a job from this',
  startJobHint:
    'Begins a set-up with this start length as its test pushrod. The count decides what is ordered.',
  missing: (count: number) =>
    count === 1
      ? 'One thing is missing or can’t be right:'
      : `${count} things are missing or can’t be right:`,
  cautions: [
    'A start for the test, not an order: measure on the engine, then order.',
    'A test pushrod that is too long can open a valve onto a piston as its rocker seats. Go a quarter turn at a time; if it goes heavy early, stop and wait.',
    'Milling, another gasket, another cam or other valves change the clearance between valve and piston, and where the rocker meets the valve’s tip. Check both, and the spring’s room, before the engine is turned or run.',
    'Have clearances, geometry and torque checked by a qualified engine builder.',
  ],

  hotFold: 'Warm: an estimate',
  hotIntro:
    'What warmth does to the preload, by plain expansion from how warm each part is over when it was measured. An estimate with its assumptions: no figure above uses it.',
  pieces: {
    block: 'Block, from lifter to deck',
    head: 'Head and stand, from deck to rocker',
    pushrod: 'Pushrod',
  },
  material: 'Material',
  materials: {
    'aluminium 356': 'Aluminium 356',
    'aluminium 6061': 'Aluminium 6061',
    'grey iron': 'Grey iron',
    'steel 4140': 'Steel 4140',
    'steel 1020': 'Steel 1020',
  } satisfies Record<MaterialId, string>,
  pieceLength: (name: string) => `${name}: length`,
  pieceMaterial: (name: string) => `${name}: material`,
  pieceRise: (name: string) => `${name}: warmer by`,
  stem: 'Valve stem, from seat to tip',
  stemExpansion: 'Valve stem: expansion',
  stemHint:
    'For an exhaust 225 K and 10 millionths are a start from memory; valve steels vary widely.',
  kelvin: 'K',
  perK: '×10⁻⁶/K',
  hotPushrodHint: 'Left empty, the present pushrod’s.',
  hotColumns: { piece: 'Piece', assumed: 'Assumed', change: 'Preload changes by' },
  hotTable: 'Warm terms',
  assumed: (length: string, rise: string, expansion: string) =>
    `${length}, ${rise} K warmer, ${expansion} ×10⁻⁶/K`,
  stack: 'Block and head together',
  hotSum: 'Warm, in all',
  hotBasis:
    'Growth is expansion × length × warmth. Expansions at room temperature from a materials-science text, table B.6; alloys differ by a few per cent. The stack takes preload away, the pushrod and the stem (divided by the ratio) add to it.',
  hotEmpty: 'Give the lengths and how much warmer each is.',

  gapFold: 'Gap at the valve’s tip, lifter collapsed',
  gapIntro:
    'Some manuals give a gap at the valve’s tip with the lifter pressed right down. By the lever, that gap divided by the ratio is the plunger travel left.',
  gap: 'Gap found at the tip',
  gapTravel: 'Plunger’s whole travel',
  gapLeft: (figure: string) => `Travel left: ${figure}.`,
  gapPreload: (figure: string) => `So the preload is ${figure}.`,
  gapTake: 'Take it as the preload it has now',
};
