import { EDGE_TOLERANCE_MM } from '../windows';
import { type Answer, givesTheSame } from './answer';
import { type GroupDifference, realFactors } from './differences';
import { type Factor, factorsOf, type Scheme } from './schemes';

/** Why an answer is suggested, as codes to be put into words. */
export type Reason =
  /** No answer with more lengths makes more valves usable. */
  | 'one length serves as many'
  /** Groups differ, but by no more than counting does; no second length for that. */
  | 'difference is noise'
  /** Groups really differ, and their own lengths make more valves usable. */
  | 'difference is real'
  /** Groups really differ, yet one length serves them all. */
  | 'difference is real but one length serves'
  /** With fewer lengths some valve would be proven out. */
  | 'a valve would be proven out'
  /** Some valve is usable in no answer. */
  | 'nothing fits all'
  | 'stock runs out';

export interface Suggestion {
  readonly scheme: Scheme;
  readonly reasons: readonly Reason[];
  /** The differences the reasons speak of: the real ones, or the largest that is only noise. */
  readonly differences: readonly GroupDifference[];
}

/**
 * Picks one answer. One length for all unless there is a reason for more: fixed groups are only thought of
 * when their groups really differ, or when with one length some valve is proven out; the fewest
 * distinct lengths only when the best of those still leaves a valve proven out. Among what is thought
 * of: most valves usable, most served, fewest lengths, smallest worst distance; then the plainer.
 */
export function suggest(
  fixed: readonly Answer[],
  fewest: Answer,
  differences: readonly GroupDifference[],
): Suggestion {
  const [one, ...others] = fixed;
  if (one === undefined) return { scheme: fewest.scheme, reasons: [], differences: [] };
  const real = realFactors(differences);
  const mustSplit = provenOut(one) > 0;
  const best = others
    .filter((answer) => mustSplit || isAskedFor(answer, real))
    .filter((answer) => !givesTheSame(answer, one))
    .reduce((a, b) => (isBetter(b, a) ? b : a), one);
  const chosen = provenOut(best) > 0 && provenOut(fewest) < provenOut(best) ? fewest : best;
  return {
    scheme: chosen.scheme,
    reasons: reasonsFor(chosen, one, best, differences),
    differences: told(differences),
  };
}

/** Every factor the answer splits by is one that really differs. */
function isAskedFor(answer: Answer, real: readonly Factor[]): boolean {
  return (
    answer.scheme !== 'fewest lengths' &&
    factorsOf(answer.scheme).every((factor) => real.includes(factor))
  );
}

/** Valves that would be unusable for sure: by their own reading, or for want of a pushrod. */
function provenOut(answer: Answer): number {
  return answer.valves.filter(({ zone }) => zone === 'proven out' || zone === null).length;
}

function served(answer: Answer): number {
  return answer.valves.filter(({ lengthMm }) => lengthMm !== null).length;
}

function isBetter(a: Answer, b: Answer): boolean {
  if (a.usable !== b.usable) return a.usable > b.usable;
  if (served(a) !== served(b)) return served(a) > served(b);
  if (a.lengths.length !== b.lengths.length) return a.lengths.length < b.lengths.length;
  return a.lengths.length > 1 && a.worstMm < b.worstMm - EDGE_TOLERANCE_MM;
}

function reasonsFor(
  chosen: Answer,
  one: Answer,
  best: Answer,
  differences: readonly GroupDifference[],
): readonly Reason[] {
  const reasons: Reason[] = [];
  const isReal = differences.some((difference) => difference.isReal);
  if (chosen === one) {
    reasons.push('one length serves as many');
    if (isReal) reasons.push('difference is real but one length serves');
    else if (differences.some(({ differenceMm }) => differenceMm > EDGE_TOLERANCE_MM)) {
      reasons.push('difference is noise');
    }
  } else {
    if (chosen === best && isAskedFor(chosen, realFactors(differences))) {
      reasons.push('difference is real');
    }
    if (provenOut(one) > provenOut(chosen)) reasons.push('a valve would be proven out');
  }
  if (chosen.valves.some(({ whyNot }) => whyNot !== null && whyNot !== 'stock runs out')) {
    reasons.push('nothing fits all');
  }
  if (served(chosen) < chosen.of) reasons.push('stock runs out');
  return reasons;
}

function told(differences: readonly GroupDifference[]): readonly GroupDifference[] {
  const real = differences.filter(({ isReal }) => isReal);
  if (real.length > 0) return real;
  return differences.toSorted((a, b) => b.differenceMm - a.differenceMm).slice(0, 1);
}
