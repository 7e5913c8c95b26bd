import type { Answer } from './answer';
import type { Offer } from './offer';
import { nanometres } from './reach';

/** One line of the order. */
export interface OrderLine {
  readonly lengthMm: number;
  /** For the valves. */
  readonly quantity: number;
  readonly spares: number;
  /** Spares wanted that the stock has not got. */
  readonly sparesShort: number;
  /** What stays on the shelf; null where lengths are ordered. */
  readonly left: number | null;
}

/**
 * The order an answer comes to, shortest length first, with so many spares of each length as far as stock
 * goes. Valves that get none are in the answer, not here.
 * @throws RangeError unless the spares are a whole number, 0 or more.
 */
export function orderList(answer: Answer, offer: Offer, sparesEach: number): readonly OrderLine[] {
  if (!Number.isSafeInteger(sparesEach) || sparesEach < 0) {
    throw new RangeError(`Spares are a whole number, 0 or more; got ${sparesEach}.`);
  }
  return answer.lengths.map(({ lengthMm, valves }) => {
    const quantity = valves.length;
    const inStock = stockOf(offer, lengthMm);
    const spares = Math.min(sparesEach, inStock - quantity);
    return {
      lengthMm,
      quantity,
      spares,
      sparesShort: sparesEach - spares,
      left: Number.isFinite(inStock) ? inStock - quantity - spares : null,
    };
  });
}

function stockOf(offer: Offer, lengthMm: number): number {
  if (offer.kind === 'grid') return Number.POSITIVE_INFINITY;
  return offer.lines
    .filter((line) => nanometres(line.lengthMm) === nanometres(lengthMm))
    .reduce((sum, { quantity }) => sum + quantity, 0);
}
