import { sameValve, type ValveId, type Verdict } from '#valvetrain';
import type { Figures } from './figures';
import type { Reading } from './readings';
import { type JobState, setUpOf } from './state';
import { type StandingFigure, standingFigure } from './sure/standingFigure';
import { unprovenValves } from './sure/unproven';
import { cylindersOf, valvesLeft } from './walk';

/** One valve of a round with the reading that stands for it. */
export interface ValveLine {
  readonly valve: ValveId;
  /** The newest. */
  readonly reading: Reading | null;
  /** Of what stands: the mean of the readings that are alike. */
  readonly figures: Figures | null;
  /** Figures on the set-up the reading was taken on, where another has been applied since. */
  readonly earlier: Figures | null;
  /** Readings of this valve in this round, the standing one included. */
  readonly readings: number;
  /** The mean that stands and what was judged of it; null while nothing is read. */
  readonly standing: StandingFigure | null;
  readonly skipped: boolean;
}

export interface CylinderSummary {
  readonly cylinder: number;
  readonly lines: readonly ValveLine[];
  readonly done: boolean;
}

export interface EngineSummary {
  readonly wanted: number;
  readonly read: number;
  readonly left: readonly ValveId[];
  readonly verdicts: readonly { readonly verdict: Verdict; readonly valves: readonly ValveId[] }[];
  /** Valves whose verdict can't be told from the one across a limit that hurts. */
  readonly unproven: readonly ValveId[];
  /** Readings that have no valve's name yet. */
  readonly unnamed: number;
}

/** The reading that stands for a valve in a round: the newest. Undefined while there is none. */
export function standingReading(
  state: JobState,
  valve: ValveId,
  round = state.round.number,
): Reading | undefined {
  return readingsOf(state, valve, round).at(-1);
}

/** Every reading of a valve in a round, oldest first. */
export function readingsOf(
  state: JobState,
  valve: ValveId,
  round = state.round.number,
): readonly Reading[] {
  return state.readings.filter(
    (reading) =>
      reading.round === round && reading.valve !== null && sameValve(reading.valve, valve),
  );
}

/** One valve's line in a round, the present one unless said. */
export function valveLine(state: JobState, valve: ValveId, round = state.round.number): ValveLine {
  const readings = readingsOf(state, valve, round);
  const reading = readings.at(-1) ?? null;
  const standing = standingFigure(state, readings);
  const before = standingFigure(state, readings, ({ takenOn, setUp }) => takenOn ?? setUp);
  return {
    valve,
    reading,
    figures: standing?.figures ?? null,
    earlier: reading?.takenOn == null ? null : (before?.figures ?? null),
    readings: readings.length,
    standing,
    skipped: state.skipped.some((id) => sameValve(id, valve)),
  };
}

/** The cylinders of the job in firing order, each with its valves in counting order. */
export function cylinderSummaries(
  state: JobState,
  round = state.round.number,
): readonly CylinderSummary[] {
  const setUp = setUpOf(state);
  if (setUp === null) return [];
  return cylindersOf(setUp).map(({ cylinder, valves }) => {
    const lines = valves.map((valve) => valveLine(state, valve, round));
    return { cylinder, lines, done: lines.every(({ reading }) => reading !== null) };
  });
}

/** The engine so far in this round. */
export function engineSummary(state: JobState): EngineSummary {
  const lines = cylinderSummaries(state).flatMap((cylinder) => cylinder.lines);
  const left = valvesLeft(state);
  const verdicts = new Map<Verdict, ValveId[]>();
  for (const { valve, figures } of lines) {
    if (figures?.verdict != null)
      verdicts.set(figures.verdict, [...(verdicts.get(figures.verdict) ?? []), valve]);
  }
  return {
    wanted: lines.length,
    read: lines.length - left.length,
    left,
    verdicts: [...verdicts].map(([verdict, valves]) => ({ verdict, valves })),
    unproven: unprovenValves(lines),
    unnamed: state.readings.filter(
      ({ valve, round }) => valve === null && round === state.round.number,
    ).length,
  };
}
