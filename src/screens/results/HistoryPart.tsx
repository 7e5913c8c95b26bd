import { useEffect, useMemo, useState } from 'react';
import {
  buyingOf,
  historyOf,
  type JobLengths,
  type JobState,
  jobLengths,
  recipeOf,
  setUpOf,
} from '#counting';
import type { Units } from '#words';
import { useServices } from '../services';
import { historyWords as words } from './historyWords';
import { amountText, lengthText } from './orderText';
import styles from './results.module.css';

interface Props {
  readonly job: JobState;
  readonly units: Units;
}

/**
 * What past jobs of the same recipe took, beside what this one asks for. It warns where this engine is
 * unusual and never gives a length.
 */
export function HistoryPart({ job, units }: Props) {
  const { shelf } = useServices();
  const [past, setPast] = useState<readonly JobLengths[] | null>(null);
  const setUp = setUpOf(job);
  const recipe = setUp === null ? null : recipeOf(setUp);
  const { jobId } = job;
  useEffect(() => {
    let here = true;
    setPast(null);
    if (recipe !== null)
      void shelf.past(recipe, jobId).then((found) => {
        if (here) setPast(found);
      });
    return () => {
      here = false;
    };
  }, [shelf, recipe, jobId]);
  const now = useMemo(() => jobLengths(job), [job]);
  if (setUp === null || past === null || now === null) return null;
  const history = historyOf(now, past, buyingOf(setUp).offer);
  const range = (from: number, to: number) =>
    words.range(lengthText(units, from), lengthText(units, to));
  const took = history.took && range(history.took.leastMm, history.took.mostMm);
  const asks = history.asks && range(history.asks.leastMm, history.asks.mostMm);
  return (
    <section
      className={styles.history}
      aria-labelledby="past-jobs"
      data-unusual={history.isUnusual}
    >
      <h2 id="past-jobs">{words.title}</h2>
      {took === null || asks === null ? (
        <p className={styles.quiet}>{words.none}</p>
      ) : history.isUnusual ? (
        <div role="alert" className={styles.caution}>
          <p>
            <strong>{words.unusual(history.jobs, took, asks)}</strong>
          </p>
          <p>{words.next}</p>
        </div>
      ) : (
        <p>{words.usual(history.jobs, took, asks, history.kinds.length > 0)}</p>
      )}
      {history.kinds.length > 0 && (
        <ul className={styles.reasons}>
          {history.kinds.map((kind) => (
            <li key={kind.valve}>
              {words.needed(
                kind.valve,
                range(kind.needed.leastMm, kind.needed.mostMm),
                lengthText(units, kind.nowMm),
                amountText(units, Math.abs(kind.offMm)),
                amountText(units, kind.allowedMm),
                kind.isUnusual,
              )}
            </li>
          ))}
        </ul>
      )}
      {history.jobs > 0 && <p className={styles.quiet}>{words.never}</p>}
    </section>
  );
}
