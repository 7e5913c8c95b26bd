import { type JobState, setUpOf, type ValveLine } from '#counting';
import { shown, type Units } from '#words';
import { figureIn } from '../pieces/figureIn';
import { VerdictMark } from '../pieces/VerdictMark';
import { OffBaseNote } from './OffBaseNote';
import {
  type CylinderRows,
  countText,
  earlierCounts,
  preloadFigure,
  preloadText,
  resolutionText,
} from './resultRows';
import styles from './results.module.css';
import { resultsWords as words } from './resultsWords';

interface Props {
  readonly job: JobState;
  readonly rows: readonly CylinderRows[];
  readonly units: Units;
}

/** Every valve's reading, cylinder by cylinder in firing order. */
export function ResultsTable({ job, rows, units }: Props) {
  const checking = setUpOf(job)?.checking !== undefined;
  return (
    <table className={styles.table}>
      <caption>{words.table}</caption>
      <thead>
        <tr>
          <th scope="col">{words.columns.valve}</th>
          <th scope="col">{words.columns.count[checking ? 'checking' : 'fastener']}</th>
          <th scope="col">{checking ? words.columns.atZero : words.columns.preload(units)}</th>
          <th scope="col">{words.columns.verdict}</th>
        </tr>
      </thead>
      {rows.map(({ cylinder, lines }) => (
        <tbody key={cylinder}>
          <tr>
            <th scope="rowgroup" colSpan={4} className={styles.cylinder}>
              {words.cylinder(cylinder)}
            </th>
          </tr>
          {lines.map((line) => (
            <Row key={line.valve.valve} job={job} line={line} units={units} />
          ))}
        </tbody>
      ))}
    </table>
  );
}

interface RowProps {
  readonly job: JobState;
  readonly line: ValveLine;
  readonly units: Units;
}

function Row({ job, line, units }: RowProps) {
  const { valve, reading, figures, earlier, readings, skipped } = line;
  return (
    <tr data-valve={words.valveName(valve)}>
      <th scope="row">{words.valve[valve.valve]}</th>
      {reading === null ? (
        <td colSpan={3} className={styles.quiet}>
          {skipped ? words.skipped : words.notRead}
        </td>
      ) : (
        <>
          <td>
            <strong className={styles.figure}>{countText(reading)}</strong>
            {reading.kind === 'counted' && (
              <span className={styles.under}>{resolutionText(reading)}</span>
            )}
            {readings > 1 && (
              <span className={styles.under}>
                {words.readings(readings, earlierCounts(job, line))}
              </span>
            )}
          </td>
          <td>
            <strong className={styles.figure}>{preloadFigure(units, figures)}</strong>
            {figures?.sure != null && (
              <span className={styles.under}>
                {words.giveOrTake(figureIn(units, figures.sure.guardMm))}
              </span>
            )}
            {earlier !== null && (
              <span className={styles.under}>
                {words.earlier(
                  preloadText(units, earlier),
                  earlier.verdict === null ? '' : shown.verdicts[earlier.verdict].toLowerCase(),
                )}
              </span>
            )}
          </td>
          <td>
            <span className={styles.verdict}>
              {figures?.verdict != null && <VerdictMark verdict={figures.verdict} />}
              <span>
                {figures?.verdict != null
                  ? shown.verdicts[figures.verdict]
                  : figures?.window == null
                    ? shown.unjudged.noWindow
                    : shown.unjudged.noFigure}
                {figures?.sure?.against && (
                  <span className={styles.under}>{words.cantTell(figures.sure.against.word)}</span>
                )}
                {figures?.pastTravel && (
                  <span className={styles.under}>{shown.unjudged.pastTravel}</span>
                )}
                {reading.torqued && <span className={styles.under}>{words.torqued}</span>}
                <OffBaseNote job={job} reading={reading} />
              </span>
            </span>
          </td>
        </>
      )}
    </tr>
  );
}
