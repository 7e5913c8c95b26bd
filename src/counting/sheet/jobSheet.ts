import {
  type Scheme,
  sameValve,
  type Travel,
  travelByGeometryMm,
  travelByPitchAloneMm,
  type ValveId,
  valveKey,
  valvesOf,
} from '#valvetrain';
import type { JobNotes } from '../notes';
import { finalCheck } from '../order/finalCheck';
import { type PushrodAnswer, pushrodAnswer } from '../order/pushrodAnswer';
import { type GroupStop, groupStops } from '../order/stops';
import type { Reading } from '../readings';
import type { SetUp } from '../setUp';
import { type JobState, setUpOf } from '../state';
import { distrusted } from '../sure/distrusted';
import { travelIn } from '../sure/travelIn';
import { type SheetValve, sheetValve } from './sheetValve';

/** A job as it is handed over: every figure of it once. Sheet, table file and JSON are made of this. */
export interface JobSheet {
  readonly jobId: string;
  readonly setUp: SetUp;
  readonly notes: JobNotes;
  /** When the first and the last reading were taken, ms since 1970; null while none is. */
  readonly counted: { readonly from: number; readonly to: number } | null;
  readonly travel: SheetTravel | null;
  /** The round the readings are of. */
  readonly round: number;
  /** Earlier rounds that measured: their readings are in the job, not on the sheet. */
  readonly roundsBefore: number;
  /** By cylinder number, intake first. */
  readonly valves: readonly SheetValve[];
  /** Readings of that round that have no valve's name. */
  readonly unnamed: readonly Reading[];
  /** Null with adjustable rockers and while nothing can be chosen. */
  readonly order: PushrodAnswer | null;
  /** With adjustable rockers: where to stop. */
  readonly stops: readonly GroupStop[];
  readonly finalCheck: boolean;
}

/** The travel per quarter turn in use, and what it might have been taken for. */
export interface SheetTravel extends Travel {
  readonly byLeverMm: number;
  readonly byPitchAloneMm: number;
}

/**
 * The sheet of a job as it stands; null before it is opened.
 *
 * @param scheme an answer to 'which pushrods' other than the suggested one.
 */
export function jobSheet(state: JobState, scheme?: Scheme): JobSheet | null {
  const setUp = setUpOf(state);
  if (setUp === null) return null;
  const { measured } = state;
  const order = pushrodAnswer(state, scheme);
  const sources = {
    answer: order?.taken ?? null,
    distrusted: distrusted(state, measured),
    final: finalCheck(state),
  };
  const readings = state.readings.filter(({ round }) => round === measured);
  return {
    jobId: state.jobId,
    setUp,
    notes: state.notes,
    counted: countedWhen(state.readings),
    travel: travelOn(setUp),
    round: measured,
    roundsBefore: new Set(state.readings.flatMap(({ round }) => (round < measured ? [round] : [])))
      .size,
    valves: valvesOn(setUp, readings).map((valve) => sheetValve(state, valve, sources)),
    unnamed: readings.filter(({ valve }) => valve === null),
    order,
    stops: groupStops(state),
    finalCheck: state.round.purpose === 'final check',
  };
}

function countedWhen(readings: readonly Reading[]): JobSheet['counted'] {
  const times = readings.map(({ at }) => at);
  return times.length === 0 ? null : { from: Math.min(...times), to: Math.max(...times) };
}

function travelOn(setUp: SetUp): SheetTravel | null {
  const travel = travelIn(setUp);
  if (travel === null || setUp.adjuster === null) return null;
  return {
    ...travel,
    byLeverMm: travelByGeometryMm(setUp.adjuster) / 4,
    byPitchAloneMm: travelByPitchAloneMm(setUp.adjuster),
  };
}

/** The valves of the job; without an engine, those that readings were named for. */
function valvesOn({ engine, scope }: SetUp, readings: readonly Reading[]): readonly ValveId[] {
  if (engine !== null)
    return valvesOf(engine).filter((id) => scope.some((other) => sameValve(id, other)));
  const named = new Map(readings.flatMap(({ valve }) => (valve ? [[valveKey(valve), valve]] : [])));
  return [...named.values()].toSorted(
    (a, b) => a.cylinder - b.cylinder || b.valve.localeCompare(a.valve),
  );
}
