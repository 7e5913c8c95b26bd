/**
 * Plunger travel left with the lifter collapsed, mm: the gap then found at the valve tip, by the lever,
 * over R. Travel less this is the preload.
 * @throws RangeError unless the ratio is finite and above 0 and the gap finite and 0 or more.
 */
export function travelLeftMm(tipGapMm: number, rockerRatio: number): number {
  if (!Number.isFinite(rockerRatio) || rockerRatio <= 0) {
    throw new RangeError(`A rocker ratio must be above 0; got ${rockerRatio}.`);
  }
  if (!Number.isFinite(tipGapMm) || tipGapMm < 0) {
    throw new RangeError(`A gap must be 0 or more; got ${tipGapMm}.`);
  }
  return tipGapMm / rockerRatio;
}
