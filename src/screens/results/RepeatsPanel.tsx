import { cylinderSummaries, type JobState, readingsOf, type ValveLine } from '#counting';
import type { Agreement } from '#valvetrain';
import type { Units } from '#words';
import { figureIn } from '../pieces/figureIn';
import { StateTag } from '../pieces/StateTag';
import { amountText } from './orderText';
import { preloadText, readingText } from './resultRows';
import styles from './results.module.css';
import { resultsWords } from './resultsWords';
import { sureWords as words } from './sureWords';

interface Props {
  readonly job: JobState;
  readonly units: Units;
}

/** Valves read more than once: every reading, the mean that stands, and whether they agree. */
export function RepeatsPanel({ job, units }: Props) {
  const lines = cylinderSummaries(job)
    .flatMap((cylinder) => cylinder.lines)
    .filter(({ readings }) => readings > 1);
  if (lines.length === 0) return null;
  return (
    <section className={styles.part} aria-labelledby="repeats">
      <h2 id="repeats">{words.repeats}</h2>
      <p className={styles.quiet}>{words.repeatsHow}</p>
      <table className={styles.table} data-repeats="">
        <caption>{words.repeats}</caption>
        <thead>
          <tr>
            <th scope="col">{words.repeatColumns.valve}</th>
            <th scope="col">{words.repeatColumns.readings}</th>
            <th scope="col">{words.repeatColumns.mean}</th>
          </tr>
        </thead>
        {lines.map((line) => (
          <Rows key={resultsWords.valveName(line.valve)} job={job} line={line} units={units} />
        ))}
      </table>
    </section>
  );
}

/** The readings, and under them whether they agree: on a narrow screen there is no room beside. */
function Rows({ job, line, units }: Props & { readonly line: ValveLine }) {
  const { standing, valve } = line;
  const sure = standing?.figures.sure ?? null;
  const compared = standing?.compared ?? [];
  return (
    <tbody data-valve={resultsWords.valveName(valve)} className={styles.pair}>
      <tr>
        <th scope="row" rowSpan={compared.length === 0 ? 1 : 2}>
          {resultsWords.valveName(valve)}
        </th>
        <td>
          {readingsOf(job, valve).map((reading) => (
            <span key={reading.id} className={styles.one}>
              {readingText(job, reading, units)}
            </span>
          ))}
        </td>
        <td>
          {standing !== null && (
            <>
              <strong>{preloadText(units, standing.figures)}</strong>
              {sure !== null && ` ${resultsWords.giveOrTake(figureIn(units, sure.guardMm))}`}
              <span className={styles.under}>{words.meanOf(standing.readings.length)}</span>
            </>
          )}
        </td>
      </tr>
      {compared.length > 0 && (
        <tr>
          <td colSpan={2}>
            {compared.map((one) => (
              <span key={`${one.with} ${one.agreement.differenceMm}`} className={styles.one}>
                <Agrees
                  agreement={one.agreement}
                  units={units}
                  yes={`${words.compared[one.with]} ${words.agree}`}
                  no={`${words.compared[one.with]} ${words.differ}`}
                />
              </span>
            ))}
          </td>
        </tr>
      )}
    </tbody>
  );
}

interface AgreesProps {
  readonly agreement: Agreement;
  readonly units: Units;
  readonly yes: string;
  readonly no: string;
}

/** Whether two figures agree, in a word and a shape, with what they differ by and may. */
export function Agrees({ agreement, units, yes, no }: AgreesProps) {
  const { agrees, differenceMm, allowedMm } = agreement;
  return (
    <>
      <StateTag shape={agrees ? 'ring full' : 'broken'} strong={!agrees}>
        {agrees ? yes : no}
      </StateTag>
      <span className={styles.under}>
        {words.apart(amountText(units, Math.abs(differenceMm)), amountText(units, allowedMm))}
      </span>
    </>
  );
}
