/**
 * The valvetrain: what is true of the engine. Turns and threads, the rocker as a lever, preload,
 * windows and verdicts, how sure a reading is, which pushrods to choose, what other parts change,
 * firing order and companions, cam timing and where the crank must stand, and what is wrong with a
 * typed figure.
 *
 * Pure maths: this room imports no other, and knows no job, no clock, no browser and no storage.
 * Lengths are millimetres, crank angles degrees, counts whole 48ths of a turn. Inches and thou
 * appear only in sentences and in figures published in inches.
 */

export { adjusterProblems } from './adjusterProblems';
export * from './changes';
export {
  CHECKING_PER_TURN_MM,
  CHECKING_TURNS_MOST,
  type CheckingPushrod,
  checkingPreload,
  checkingPushrodLengthMm,
} from './checkingPushrod';
export * from './choosing';
export {
  type CamCard,
  eventsFromLobes,
  exhaustCentrelineDeg,
  exhaustLobe,
  intakeClosingDeg,
  intakeLobe,
  type Lobe,
  type LobeFigures,
  lobesFromEvents,
  overlapDeg,
  type StatedLift,
  statedLifts,
  type ValveEvents,
} from './crank/camCard';
export { camProblems } from './crank/camProblems';
export { fewestStops, type StopFinding, type StopWish } from './crank/fewestStops';
export { LONGEST_DURATION_DEG } from './crank/lobeProblems';
export {
  type OpenSpan,
  openSpan,
  type ValveAt,
  type ValveMotion,
  valveAt,
  valvesAt,
} from './crank/motion';
export { type PistonAt, pistonAt, pistonsAt, type Stroke } from './crank/piston';
export { describeProof, type Proof } from './crank/proof';
export {
  cautiousCam,
  FIFTY_THOU_WIDENING_DEG,
  type SeatTiming,
  seatTiming,
} from './crank/seatTiming';
export type { Shortfall, ValveMargin } from './crank/shortfalls';
export {
  DEFAULT_MARGIN_DEG,
  type PlannedStop,
  planAtAngles,
  planByCylinder,
  planByValve,
  type StopPlan,
} from './crank/stopPlan';
export { type Tdc, tdcsOf } from './crank/tdcs';
export {
  type WalkFinding,
  type WalkMethod,
  type WalkWish,
  walkFor,
  walkMethods,
} from './crank/walk';
export { goRoundAgain, type Walk, type WalkStep } from './crank/walkStep';
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
  turnBetweenDeg,
  turnToNextDeg,
} from './engine';
export { engineProblems } from './engineProblems';
export { type EnginePreset, engineFromPreset, engines } from './engines';
export { type GroupMembers, groupOf, groupProblems, type ValveGroup } from './groups';
export {
  ballFlatMm,
  inConvention,
  type LengthConvention,
  type PushrodEnd,
  type PushrodEnds,
  type PushrodLength,
} from './lengths';
export {
  type Adjuster,
  type AdjusterKind,
  adjusterKinds,
  travelByGeometryMm,
  travelByPitchAloneMm,
  travelPerQuarterMm,
  travelPerTurnMm,
} from './lever';
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
export * from './uncertainty';
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
