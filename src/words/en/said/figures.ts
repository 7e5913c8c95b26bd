import type { Figures } from '#counting';
import { QUARTER, type Turn48, type Verdict, type Window } from '#valvetrain';
import type { SayingContext } from '../../context';
import { decimalsNeeded, sayLengthIn, sayMm, sayQuarters, sayThou, sayTurns } from '../numbers';
import { isFull } from './pieces';

/** Longest length the numbers can say, mm, a little under a hundred inches. */
const SAYABLE_MM = 2500;

/** All a count's words depend on. */
export type CountContext = Pick<SayingContext, 'calling'>;

/** A count as it is called: 'four and a half', or 'one and a quarter turns' where turns are called. */
export function countWords(count48: Turn48, context: CountContext): string {
  return context.calling === 'turns' ? sayTurns(count48) : sayQuarters(count48);
}

/** A count with its unit where it is whole: 'four quarters', 'one quarter'; else 'four and a half'. */
export function countWithUnit(count48: Turn48, context: CountContext): string {
  const words = countWords(count48, context);
  if (context.calling === 'turns' || count48 === 0 || count48 % QUARTER !== 0) return words;
  return `${words} ${count48 === QUARTER ? 'quarter' : 'quarters'}`;
}

/**
 * A preload without its unit: 'seventy-eight', 'one point nine eight'. A decimal more where rounding
 * would carry it across an edge of the window. '' while it is not known.
 */
export function figureWords(figures: Figures, context: SayingContext): string {
  const { preloadMm, window, lengthMm } = figures;
  if (lengthMm !== undefined) return pushrodWords(lengthMm, context);
  return preloadMm === null ? '' : lengthWords(preloadMm, window, context);
}

/** A preload with its unit where whole sentences are said: 'seventy-eight thousandths'. */
export function figureWithUnit(figures: Figures, context: SayingContext): string {
  const words = figureWords(figures, context);
  if (words === '' || !isFull(context) || figures.lengthMm !== undefined) return words;
  return `${words} ${context.units === 'mm' ? 'millimetres' : 'thousandths'}`;
}

/**
 * A preload between counts: thousandths with their unit, millimetres without, since their point
 * tells them and there is no time.
 */
export function figureInPassing(figures: Figures, context: SayingContext): string {
  return context.units === 'mm' ? figureWords(figures, context) : figureWithUnit(figures, context);
}

/** The usable limits: 'seventy-five to one ten'. */
export function bandWords(window: Window, context: SayingContext): string {
  const from = lengthWords(window.usableMinMm, null, context);
  const to = lengthWords(window.usableMaxMm, null, context);
  return from === '' || to === '' ? '' : `${from} to ${to}`;
}

/** A short length by itself, with its unit: 'nine thousandths'. */
export function amountWords(mm: number, context: SayingContext): string {
  const words = lengthWords(mm, null, context);
  return words === '' ? '' : `${words} ${context.units === 'mm' ? 'millimetres' : 'thousandths'}`;
}

/** A pushrod's length: 'eight, one fifty', or millimetres. */
export function pushrodWords(lengthMm: number, context: SayingContext): string {
  if (!(lengthMm >= 0 && lengthMm <= SAYABLE_MM)) return 'an unknown length';
  return context.units === 'mm' ? sayMm(lengthMm) : sayLengthIn(lengthMm, context.lengths);
}

/** A verdict as a result says it; the same words at every talk level. */
export function verdictWords(verdict: Verdict | null): string {
  return verdict ?? '';
}

/** A verdict without its side: between counts there is no time for more. */
export function shortVerdict(verdict: Verdict | null): string {
  return verdict?.startsWith('fits') ? 'fits' : (verdict ?? '');
}

function lengthWords(mm: number, window: Window | null, context: SayingContext): string {
  if (!Number.isFinite(mm) || Math.abs(mm) > SAYABLE_MM) return '';
  const unit = context.units === 'mm' ? 'mm' : 'thou';
  const more = decimalsNeeded(mm, window === null ? [] : edgesOf(window), unit);
  return unit === 'mm' ? sayMm(mm, more) : sayThou(mm, context.numbers, more);
}

function edgesOf(window: Window): readonly number[] {
  return [
    0,
    window.usableMinMm,
    window.preferredMinMm,
    window.preferredMaxMm,
    window.usableMaxMm,
    window.plungerTravelMm - window.keepOutBottomMm,
    window.plungerTravelMm,
  ];
}
