import {
  type Agreement,
  type Answer,
  groupOf,
  type PushrodLength,
  sameValve,
  type UncertainPreload,
  uncertaintyMm,
  type ValveId,
  type Verdict,
  verdict,
  type Window,
} from '#valvetrain';
import { windowFor } from '../figures';
import type { FinalLine } from '../order/finalCheck';
import type { Reading } from '../readings';
import type { SetUp } from '../setUp';
import { type JobState, pushrodFor, setUpOf } from '../state';
import { readingsOf, type ValveLine, valveLine } from '../summary';
import type { Distrusted } from '../sure/distrusted';
import type { Compared } from '../sure/standingFigure';
import { type OffBase, offBase } from '../walk/offBase';

/** A preload with what it is called in its window; nulls where there is no window to judge it by. */
export interface Judged {
  readonly preload: UncertainPreload;
  readonly verdict: Verdict | null;
  /** What lies across the nearest limit that can't be told; null where all is proven. */
  readonly cantTellFrom: string | null;
}

/** All that a job sheet says of one valve. Lengths mm. */
export interface SheetValve {
  readonly valve: ValveId;
  readonly window: Window | null;
  /** The name of the group whose window it is. */
  readonly group: string | null;
  /** What stands for it in the newest round that measures. */
  readonly measured: ValveLine;
  /** Every reading of that round, oldest first. */
  readonly readings: readonly Reading[];
  /** Its repeats or its other ways of being read, where they don't agree. */
  readonly disagrees: Compared | null;
  /** Far from its fellows. */
  readonly distrusted: Distrusted | null;
  readonly offBase: OffBase | null;
  /** The pushrod to order for it; null where none is. */
  readonly orderedMm: number | null;
  /** With the pushrod fitted for the final check, else with the one to order. */
  readonly predicted: Judged | null;
  /** Only in a final check. */
  readonly final: {
    readonly fitted: PushrodLength | null;
    readonly line: ValveLine;
    readonly agreement: Agreement | null;
  } | null;
}

/** What the sheet was made from beside the job, by valve. */
export interface SheetSources {
  readonly answer: Answer | null;
  readonly distrusted: readonly Distrusted[];
  readonly final: readonly FinalLine[];
}

/** One valve's part of the sheet. */
export function sheetValve(state: JobState, valve: ValveId, sources: SheetSources): SheetValve {
  const setUp = setUpOf(state);
  const measured = valveLine(state, valve, state.measured);
  const window = measured.figures?.window ?? (setUp === null ? null : windowFor(setUp, valve));
  const ordered = sources.answer?.valves.find(({ id }) => sameValve(id, valve));
  const final = sources.final.find(({ line }) => sameValve(line.valve, valve));
  const predicted = final === undefined ? (ordered?.preload ?? null) : final.predicted;
  return {
    valve,
    window,
    group: groupName(setUp, valve),
    measured,
    readings: readingsOf(state, valve, state.measured),
    disagrees: measured.standing?.compared.find(({ agreement }) => !agreement.agrees) ?? null,
    distrusted: sources.distrusted.find((one) => sameValve(one.valve, valve)) ?? null,
    offBase: measured.reading === null ? null : offBase(state, measured.reading),
    orderedMm: ordered?.lengthMm ?? null,
    predicted: predicted === null ? null : judged(predicted, window),
    final:
      final === undefined
        ? null
        : {
            fitted: final.line.standing?.length ?? pushrodFor(state, valve),
            line: final.line,
            agreement: final.agreement,
          },
  };
}

function groupName(setUp: SetUp | null, valve: ValveId): string | null {
  if (setUp?.engine == null) return setUp?.groups[0]?.name ?? null;
  return groupOf(valve, setUp.groups, setUp.engine)?.name ?? null;
}

function judged(preload: UncertainPreload, window: Window | null): Judged {
  if (window === null) return { preload, verdict: null, cantTellFrom: null };
  const { word, against } = verdict(preload.preloadMm, window, uncertaintyMm(preload));
  return { preload, verdict: word, cantTellFrom: against?.word ?? null };
}
