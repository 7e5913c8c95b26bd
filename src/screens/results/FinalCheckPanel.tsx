import { type FinalLine, finalCheck, type JobState, type ValveLine } from '#counting';
import { guardMm, type UncertainPreload, valveKey } from '#valvetrain';
import { shown, type Units } from '#words';
import { figureIn } from '../pieces/figureIn';
import { VerdictMark } from '../pieces/VerdictMark';
import { Agrees } from './RepeatsPanel';
import styles from './results.module.css';
import { resultsWords } from './resultsWords';
import { sureWords as words } from './sureWords';

interface Props {
  readonly job: JobState;
  readonly units: Units;
}

/** The pushrods installed: every valve as predicted beside as found. */
export function FinalCheckPanel({ job, units }: Props) {
  const lines = finalCheck(job);
  if (lines.length === 0) return null;
  const judged = lines.flatMap(({ agreement }) => agreement ?? []);
  const left = lines.filter(({ line }) => line.reading === null).length;
  const agree = judged.filter(({ agrees }) => agrees).length;
  return (
    <section className={styles.length} aria-labelledby="final-check">
      <h2 id="final-check">{words.final}</h2>
      <p className={styles.answer}>{words.finalSoFar(agree, judged.length, left)}</p>
      <p className={styles.quiet}>{words.finalHow}</p>
      <table className={styles.table} data-final="">
        <caption>{words.final}</caption>
        <thead>
          <tr>
            <th scope="col">{words.finalColumns.valve}</th>
            <th scope="col">
              {words.finalColumns.predicted}, {resultsWords.unit[units]}
            </th>
            <th scope="col">
              {words.finalColumns.found}, {resultsWords.unit[units]}
            </th>
          </tr>
        </thead>
        {lines.map((line) => (
          <Rows key={valveKey(line.line.valve)} one={line} units={units} />
        ))}
      </table>
    </section>
  );
}

function Rows({ one, units }: { readonly one: FinalLine; readonly units: Units }) {
  const { line, predicted, agreement } = one;
  const name = resultsWords.valveName(line.valve);
  return (
    <tbody data-valve={name} className={styles.pair}>
      <tr>
        <th scope="row" rowSpan={agreement === null ? 1 : 2}>
          {name}
        </th>
        <td>{predicted === null ? words.notPredicted : preloadText(units, predicted)}</td>
        <td>
          <Found line={line} units={units} />
        </td>
      </tr>
      {agreement !== null && (
        <tr>
          <td colSpan={2}>
            <Agrees
              agreement={agreement}
              units={units}
              yes={words.asPredicted}
              no={words.notAsPredicted}
            />
          </td>
        </tr>
      )}
    </tbody>
  );
}

function Found({ line, units }: { readonly line: ValveLine; readonly units: Units }) {
  const found = line.standing?.preload ?? null;
  const verdict = line.figures?.verdict ?? null;
  if (found === null) return line.reading === null ? words.notRead : resultsWords.none;
  return (
    <span className={styles.verdict}>
      {verdict !== null && <VerdictMark verdict={verdict} />}
      <span>
        {preloadText(units, found)}
        {verdict !== null && <span className={styles.under}>{shown.verdicts[verdict]}</span>}
      </span>
    </span>
  );
}

function preloadText(units: Units, preload: UncertainPreload): string {
  const guard = figureIn(units, guardMm(preload));
  return `${figureIn(units, preload.preloadMm)} ${resultsWords.giveOrTake(guard)}`;
}
