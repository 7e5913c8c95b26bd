import type { JobSheet } from '#counting';
import type { Window } from '#valvetrain';
import type { Units } from '#words';
import { DotRows } from '../pieces/DotRows';
import { figureIn } from '../pieces/figureIn';
import { amountText, lengthText } from '../results/orderText';
import { orderWords } from '../results/orderWords';
import { Picture } from './Picture';
import { type KindFigures, kindFigures } from './pictureRows';
import { picturesWords as words } from './picturesWords';

interface Props {
  readonly sheet: JobSheet;
  readonly units: Units;
  /** Whether the picture brings its own table. */
  readonly tabled?: boolean;
}

/** Intakes against exhausts, and whether they really differ. Nothing unless both are read. */
export function KindsPicture({ sheet, units, tabled = true }: Props) {
  const { kinds, broughtToMm } = kindFigures(sheet);
  if (kinds.length < 2) return null;
  const title = words.kindsTitle(words.unit[units]);
  const { columns } = words;
  const cells = ({ valve, preloadsMm, meanMm }: KindFigures) => [
    words.kinds[valve],
    String(preloadsMm.length),
    figureIn(units, meanMm),
    figureIn(units, Math.min(...preloadsMm)),
    figureIn(units, Math.max(...preloadsMm)),
  ];
  return (
    <Picture
      title={title}
      keyed={[
        words.kindsKey,
        broughtToMm === null ? '' : words.brought(lengthText(units, broughtToMm)),
        difference(sheet, units),
      ]
        .filter((sentence) => sentence !== '')
        .join(' ')}
      {...(tabled
        ? {
            table: {
              columns: [columns.kind, columns.valves, columns.mean, columns.least, columns.most],
              rows: kinds.map(cells),
            },
          }
        : {})}
    >
      <DotRows
        units={units}
        tick={(mm) => figureIn(units, mm)}
        rows={kinds.map(({ valve, preloadsMm, meanMm }) => ({
          key: valve,
          label: words.letter[valve],
          window: sharedWindow(sheet, valve),
          dots: [
            ...[...new Set(preloadsMm)].map((mm) => ({ mm, bandMm: null, shape: 'tick' as const })),
            { mm: meanMm, bandMm: null, shape: 'mean' as const },
          ],
          figure: figureIn(units, meanMm),
        }))}
        label={words.said(
          title,
          kinds.map((kind) => {
            const [name, , mean, least, most] = cells(kind);
            return `${name} ${columns.mean} ${mean}, ${words.range(least ?? '', most ?? '')}`;
          }),
        )}
      />
    </Picture>
  );
}

/** Half a thou: what no figure here shows. */
const NO_DIFFERENCE_MM = 0.0127;

/** 'Intakes want longer than exhausts by 3 thou, within the 4 that is noise.' */
function difference({ order }: JobSheet, units: Units): string {
  const found = order?.choice.differences.find(({ by }) => by === 'valve');
  if (found === undefined) return '';
  if (found.differenceMm < NO_DIFFERENCE_MM) return words.alike;
  return orderWords.difference(
    found,
    amountText(units, found.differenceMm),
    amountText(units, found.allowedMm),
  );
}

function sharedWindow({ valves }: JobSheet, kind: string): Window | null {
  const windows = valves.flatMap(({ valve, window }) => (valve.valve === kind ? window : []));
  const [first] = windows;
  return first != null && windows.every((one) => one === first) ? first : null;
}
