import type { JobSheet, SheetValve } from '#counting';
import { guardMm, type UncertainPreload, type ValveKind, valveKey, valveKinds } from '#valvetrain';
import { shown, type Units } from '#words';
import type { Dot } from '../pieces/DotParts';
import type { DotRow } from '../pieces/DotRows';
import { figureIn } from '../pieces/figureIn';
import { picturesWords as words } from './picturesWords';

/** A preload with its band: '88 ± 8'. */
export function withBand(units: Units, preload: UncertainPreload): string {
  return words.giveOrTake(figureIn(units, preload.preloadMm), figureIn(units, guardMm(preload)));
}

/** A valve's reading as the picture's end and its table say it. */
export function readingText(units: Units, { measured, window }: SheetValve): string {
  const { figures } = measured;
  if (figures?.preloadMm == null) return words.none;
  const figure = figureIn(units, figures.preloadMm, window);
  return figures.sure === null
    ? figure
    : words.giveOrTake(figure, figureIn(units, figures.sure.guardMm));
}

/** Every valve that has a preload, as a row with its verdict's shape. */
export function preloadRows(sheet: JobSheet, units: Units): readonly DotRow[] {
  return sheet.valves.flatMap((one) => {
    const { valve, window, measured } = one;
    const { figures } = measured;
    if (figures?.preloadMm == null) return [];
    const dot: Dot = {
      mm: figures.preloadMm,
      bandMm: figures.sure?.guardMm ?? null,
      shape: figures.verdict ?? 'solid',
    };
    return [
      {
        key: valveKey(valve),
        label: `${valve.cylinder} ${words.letter[valve.valve]}`,
        window,
        dots: [dot],
        figure: readingText(units, one),
      },
    ];
  });
}

/** The intakes or the exhausts: their preloads, brought to one test pushrod. Lengths mm. */
export interface KindFigures {
  readonly valve: ValveKind;
  readonly preloadsMm: readonly number[];
  readonly meanMm: number;
}

/** Both kinds, and the test pushrod all were brought to; null where there was but one. */
export function kindFigures(sheet: JobSheet): {
  readonly kinds: readonly KindFigures[];
  readonly broughtToMm: number | null;
} {
  const read = sheet.valves.filter(({ measured }) => measured.figures?.preloadMm != null);
  const lengths = new Set(read.flatMap(({ measured }) => measured.standing?.length?.mm ?? []));
  const [first] = lengths;
  const broughtToMm = lengths.size > 1 && first !== undefined ? first : null;
  const preload = ({ measured }: SheetValve) => {
    const own = measured.standing?.length?.mm ?? broughtToMm ?? 0;
    return (measured.figures?.preloadMm ?? 0) + (broughtToMm === null ? 0 : broughtToMm - own);
  };
  const kinds = valveKinds.flatMap((valve) => {
    const preloadsMm = read.filter((one) => one.valve.valve === valve).map(preload);
    if (preloadsMm.length === 0) return [];
    const meanMm = preloadsMm.reduce((sum, mm) => sum + mm, 0) / preloadsMm.length;
    return [{ valve, preloadsMm, meanMm }];
  });
  return { kinds, broughtToMm };
}

/** Predicted and found of every valve of a final check. */
export function finalRows(sheet: JobSheet, units: Units): readonly DotRow[] {
  return sheet.valves.flatMap(({ valve, window, predicted, final }) => {
    const found = final?.line.standing?.preload ?? null;
    const dots: readonly Dot[] = [
      ...(predicted === null ? [] : [dotOf(predicted.preload, 'hollow')]),
      ...(found === null ? [] : [dotOf(found, 'solid')]),
    ];
    if (final === null || dots.length === 0) return [];
    const figure = [predicted?.preload ?? null, found]
      .map((one) => (one === null ? words.none : figureIn(units, one.preloadMm)))
      .join(' → ');
    const label = `${valve.cylinder} ${words.letter[valve.valve]}`;
    return [{ key: valveKey(valve), label, window, dots, figure }];
  });
}

function dotOf(preload: UncertainPreload, shape: Dot['shape']): Dot {
  return { mm: preload.preloadMm, bandMm: guardMm(preload), shape };
}

/** A verdict as the pictures' words and tables say it. */
export function verdictText({ measured }: SheetValve): string {
  const { figures } = measured;
  if (figures?.verdict == null)
    return figures?.window == null ? shown.unjudged.noWindow : shown.unjudged.noFigure;
  const against = figures.sure?.against;
  return shown.verdicts[figures.verdict] + (against ? `, ${words.cantTell(against.word)}` : '');
}
