import { type Agreement, agree, type UncertainPreload, type ValveId } from '#valvetrain';
import { type JobState, pushrodFor, setUpOf } from '../state';
import { cylinderSummaries, type ValveLine, valveLine } from '../summary';
import { lengthAs } from '../sure/lengthIn';

/** One valve of a final check: what was predicted, what is found. */
export interface FinalLine {
  readonly line: ValveLine;
  /** The measured preload moved by the change of length; null where that can't be told. */
  readonly predicted: UncertainPreload | null;
  /** Null until it is read, and where nothing was predicted. */
  readonly agreement: Agreement | null;
}

/** The present round against what the newest measuring round predicts. Empty unless it is a final check. */
export function finalCheck(state: JobState): readonly FinalLine[] {
  if (state.round.purpose !== 'final check') return [];
  return cylinderSummaries(state)
    .flatMap(({ lines }) => lines)
    .map((line) => finalLine(state, line));
}

/** One valve of a final check against what is predicted for it; null in a round that measures. */
export function finalLineOf(state: JobState, valve: ValveId): FinalLine | null {
  if (state.round.purpose !== 'final check') return null;
  return finalLine(state, valveLine(state, valve));
}

function finalLine(state: JobState, line: ValveLine): FinalLine {
  const predicted = predictedFor(state, line.valve, line);
  const found = line.standing?.preload ?? null;
  return { line, predicted, agreement: predicted && found && agree(predicted, found) };
}

function predictedFor(
  state: JobState,
  valve: ValveId,
  { standing }: ValveLine,
): UncertainPreload | null {
  const setUp = setUpOf(state);
  const measured = valveLine(state, valve, state.measured).standing;
  const length = standing === null ? pushrodFor(state, valve) : standing.length;
  if (setUp === null || measured?.preload == null || measured.length === null || length === null)
    return null;
  const was = lengthAs(setUp, measured.length, length.convention);
  if (was === null) return null;
  return { ...measured.preload, preloadMm: measured.preload.preloadMm + length.mm - was };
}
