import { useState } from 'react';
import { allowed, type Distrusted, distrusted, type JobState } from '#counting';
import { valveKey } from '#valvetrain';
import type { Units } from '#words';
import { useServices } from '../services';
import { Action } from '../shell/Action';
import { submitFromScreen } from '../shell/submit';
import { amountText } from './orderText';
import { orderWords } from './orderWords';
import styles from './results.module.css';
import { resultsWords } from './resultsWords';
import { sureWords as words } from './sureWords';

interface Props {
  readonly job: JobState;
  readonly units: Units;
}

/** Readings far from their fellows, where to look in order, and the way to count them again. */
export function DistrustPanel({ job, units }: Props) {
  const found = distrusted(job);
  const [first] = found;
  if (first === undefined) return null;
  return (
    <section className={styles.part} aria-labelledby="distrust">
      <h2 id="distrust">{words.distrust}</h2>
      {found.map((one) => (
        <One key={valveKey(one.valve)} job={job} units={units} one={one} />
      ))}
      <p>{words.distrustHow}</p>
      <ol className={styles.reasons}>
        {first.causes.map((cause) => (
          <li key={cause}>{words.causes[cause]}</li>
        ))}
      </ol>
    </section>
  );
}

function One({ job, units, one }: Props & { readonly one: Distrusted }) {
  const { bench, go } = useServices();
  const [refused, setRefused] = useState(false);
  const { valve, offMm, among } = one;
  const name = resultsWords.valveName(valve);

  function again(): void {
    const told = submitFromScreen(bench, {
      type: 'chooseValve',
      cylinder: valve.cylinder,
      valve: valve.valve,
    });
    if (told === null) go({ screen: 'bench', jobId: job.jobId });
    else setRefused(true);
  }

  return (
    <>
      <p className={styles.caution}>
        <strong>{name}</strong>:{' '}
        {words.far(amountText(units, Math.abs(offMm)), offMm > 0, valve.valve, among)}.
      </p>
      {allowed(job).includes('chooseValve') && (
        <Action onPress={again}>{words.countAgain(name)}</Action>
      )}
      {refused && <p role="alert">{orderWords.refused}</p>}
    </>
  );
}
