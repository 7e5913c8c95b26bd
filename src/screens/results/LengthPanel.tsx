import { type JobState, setUpOf } from '#counting';
import type { Units } from '#words';
import { lengthAnswer, stopLines } from './lengthAnswer';
import styles from './results.module.css';
import { resultsWords as words } from './resultsWords';

interface Props {
  readonly job: JobState;
  readonly units: Units;
}

/** What to order: one length for all; with adjustable rockers where to stop, and no order. */
export function LengthPanel({ job, units }: Props) {
  const adjustable = setUpOf(job)?.rockers === 'adjustable';
  return (
    <section className={styles.length} aria-labelledby="one-length">
      <h2 id="one-length">{adjustable ? words.whereToStop : words.length}</h2>
      {adjustable ? (
        <>
          <p className={styles.answer}>{words.adjustable}</p>
          {stopLines(job, units).map((line) => (
            <p key={line}>{line}</p>
          ))}
        </>
      ) : (
        <OneLength job={job} units={units} />
      )}
      <p className={styles.caution}>{words.caution}</p>
    </section>
  );
}

function OneLength({ job, units }: Props) {
  const answer = lengthAnswer(job, units);
  if (answer === null) return <p>{whyNone(job)}</p>;
  return (
    <>
      <p className={styles.answer}>
        <strong>{answer.length}</strong> {answer.convention}
      </p>
      <p>{answer.fits}</p>
      <p>{answer.testLengths}</p>
      <p>{answer.restsOn}</p>
      {answer.mixed && <p role="alert">{words.mixed}</p>}
      <p className={styles.quiet}>{words.grid}</p>
    </>
  );
}

function whyNone(job: JobState): string {
  const setUp = setUpOf(job);
  if (setUp?.adjuster == null || setUp.groups.length === 0) return words.noLength.window;
  const named = job.readings.filter(({ valve }) => valve !== null);
  return named.length === 0 ? words.noLength.nothing : words.noLength.pushrod;
}
