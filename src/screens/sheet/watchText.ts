import { type JobSheet, readingCount48, type SheetValve } from '#counting';
import type { Units } from '#words';
import { amountText } from '../results/orderText';
import { sheetWords as words } from './sheetWords';

/** What whoever gets the sheet should look at, a line each: outliers, repeats that differ, what is missing. */
export function watchLines(sheet: JobSheet, units: Units): readonly string[] {
  const { valves, unnamed, roundsBefore } = sheet;
  const amount = (mm: number) => amountText(units, Math.abs(mm));
  const named = (some: readonly SheetValve[]) =>
    some.map(({ valve }) => words.valve(valve)).join(', ');
  const line = (some: readonly SheetValve[], text: (valves: string) => string) =>
    some.length === 0 ? [] : [text(named(some))];
  const left = valves.filter(({ measured }) => measured.reading === null);
  const lines = [
    ...valves.flatMap(({ valve, distrusted }) =>
      distrusted === null
        ? []
        : words.outlier(
            words.valve(valve),
            amount(distrusted.offMm),
            distrusted.offMm > 0,
            words.kind[valve.valve],
            words.causes[distrusted.causes[0] ?? 'part'],
          ),
    ),
    ...valves.flatMap(({ valve, disagrees }) =>
      disagrees === null
        ? []
        : words.repeat(
            words.valve(valve),
            amount(disagrees.agreement.differenceMm),
            amount(disagrees.agreement.allowedMm),
          ),
    ),
    ...valves.flatMap(({ valve, offBase }) =>
      offBase === null
        ? []
        : words.offBase(
            words.valve(valve),
            String(Math.round(offBase.marginDeg)),
            String(offBase.wantedDeg),
          ),
    ),
    ...valves.flatMap(({ valve, final }) =>
      final?.agreement == null || final.agreement.agrees
        ? []
        : words.finalDiffers(
            words.valve(valve),
            amount(final.agreement.differenceMm),
            amount(final.agreement.allowedMm),
          ),
    ),
  ];
  return [
    ...(lines.length === 0 && left.length < valves.length ? [words.nothingOdd] : lines),
    ...line(
      valves.filter(({ measured }) => measured.figures?.sure?.against != null),
      words.cantTellThese,
    ),
    ...line(
      valves.filter(({ measured }) => measured.reading?.kind === 'seated loose'),
      words.loose,
    ),
    ...line(valves.filter(notAsked), words.notAsked),
    ...(left.length === valves.length
      ? [words.leftAll]
      : line(left, (valves) => words.left(left.length, valves))),
    ...(unnamed.length === 0 ? [] : [words.unnamed(unnamed.length)]),
    ...(roundsBefore === 0 ? [] : [words.before(roundsBefore)]),
  ];
}

function notAsked({ measured: { reading } }: SheetValve): boolean {
  return reading?.kind === 'counted' && reading.landing === null && readingCount48(reading) > 0;
}
