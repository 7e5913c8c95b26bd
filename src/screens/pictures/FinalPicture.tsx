import type { JobSheet, SheetValve } from '#counting';
import type { Units } from '#words';
import { DotRows } from '../pieces/DotRows';
import { figureIn } from '../pieces/figureIn';
import { Picture } from './Picture';
import { finalRows, withBand } from './pictureRows';
import { picturesWords as words } from './picturesWords';

interface Props {
  readonly sheet: JobSheet;
  readonly units: Units;
  /** Whether the picture brings its own table. */
  readonly tabled?: boolean;
}

/** What was predicted against what the final check finds. Nothing before there is one. */
export function FinalPicture({ sheet, units, tabled = true }: Props) {
  const rows = finalRows(sheet, units);
  if (rows.length === 0) return null;
  const title = words.finalTitle(words.unit[units]);
  const checked = sheet.valves.filter(({ final }) => final !== null);
  const { columns } = words;
  return (
    <Picture
      title={title}
      keyed={words.finalKey}
      {...(tabled
        ? {
            table: {
              columns: [
                columns.valve,
                columns.predicted,
                columns.found,
                columns.difference,
                columns.allowed,
                columns.agrees,
              ],
              rows: checked.map((one) => cells(units, one)),
            },
          }
        : {})}
    >
      <DotRows
        rows={rows}
        units={units}
        tick={(mm) => figureIn(units, mm)}
        figureWidth={units === 'mm' ? 106 : 84}
        label={words.said(
          title,
          checked.map((one) => cells(units, one).slice(0, 3).join(' ')),
        )}
      />
    </Picture>
  );
}

function cells(units: Units, { valve, predicted, final }: SheetValve): readonly string[] {
  const found = final?.line.standing?.preload ?? null;
  const agreement = final?.agreement ?? null;
  return [
    words.valve(valve),
    predicted === null ? words.none : withBand(units, predicted.preload),
    found === null ? words.notYet : withBand(units, found),
    agreement === null ? words.none : figureIn(units, agreement.differenceMm),
    agreement === null ? words.none : figureIn(units, agreement.allowedMm),
    agreement === null ? words.none : words.agrees(agreement.agrees),
  ];
}
