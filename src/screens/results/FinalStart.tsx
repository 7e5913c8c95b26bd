import { useState } from 'react';
import { allowed, type JobState, type PushrodAnswer } from '#counting';
import { useServices } from '../services';
import { Action } from '../shell/Action';
import { submitFromScreen } from '../shell/submit';
import { orderWords as words } from './orderWords';
import styles from './results.module.css';

/** The pushrods are in: a round that holds every valve against what was predicted. */
export function FinalStart({
  job,
  answer,
}: {
  readonly job: JobState;
  readonly answer: PushrodAnswer;
}) {
  const { bench, go } = useServices();
  const [refused, setRefused] = useState(false);
  const now = allowed(job);
  if (job.round.purpose === 'final check') return null;
  if (!now.includes('startRound') || !now.includes('fitPushrod')) return null;
  const { taken, buying } = answer;

  function start(): void {
    const round = submitFromScreen(bench, { type: 'startRound', purpose: 'final check' });
    const fitted = taken.lengths.map(({ lengthMm, valves }) =>
      submitFromScreen(bench, {
        type: 'fitPushrod',
        length: { mm: lengthMm, convention: buying.convention },
        valves,
      }),
    );
    if (round !== null || fitted.some((told) => told !== null)) setRefused(true);
    else go({ screen: 'bench', jobId: job.jobId });
  }

  return (
    <div>
      <p className={styles.quiet}>{words.installHow}</p>
      <Action onPress={start}>{words.install}</Action>
      {refused && <p role="alert">{words.refused}</p>}
    </div>
  );
}
