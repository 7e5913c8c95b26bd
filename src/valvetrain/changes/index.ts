/** What other parts, or warmth, do to the length of pushrod needed. */
export {
  exhaustStemStart,
  type HotAssumptions,
  type HotEstimate,
  hotEstimate,
  type WarmPiece,
  type WarmStem,
} from './hot';
export { expansionPerK, type MaterialId } from './materials';
export {
  type ActsAt,
  type LengthChange,
  type LengthTerm,
  lengthChange,
  type PartsChange,
} from './partsChange';
export {
  type GiveOrTake,
  nearestLengthMm,
  type PartsPlan,
  type PlannedChange,
  type PlannedLength,
  type PlannedTerm,
  plannedLength,
} from './planned';
export { travelLeftMm } from './tipGap';
