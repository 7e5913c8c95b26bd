/**
 * Counting: what happened on the bench. Commands come in, `decide` turns them into events or a
 * refusal, `evolve` folds events into state, `announce` says what each has to tell, as data.
 *
 * Pure: imports valvetrain only. No clock (a command carries its own), no words, no browser, no
 * storage. `allowed` is the one place that says which commands make sense now.
 */

export { allowed, nextStage, type Stage, stageOf } from './allowed';
export { announce } from './announce';
export type {
  Announcement,
  Cue,
  EarKind,
  EarWhy,
  Fact,
  FactKind,
  Foretold,
  Repeated,
  SoundCheckStep,
  SoundVerdict,
  Standing,
} from './announce/announcement';
export { SAID_UNPROVEN } from './announce/count';
export { announceReply, announceReturn } from './announce/reply';
export { figuresNow, standingOf } from './announce/standing';
export type { AskedFor, CallForm, Command, CommandBody, CommandType, Utterance } from './commands';
export { decide } from './decide';
export type { Decision } from './decide/decision';
export {
  type By,
  type CountedBy,
  type CrankPosition,
  type Direction,
  type Envelope,
  EVENT_VERSION,
  type EventBody,
  type EventType,
  type JobEvent,
  type Question,
  type RoundPurpose,
  UNDOABLE,
} from './events';
export { evolve, replay } from './evolve';
export { type Figures, figuresForCount, windowFor } from './figures';
export { type ComparedJobs, type ComparedValve, compareJobs } from './history/compare';
export {
  FEWEST_PAST_JOBS,
  type History,
  historyOf,
  type KindHistory,
  type LengthRange,
} from './history/history';
export { type JobLengths, jobLengths, type KindLengths } from './history/jobLengths';
export { recipeOf } from './history/recipe';
export { type LandingAnswer, type LandingWord, landingOf, tapOf } from './landing';
export { buyingProblems, checkingProblems } from './moreProblems';
export { type JobNotes, MOST_NOTED, noNotes, tidyNotes } from './notes';
export { type Choosable, choosable, type LeftOut } from './order/choosable';
export { type FinalLine, finalCheck, finalLineOf } from './order/finalCheck';
export { type OrderTold, orderTold } from './order/orderTold';
export { offGrid, type PushrodAnswer, pushrodAnswer } from './order/pushrodAnswer';
export { type GroupStop, groupStops, stopFor } from './order/stops';
export { openQuestion, QUESTION_OPEN_MS } from './questions';
export {
  type CountedReading,
  type DialReading,
  type LooseReading,
  type Reading,
  readingCount48,
  readingResolution48,
  readingSaid48,
} from './readings';
export type { Refusal, RefusalCode } from './refusals';
export { type Reminder, reminders } from './reminders';
export {
  type Buying,
  buyingOf,
  type Calling,
  type CheckingRod,
  type ClockReading,
  callOf,
  LENGTH_GRID_MM,
  lengthConvention,
  markOf,
  mostOf,
  type SetUp,
  stepOf,
  unitOf,
} from './setUp';
export { dialProblems, lengthProblems, setUpProblems } from './setUpProblems';
export { type JobSheet, jobSheet, type SheetTravel } from './sheet/jobSheet';
export type { Judged, SheetValve } from './sheet/sheetValve';
export {
  type Asked,
  initial,
  type JobState,
  type OpenValve,
  pushrodFor,
  readingById,
  setUpOf,
  type ValvePhase,
} from './state';
export {
  type CylinderSummary,
  cylinderSummaries,
  type EngineSummary,
  engineSummary,
  readingsOf,
  standingReading,
  type ValveLine,
  valveLine,
} from './summary';
export { type Distrusted, distrusted } from './sure/distrusted';
export { lengthAs, lengthIn } from './sure/lengthIn';
export type { Mean } from './sure/meanOf';
export { figuresForReading } from './sure/readingFigures';
export { type Compared, type StandingFigure, standingFigure } from './sure/standingFigure';
export { countTerms, type Sureness } from './sure/sureness';
export { travelIn } from './sure/travelIn';
export {
  type DialTravel,
  type LengthsTravel,
  travelByDial,
  travelByLengths,
} from './sure/travelOffers';
export { type ReplayedLog, replayLog, tellLog } from './tellLog';
export {
  type CrankStop,
  type CylinderValves,
  cylindersOf,
  nextStop,
  plannedAt,
  positionFor,
  samePosition,
  turnBetween,
  valvesLeft,
  walkOf,
} from './walk';
export { camCardOf, timingOf, usualWalk, type WalkChoice, walkChoiceOf } from './walk/choice';
export { type CrankPlan, crankPlanOf, type PlannedPosition } from './walk/crankPlan';
export { type OffBase, offBase, offBaseNow } from './walk/offBase';
export { crankProblems } from './walk/walkProblems';
