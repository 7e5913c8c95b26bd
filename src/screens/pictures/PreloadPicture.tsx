import type { JobSheet } from '#counting';
import type { Units } from '#words';
import { DotRows } from '../pieces/DotRows';
import { figureIn } from '../pieces/figureIn';
import { Picture } from './Picture';
import { preloadRows, readingText, verdictText } from './pictureRows';
import { picturesWords as words } from './picturesWords';

interface Props {
  readonly sheet: JobSheet;
  readonly units: Units;
}

/** The preload of every valve in its window, with its band. Nothing while none is known. */
export function PreloadPicture({ sheet, units }: Props) {
  const rows = preloadRows(sheet, units);
  if (rows.length === 0) return null;
  const title = words.preload(words.unit[units]);
  const read = sheet.valves.filter(({ measured }) => measured.figures?.preloadMm != null);
  const range = (from: number, to: number) =>
    words.range(figureIn(units, from), figureIn(units, to));
  const { columns } = words;
  return (
    <Picture
      title={title}
      keyed={words.key}
      table={{
        columns: [
          columns.valve,
          columns.preload,
          columns.verdict,
          columns.usable,
          columns.preferred,
        ],
        rows: read.map((one) => {
          const { window: limits } = one;
          return [
            words.valve(one.valve),
            readingText(units, one),
            verdictText(one),
            limits === null ? words.none : range(limits.usableMinMm, limits.usableMaxMm),
            limits === null ? words.none : range(limits.preferredMinMm, limits.preferredMaxMm),
          ];
        }),
      }}
    >
      <DotRows
        rows={rows}
        units={units}
        tick={(mm) => figureIn(units, mm)}
        figureWidth={units === 'mm' ? 112 : 76}
        label={words.said(
          title,
          read.map((one) => `${words.valve(one.valve)} ${readingText(units, one)}`),
        )}
      />
    </Picture>
  );
}
