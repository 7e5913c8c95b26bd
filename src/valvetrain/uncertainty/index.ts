/**
 * How sure a reading is: its standard uncertainty in two shares, proof against limits, what would
 * settle it, agreement and outliers. By the guide to the expression of uncertainty, JCGM 100:2008.
 */
export { type Agreement, agree } from './agree';
export {
  type CountTerms,
  countUncertaintyQuarters,
  meanCountUncertaintyQuarters,
  ZERO_FEEL_QUARTERS,
  type ZeroFeel,
} from './count';
export { AGREEMENT_FACTOR, GUARD_FACTOR } from './guard';
export { type GuardEdges, guardEdges } from './guardEdges';
export { type LimitName, type LimitZone, limitZones, usableZone, type Zone } from './limits';
export {
  type FellowReading,
  OUTLIER_CUTOFF,
  type Outlier,
  type OutlierCause,
  type OutlierResult,
  outlierCauses,
  outliers,
} from './outliers';
export { rectangular, rootSumOfSquares } from './rectangular';
export {
  type CountedValve,
  type Recounts,
  type Remedy,
  type Settling,
  settles,
} from './settles';
export { TRAVEL_HALF_WIDTH, type Travel, type TravelBasis, travelOf } from './travel';
export {
  DIAL_TERMS,
  type DialOverCount,
  type DialTerms,
  type FittedTravel,
  travelFromDial,
} from './travelFromDial';
export {
  type CountOnLength,
  type OnTwoLengths,
  type TravelFromLengths,
  travelFromTwoLengths,
} from './travelFromTwoLengths';
export {
  countedPreload,
  DIAL_HALF_WIDTH_MM,
  dialPreload,
  guardMm,
  type UncertainPreload,
  uncertaintyMm,
} from './uncertain';
export { type OneSidedBias, zeroBias } from './zeroBias';
