import { lengthFigure } from '../figures';
import { type Problem, refused } from '../problems';
import { nanometres, type Reach } from './reach';

/** Pushrods of one length on the shelf. */
export interface StockLine {
  readonly lengthMm: number;
  readonly quantity: number;
}

/** The lengths that can be had, by the convention of the test lengths. */
export type Offer =
  /** Any whole number of steps from the offset, as many as wanted. */
  | { readonly kind: 'grid'; readonly stepMm: number; readonly offsetMm: number }
  | { readonly kind: 'stock'; readonly lines: readonly StockLine[] };

/** A length that comes into question, and how many there are of it. */
export interface Candidate {
  readonly lengthNm: number;
  readonly quantity: number;
}

const FINEST_STEP_MM = 0.01;

/** What is wrong with an offer; empty when it can be chosen from. */
export function offerProblems(offer: Offer): readonly Problem[] {
  switch (offer.kind) {
    case 'grid':
      return gridProblems(offer.stepMm, offer.offsetMm);
    case 'stock':
      return stockProblems(offer.lines);
    default:
      return unknownOffer(offer);
  }
}

/**
 * The lengths of an offer that can be part of a best answer, shortest first; stock lines of one
 * length are put together.
 *
 * Any valve wants its target and its proven reach, or the possible one where no step may fall into
 * the proven. Of a grid, nothing above the first step at or past all that is wanted can be best: that
 * step is nearer to every target, shorter, and proves as much. Going down, some answer keeps within what is
 * wanted and one step, so no best answer has a worse distance than that width, and nothing lies
 * further below.
 */
export function candidates(offer: Offer, reaches: readonly Reach[]): readonly Candidate[] {
  switch (offer.kind) {
    case 'grid':
      return gridCandidates(nanometres(offer.stepMm), nanometres(offer.offsetMm), reaches);
    case 'stock':
      return stockCandidates(offer.lines);
    default:
      return unknownOffer(offer);
  }
}

function gridCandidates(
  stepNm: number,
  offsetNm: number,
  reaches: readonly Reach[],
): readonly Candidate[] {
  const wanted = reaches.flatMap((reach) =>
    reach.provenToNm - reach.provenFromNm >= stepNm
      ? [reach.targetNm, reach.provenFromNm, reach.provenToNm]
      : [reach.targetNm, reach.possibleFromNm, reach.possibleToNm],
  );
  if (wanted.length === 0) return [];
  const lowest = Math.min(...wanted);
  const highest = Math.max(...wanted);
  const widthNm = highest - lowest + stepNm;
  const from = Math.floor((lowest - widthNm - offsetNm) / stepNm);
  const to = Math.ceil((highest - offsetNm) / stepNm);
  return Array.from({ length: to - from + 1 }, (_, place) => ({
    lengthNm: offsetNm + (from + place) * stepNm,
    quantity: Number.POSITIVE_INFINITY,
  }));
}

function stockCandidates(lines: readonly StockLine[]): readonly Candidate[] {
  const quantities = new Map<number, number>();
  for (const { lengthMm, quantity } of lines) {
    const lengthNm = nanometres(lengthMm);
    quantities.set(lengthNm, (quantities.get(lengthNm) ?? 0) + quantity);
  }
  return [...quantities]
    .map(([lengthNm, quantity]) => ({ lengthNm, quantity }))
    .filter(({ quantity }) => quantity > 0)
    .sort((a, b) => a.lengthNm - b.lengthNm);
}

function gridProblems(stepMm: number, offsetMm: number): readonly Problem[] {
  if (!Number.isFinite(stepMm) || stepMm < FINEST_STEP_MM) {
    return [
      refused(
        'stepMm',
        'step too fine',
        `The step between lengths must be ${lengthFigure(FINEST_STEP_MM)} or more; 0.64 mm (0.025 in) is usual.`,
      ),
    ];
  }
  if (!Number.isFinite(offsetMm)) {
    return [
      refused(
        'offsetMm',
        'missing',
        'The length that the steps start from is missing: give any length on offer.',
      ),
    ];
  }
  return [];
}

function stockProblems(lines: readonly StockLine[]): readonly Problem[] {
  if (!lines.some(({ quantity }) => quantity > 0)) {
    return [
      refused(
        'lines',
        'no stock',
        'There is no pushrod in the stock list: give at least one length and how many there are.',
      ),
    ];
  }
  return lines.flatMap(({ lengthMm, quantity }) => {
    if (!Number.isFinite(lengthMm) || lengthMm <= 0) {
      return [
        refused(
          'lines',
          'no length',
          'A line of the stock list has no length: give it in the unit of the job, above 0.',
        ),
      ];
    }
    if (!Number.isSafeInteger(quantity) || quantity < 0) {
      return [
        refused(
          'lines',
          'no quantity',
          `How many there are of ${lengthFigure(lengthMm)} must be a whole number, 0 or more.`,
        ),
      ];
    }
    return [];
  });
}

function unknownOffer(offer: never): never {
  throw new RangeError(`Unknown offer: ${JSON.stringify(offer)}.`);
}
