/**
 * Standard uncertainty of a figure known only to lie within ± `halfWidth`, anywhere alike: a/√3.
 * JCGM 100:2008, 4.3.7. Any unit; the result has the same.
 * @throws RangeError unless the half-width is finite and 0 or more.
 */
export function rectangular(halfWidth: number): number {
  if (!Number.isFinite(halfWidth) || halfWidth < 0) {
    throw new RangeError(`A half-width must be 0 or more; got ${halfWidth}.`);
  }
  return halfWidth / Math.sqrt(3);
}

/** Root of the sum of squares: how independent standard uncertainties add (JCGM 100:2008, 5.1.2). */
export function rootSumOfSquares(...shares: readonly number[]): number {
  return Math.sqrt(shares.reduce((sum, share) => sum + share * share, 0));
}
