import { cylindersOf, type JobState, setUpOf } from '#counting';
import { type Answer, guardMm, sameValve, type ValveId, valveKey } from '#valvetrain';
import { shown, type Units } from '#words';
import { figureIn } from '../pieces/figureIn';
import { VerdictMark } from '../pieces/VerdictMark';
import { Fold } from '../shell/Fold';
import { lengthText } from './orderText';
import { orderWords as words } from './orderWords';
import styles from './results.module.css';
import { resultsWords } from './resultsWords';

interface Props {
  readonly job: JobState;
  readonly units: Units;
  readonly answer: Answer;
}

/** The preload every valve would have with the pushrods of an answer. */
export function PredictedTable({ job, units, answer }: Props) {
  const setUp = setUpOf(job);
  const order = setUp === null ? [] : cylindersOf(setUp).flatMap((one) => one.valves);
  const place = (id: ValveId) => order.findIndex((valve) => sameValve(valve, id));
  const valves = answer.valves.toSorted((a, b) => place(a.id) - place(b.id));
  return (
    <Fold title={words.predicted}>
      <p className={styles.quiet}>{words.predictedHow}</p>
      <table className={styles.table} data-predicted="">
        <caption>{words.predicted}</caption>
        <thead>
          <tr>
            <th scope="col">{words.predictedColumns.valve}</th>
            <th scope="col">{words.predictedColumns.length}</th>
            <th scope="col">
              {words.predictedColumns.preload}, {resultsWords.unit[units]}
            </th>
            <th scope="col">{words.predictedColumns.verdict}</th>
          </tr>
        </thead>
        <tbody>
          {valves.map(({ id, lengthMm, preload, verdict }) => (
            <tr key={valveKey(id)}>
              <th scope="row">{words.valve(id)}</th>
              <td>{lengthMm === null ? words.noneLeft : lengthText(units, lengthMm)}</td>
              <td>
                {preload === null ? (
                  resultsWords.none
                ) : (
                  <>
                    {figureIn(units, preload.preloadMm)}{' '}
                    {resultsWords.giveOrTake(figureIn(units, guardMm(preload)))}
                  </>
                )}
              </td>
              <td>
                {verdict !== null && (
                  <span className={styles.verdict}>
                    <VerdictMark verdict={verdict.word} />
                    <span>
                      {shown.verdicts[verdict.word]}
                      {verdict.against && (
                        <span className={styles.under}>{words.cantTell(verdict.against.word)}</span>
                      )}
                    </span>
                  </span>
                )}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </Fold>
  );
}
