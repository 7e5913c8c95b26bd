import { useState } from 'react';
import { groupStops, type JobState, pushrodAnswer, setUpOf } from '#counting';
import type { Scheme } from '#valvetrain';
import { type Units, writeCount } from '#words';
import { BuyingForm } from './BuyingForm';
import { FinalStart } from './FinalStart';
import { OrderAnswer } from './OrderAnswer';
import { amountText } from './orderText';
import { orderWords } from './orderWords';
import { PredictedTable } from './PredictedTable';
import styles from './results.module.css';
import { resultsWords as words } from './resultsWords';

interface Props {
  readonly job: JobState;
  readonly units: Units;
}

/** What to buy and why; with adjustable rockers where to stop, and no order. */
export function OrderPanel({ job, units }: Props) {
  const [scheme, setScheme] = useState<Scheme | null>(null);
  const setUp = setUpOf(job);
  const adjustable = setUp?.rockers === 'adjustable';
  const answer = adjustable ? null : pushrodAnswer(job, scheme ?? undefined);
  const title = adjustable
    ? words.whereToStop
    : orderWords.title(answer?.taken.scheme ?? 'one for all');
  return (
    <section className={styles.length} aria-labelledby="one-length">
      <h2 id="one-length">{title}</h2>
      {adjustable && <Stops job={job} units={units} />}
      {answer !== null && (
        <>
          <OrderAnswer job={job} units={units} answer={answer} choose={setScheme} />
          <PredictedTable job={job} units={units} answer={answer.taken} />
        </>
      )}
      {!adjustable && answer === null && <p>{whyNone(job)}</p>}
      {!adjustable && setUp?.engine != null && <BuyingForm job={job} units={units} />}
      {answer !== null && <FinalStart job={job} answer={answer} />}
      <p className={styles.caution}>{words.caution}</p>
    </section>
  );
}

function Stops({ job, units }: Props) {
  const stops = groupStops(job);
  return (
    <>
      <p className={styles.answer}>{words.adjustable}</p>
      {stops.map(({ group, stop }) => (
        <p key={group}>
          {words.stopAt(
            group,
            writeCount(stop.count48),
            amountText(units, stop.preload.preloadMm),
            stop.zone,
          )}
        </p>
      ))}
    </>
  );
}

function whyNone(job: JobState): string {
  const setUp = setUpOf(job);
  if (setUp === null || setUp.groups.length === 0) return words.noLength.window;
  if (setUp.adjuster === null && setUp.checking === undefined) return words.noLength.window;
  const named = job.readings.filter(({ valve }) => valve !== null);
  return named.length === 0 ? words.noLength.nothing : words.noLength.pushrod;
}
