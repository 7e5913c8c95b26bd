import { LONGEST_MM } from './lengths';
import { requireBetween } from './range';
import { fromSteps, type LengthUnit, toSteps } from './rounding';

/** Two lengths nearer than this are one: the slack that window edges have. */
const EDGE_SLACK_MM = 1e-6;

/** Decimals a figure has when nothing is near: whole thou, hundredths of a millimetre. */
const USUAL_DECIMALS: Record<LengthUnit, number> = { thou: 0, mm: 2 };

/**
 * How many decimals more than usual a figure needs so that its rounding does not carry it over,
 * onto or off an edge: 0 or 1. The result is what `sayThou`, `sayMm` and the written forms take.
 * 74.6 thou at an edge of 75 is said 'seventy-four point six'; so is 75.4, since 'seventy-five'
 * would say it stands on the edge. A value on the edge (to 1e-6 mm) needs none unless the edge
 * itself falls between two figures. One decimal is all there is: 75.04 is said 'seventy-five
 * point zero'. RangeError for a value that is not a length, or an edge that is NaN.
 */
export function decimalsNeeded(
  valueMm: number,
  edgesMm: readonly number[],
  unit: LengthUnit,
): 0 | 1 {
  requireBetween(valueMm, -LONGEST_MM, LONGEST_MM, 'valueMm');
  const decimals = USUAL_DECIMALS[unit];
  const saidMm = fromSteps(toSteps(valueMm, unit, decimals), unit, decimals);
  const carried = edgesMm.some((edgeMm) => {
    requireBetween(edgeMm, -Infinity, Infinity, 'edgesMm');
    return sideOf(valueMm, edgeMm) !== sideOf(saidMm, edgeMm);
  });
  return carried ? 1 : 0;
}

function sideOf(mm: number, edgeMm: number): number {
  return Math.abs(mm - edgeMm) <= EDGE_SLACK_MM ? 0 : Math.sign(mm - edgeMm);
}
