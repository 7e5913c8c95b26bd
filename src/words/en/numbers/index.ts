/**
 * Numbers in English, both ways: figures into words and written forms, and what recognisers
 * write back into numbers. Pure; lengths in millimetres, counts in whole 48ths of a turn.
 * No sentences, units of measure beyond the figure's own, verdicts or commands live here, and
 * nothing here decides what a number means: that is for whoever knows what is being asked.
 */
export {
  type ClockDirection,
  type ClockTime,
  clockOf,
  clockPosition48,
  sayClock,
} from './clock';
export { sayQuarters, sayTurns } from './counts';
export { decimalsNeeded } from './edges';
export type { Fraction } from './fractions';
export { type HeardClock, hearClock } from './hearClock';
export { hearLength } from './hearLength';
export { type CountUnit, type HeardNumber, heardCount48, hearNumber } from './hearNumber';
export { hearWhole } from './hearWhole';
export {
  AND_HOMOPHONES,
  CLOCK_HOMOPHONES,
  type Homophone,
  NOUGHT_HOMOPHONES,
  NUMBER_HOMOPHONES,
  PART_HOMOPHONES,
} from './homophones';
export { type LengthStyle, sayLengthIn, sayMm, sayThou } from './lengths';
export type { LengthUnit } from './rounding';
export { cardinal, type NumberStyle, sayWhole, shop } from './whole';
export {
  figureInches,
  figureMm,
  figureThou,
  writeCount,
  writeInches,
  writeMm,
  writeThou,
} from './written';
