import type { Compared } from '#counting';
import type { OutlierCause, Remedy, TravelBasis, ValveKind } from '#valvetrain';

const kinds: Readonly<Record<ValveKind, string>> = { intake: 'intakes', exhaust: 'exhausts' };

/** Words of how sure the readings are, English. */
export const sureWords = {
  bias: 'Zero is called at the first drag felt, and by then some of it is there: on every valve the true preload is a little more than counted.',

  repeats: 'Read more than once',
  repeatsHow:
    'Each reading found its zero afresh. Alike ones make a mean; two ways of reading one valve are held against each other, a difference of pushrods allowed for.',
  repeatColumns: { valve: 'Valve', readings: 'Readings', mean: 'Stands' },
  meanOf: (n: number) => (n === 1 ? 'of 1 reading' : `mean of ${n}`),
  by: { counted: '', dial: 'dial', 'seated loose': 'loose' },
  compared: {
    repeat: 'Repeats',
    count: 'Dial and count',
    dial: 'Count and dial',
    'other pushrod': 'The two pushrods',
  } satisfies Record<Compared['with'], string>,
  agree: 'agree',
  differ: 'don’t agree: count again',
  apart: (difference: string, allowed: string) => `${difference} apart, noise up to ${allowed}`,

  distrust: 'Readings to distrust',
  distrustHow:
    'Far from their fellows. The reading is distrusted first: look in this order, and count it again before any part is blamed.',
  far: (by: string, isMore: boolean, kind: ValveKind, among: number) =>
    `${by} ${isMore ? 'more' : 'less'} than the other ${kinds[kind]}, ${among} of them read`,
  causes: {
    'off base circle': 'Its lifter was off its base circle: check where the crank stood.',
    'plunger not up':
      'The plunger was not up: press the pushrod, it must spring back. Give it time.',
    'rocker not seated': 'The rocker was not seated, or its stand was not clean.',
    'pushrod off its cup': 'The pushrod stood off its cup at one end.',
    'bent pushrod': 'The pushrod is bent: roll it on a flat.',
    part: 'Only then a part: its rocker, lifter or valve differs from the rest.',
  } satisfies Record<OutlierCause, string>,
  countAgain: (valve: string) => `Count ${valve} again`,

  settle: 'What would settle them',
  settleHow:
    'For each verdict that can’t be told, in order of trouble, as if the same number were found again.',
  margin: (across: string, margin: string, guard: string) =>
    `can’t be told from ${across}: ${margin} from the limit, sure to ${guard}`,
  onLimit: 'It stands on the limit itself: nothing settles that.',
  remedies: {
    'measure the travel': 'Measure the travel of a turn',
    recount: 'Find zero again and recount',
    'read by the hour': 'Read the last landing by the clock hour',
    'dial indicator': 'Use a dial indicator',
  } satisfies Record<Remedy['kind'], string>,
  settles: 'settles it',
  notEnough: 'not enough alone',
  thenCounts: (more: number) => `with ${counts(more)} it settles it`,
  counts: (more: number) => `${counts(more)} settle${more === 1 ? 's' : ''} it`,
  noCount: (floor: string) => `no count will: ${floor} stays however often`,

  travel: 'Travel per quarter turn',
  travelNow: (figure: string, basis: string) => `Used now: ${figure}, ${basis}.`,
  bases: {
    geometry: 'by pitch and lever, good to 7 %',
    measured: 'as typed in, good to 2 %',
    'dial readings': 'by dial readings',
    'two test lengths': 'by two test lengths',
  } satisfies Record<TravelBasis, string>,
  giveOrTake: (figure: string, u: string) => `${figure} give or take ${u}`,
  byDial: (valves: number) =>
    valves === 1 ? 'By the dial over one count' : `By the dial over the counts of ${valves} valves`,
  byLengths: (valves: number, lengths: string) =>
    `By ${valves === 1 ? 'one valve' : `${valves} valves`} counted on two test lengths, ${lengths}`,
  contradict: (valves: string) =>
    `Dial and count contradict each other at ${valves}: read both again before this is used.`,
  noRise: (valves: string) =>
    `The counts of ${valves} do not rise with the length, so no travel can be had of them: something moved between the two, or a length is wrong.`,
  scatter:
    'They scatter more than counting does: something may have moved between the two lengths.',
  inUse: 'in use',
  use: (figure: string, readings: number) =>
    `Use ${figure}: works out ${readings === 1 ? '1 reading' : `${readings} readings`} anew`,
  noAdjuster: 'The set-up has no thread yet: give it there, and the measured travel can be used.',

  final: 'Final check',
  finalHow:
    'What was measured, moved by the change of pushrod, and what is found with the pushrods installed.',
  finalColumns: { valve: 'Valve', predicted: 'Predicted', found: 'Found' },
  notPredicted: 'nothing predicted',
  notRead: 'not read yet',
  asPredicted: 'as predicted',
  notAsPredicted: 'not as predicted: count again',
  finalSoFar: (agree: number, of: number, left: number) => {
    const rest = left === 0 ? '' : ` ${left} to go.`;
    if (of === 0) return `None read yet.${rest}`;
    return agree === of
      ? `${of === 1 ? 'The one read is' : `All ${of} read are`} as predicted.${rest}`
      : `${agree} of ${of} read are as predicted.${rest}`;
  },
};

function counts(more: number): string {
  return more === 1 ? 'one more count' : `${more} more counts`;
}
