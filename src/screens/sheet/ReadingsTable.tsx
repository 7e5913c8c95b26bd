import type { JobSheet, SheetValve } from '#counting';
import { guardMm, type Verdict, valveKey } from '#valvetrain';
import { shown, type Units } from '#words';
import { withBand } from '../pictures/pictureRows';
import type { Dot } from '../pieces/DotParts';
import { type DotScale, dotScale } from '../pieces/dotScale';
import { figureIn } from '../pieces/figureIn';
import { ReadingStrip, STRIP_WIDTH } from '../pieces/ReadingStrip';
import { VerdictMark } from '../pieces/VerdictMark';
import { lengthText } from '../results/orderText';
import { countText } from '../results/resultRows';
import styles from './paper.module.css';
import { sheetWords as words } from './sheetWords';

interface Props {
  readonly sheet: JobSheet;
  readonly units: Units;
}

/** Every valve on a line: its readings, figure, place and verdict, its pushrod, predicted and final. */
export function ReadingsTable({ sheet, units }: Props) {
  const { valves, setUp, finalCheck } = sheet;
  const { columns } = words;
  const ordered = setUp.rockers === 'bolt-down';
  const scale = dotScale(
    valves.flatMap(dotsOf).flatMap(({ mm, bandMm }) => [mm - (bandMm ?? 0), mm + (bandMm ?? 0)]),
    valves.flatMap(({ window }) => window ?? []),
    units,
    4,
    STRIP_WIDTH - 4,
  );
  const unproven = valves.some(({ measured }) => measured.figures?.sure?.against != null);
  const far = valves.some(({ distrusted }) => distrusted !== null);
  return (
    <section className={styles.readings}>
      <table className={styles.table}>
        <caption>{sheet.round === 1 ? words.readings : words.round(sheet.round)}</caption>
        <thead>
          <tr>
            <th scope="col">{columns.valve}</th>
            <th scope="col">{setUp.checking === undefined ? columns.quarters : columns.turns}</th>
            <th scope="col">
              {setUp.checking === undefined ? columns.preload(words.unit[units]) : columns.length}
            </th>
            <th scope="col" className={styles.strip}>
              {columns.place}
            </th>
            <th scope="col">{columns.verdict}</th>
            {ordered && <th scope="col">{finalCheck ? columns.fitted : columns.order}</th>}
            {ordered && <th scope="col">{columns.predicted}</th>}
            {finalCheck && <th scope="col">{columns.final}</th>}
          </tr>
        </thead>
        <tbody>
          {valves.map((one) => (
            <Row
              key={valveKey(one.valve)}
              one={one}
              units={units}
              scale={scale}
              ordered={ordered}
              finalCheck={finalCheck}
            />
          ))}
        </tbody>
      </table>
      <p className={styles.quiet}>{words.tableKey(unproven, far)}</p>
    </section>
  );
}

interface RowProps {
  readonly one: SheetValve;
  readonly units: Units;
  readonly scale: DotScale;
  readonly ordered: boolean;
  readonly finalCheck: boolean;
}

function Row({ one, units, scale, ordered, finalCheck }: RowProps) {
  const { valve, measured, window, readings, predicted, final, orderedMm } = one;
  const found = final?.line.standing?.preload ?? null;
  const lengthMm = finalCheck ? (final?.fitted?.mm ?? null) : orderedMm;
  return (
    <tr data-valve={words.valve(valve)}>
      <th scope="row">
        {valve.cylinder} <abbr title={words.kind[valve.valve]}>{words.letter[valve.valve]}</abbr>
      </th>
      <td>
        {readings.length === 0
          ? measured.skipped
            ? words.skipped
            : words.notRead
          : readings.map(countText).join(', ')}
      </td>
      <td>
        <Figure one={one} units={units} />
      </td>
      <td className={styles.strip}>
        <ReadingStrip dots={dotsOf(one)} window={window} scale={scale} />
      </td>
      <td>
        <VerdictCell one={one} />
      </td>
      {ordered && (
        <td data-label={finalCheck ? words.columns.fitted : words.columns.order}>
          {lengthMm === null ? words.none : lengthText(units, lengthMm)}
        </td>
      )}
      {ordered && (
        <td data-label={words.columns.predicted}>
          {predicted === null ? (
            words.none
          ) : (
            <>
              <Shape verdict={predicted.verdict} /> {withBand(units, predicted.preload)}
            </>
          )}
        </td>
      )}
      {finalCheck && (
        <td data-label={words.columns.final}>
          {found === null ? (
            words.notRead
          ) : (
            <>
              <Shape verdict={final?.line.figures?.verdict ?? null} /> {withBand(units, found)}{' '}
              {final?.agreement != null && (final.agreement.agrees ? words.agrees : words.differs)}
            </>
          )}
        </td>
      )}
    </tr>
  );
}

function Figure({ one, units }: { readonly one: SheetValve; readonly units: Units }) {
  const { figures } = one.measured;
  if (figures?.lengthMm !== undefined) return lengthText(units, figures.lengthMm);
  if (figures?.preloadMm == null) return words.none;
  return (
    <>
      <strong>{figureIn(units, figures.preloadMm, one.window)}</strong>
      {figures.sure !== null && ` ± ${figureIn(units, figures.sure.guardMm)}`}
    </>
  );
}

function VerdictCell({ one }: { readonly one: SheetValve }) {
  const { figures, reading } = one.measured;
  if (figures?.verdict == null) return reading === null ? words.none : words.unjudged;
  const against = figures.sure?.against;
  return (
    <span className={styles.verdict}>
      <VerdictMark verdict={figures.verdict} />
      <span>
        {shown.verdicts[figures.verdict]}
        {against && ` ${words.cantTell(against.word)}`}
        {one.distrusted !== null && ' !'}
      </span>
    </span>
  );
}

function Shape({ verdict }: { readonly verdict: Verdict | null }) {
  return verdict === null ? null : <VerdictMark verdict={verdict} />;
}

/**
 * The reading by its verdict's shape over what is predicted, a ring; in a final check the prediction over
 * what is found, a disc.
 */
function dotsOf({ measured, predicted, final }: SheetValve): readonly Dot[] {
  const { figures } = measured;
  const found = final?.line.standing?.preload ?? null;
  const ring = (bandMm: number | null): readonly Dot[] =>
    predicted === null ? [] : [{ mm: predicted.preload.preloadMm, bandMm, shape: 'hollow' }];
  if (found !== null) {
    const band = predicted === null ? null : guardMm(predicted.preload);
    return [...ring(band), { mm: found.preloadMm, bandMm: guardMm(found), shape: 'solid' }];
  }
  if (figures?.preloadMm == null) return ring(null);
  const { preloadMm, sure, verdict } = figures;
  return [
    { mm: preloadMm, bandMm: sure?.guardMm ?? null, shape: verdict ?? 'tick' },
    ...ring(null),
  ];
}
