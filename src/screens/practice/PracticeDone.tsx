import { countLine } from '../bench/benchFigures';
import { StateTag } from '../pieces/StateTag';
import { useBench, useServices } from '../services';
import { Action } from '../shell/Action';
import { bolts, judged } from './bolts';
import styles from './practice.module.css';
import { practiceWords as words } from './practiceWords';

/** The end of the run: bolt by bolt where it was tight, what was read, and whether that is right. */
export function PracticeDone() {
  const { practise, go } = useServices();
  const job = useBench((state) => state.job);
  const lines = judged(job);
  const all = lines.length === bolts.length && lines.every(({ right }) => right);
  return (
    <section className={styles.done} aria-labelledby="practice-done" data-step="done">
      <h2 id="practice-done">{words.done}</h2>
      <p role="status">{all ? words.allRight : words.someWrong}</p>
      <table className={styles.table}>
        <caption>{words.table}</caption>
        <thead>
          <tr>
            <th scope="col">{words.columns.bolt}</th>
            <th scope="col">{words.columns.tight}</th>
            <th scope="col">{words.columns.read}</th>
            <th scope="col">{words.columns.judged}</th>
          </tr>
        </thead>
        <tbody>
          {lines.map(({ bolt, read48, right }, at) => (
            <tr key={bolt.teaches}>
              <th scope="row">{at + 1}</th>
              <td>{`${countLine(job, bolt.seat48)} ${words.quarters}`}</td>
              <td>
                {read48 === null
                  ? words.seatedLoose
                  : `${countLine(job, read48)} ${words.quarters}`}
              </td>
              <td>
                <StateTag shape={right ? 'ring full' : 'broken'}>
                  {right ? words.right : words.wrong}
                </StateTag>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <div className={styles.buttons}>
        <Action main onPress={practise}>
          {words.again}
        </Action>
        <Action onPress={() => go({ screen: 'jobs' })}>{words.toJobs}</Action>
      </div>
    </section>
  );
}
