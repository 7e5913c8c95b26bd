import { QUARTER } from '../turns';
import { rectangular, rootSumOfSquares } from './rectangular';

/** How zero lash was felt for. */
export type ZeroFeel = 'up-and-down play' | 'spinning';

/**
 * Half-width of the feel for zero, quarter turns: how far either side of true zero lash the hand
 * may call it (common practice, no source).
 */
export const ZERO_FEEL_QUARTERS: Readonly<Record<ZeroFeel, number>> = {
  'up-and-down play': 0.15,
  spinning: 0.25,
};

/** What limits one count: how finely its landing was read, and how well its zero was felt. */
export interface CountTerms {
  /**
   * Full width the landing may lie in, 48ths of a turn: 12 when it was not asked (the reading is
   * then the count and half a quarter), 6 when told or tapped in, 4 by a clock hour on the mark.
   */
  readonly resolution48: number;
  /** Half-width of the feel for zero, quarter turns: see `ZERO_FEEL_QUARTERS`. */
  readonly zeroFeelQuarters: number;
}

/**
 * Standard uncertainty of one count, quarter turns: u(q)² = r²/12 + z²/3 with r the full width of
 * what the landing resolves and z the half-width of the feel for zero, both rectangular
 * (JCGM 100:2008, 4.3.7).
 * @throws RangeError unless both are finite and 0 or more.
 */
export function countUncertaintyQuarters({ resolution48, zeroFeelQuarters }: CountTerms): number {
  return rootSumOfSquares(rectangular(resolution48 / QUARTER / 2), rectangular(zeroFeelQuarters));
}

/**
 * Standard uncertainty of the mean of counts that each found zero afresh, quarter turns. With n
 * counts of the same terms it is u(q)/√n. A recount from the same zero is not another count.
 * @throws RangeError for no counts.
 */
export function meanCountUncertaintyQuarters(counts: readonly CountTerms[]): number {
  if (counts.length === 0) throw new RangeError('A mean needs at least one count.');
  return rootSumOfSquares(...counts.map(countUncertaintyQuarters)) / counts.length;
}
