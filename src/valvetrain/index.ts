/**
 * The valvetrain: what is true of the engine. Turns and threads, the rocker as a lever, preload,
 * windows and verdicts, pushrod length, firing order and companions, and what is wrong with a
 * typed figure.
 *
 * Pure maths: this room imports no other, and knows no job, no clock, no browser and no storage.
 * Lengths are millimetres, crank angles degrees, counts whole 48ths of a turn. Inches and thou
 * appear only in sentences and in figures published in inches.
 */

export { adjusterProblems } from './adjusterProblems';
export {
  companion,
  type Engine,
  type EngineInput,
  type EngineLayout,
  firingAngleDeg,
  firingOrderFrom,
  makeEngine,
  type Numbering,
  type RunningDirection,
  type SeenFrom,
  turnToNextDeg,
} from './engine';
export { engineProblems } from './engineProblems';
export { type EnginePreset, engineFromPreset, engines } from './engines';
export { type GroupMembers, groupOf, groupProblems, type ValveGroup } from './groups';
export type { LengthConvention, PushrodLength } from './lengths';
export {
  type Adjuster,
  type AdjusterKind,
  adjusterKinds,
  travelByGeometryMm,
  travelByPitchAloneMm,
  travelPerQuarterMm,
  travelPerTurnMm,
} from './lever';
export { type MeasuredValve, type OneLengthResult, oneLengthForAll } from './oneLength';
export { type CylinderPlace, cylinderPlaces, withBanksSwapped } from './places';
export { preloadMm } from './preload';
export { hasRefusal, type Problem, type Severity } from './problems';
export { lengthNeededMm, type PushrodCall, preloadAtLengthMm, pushrodCall } from './pushrod';
export { type OutOfScopeKind, outOfScope, outOfScopeKinds } from './scope';
export { type Evidence, type StartingSet, startingSets } from './startingSets';
export { pitchFromThreadsPerInch, type Thread, threadById, threads } from './threads';
export {
  CLOCK_HOUR,
  degrees,
  HALF_QUARTER,
  QUARTER,
  QUARTER_OF_QUARTER,
  quarters,
  TURN,
  type Turn48,
  turn48,
  turn48FromDegrees,
} from './turns';
export {
  parseValveKey,
  sameValve,
  type ValveId,
  type ValveKind,
  valveKey,
  valveKinds,
  valvesOf,
} from './valves';
export { type Across, type Verdict, type VerdictResult, verdict, verdictWords } from './verdict';
export { windowProblems } from './windowProblems';
export {
  EDGE_TOLERANCE_MM,
  type LifterKind,
  lifterKinds,
  targetPreloadMm,
  type Window,
} from './windows';
