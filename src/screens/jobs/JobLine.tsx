import type { JobCard } from '#shelf';
import { languageTag } from '#words';
import { useBench, useServices } from '../services';
import { Action } from '../shell/Action';
import { exportJob } from '../shell/exportFile';
import { changeJob } from './changeJob';
import styles from './jobs.module.css';
import { jobsWords as words } from './jobsWords';

interface Props {
  readonly card: JobCard;
  readonly onProblem: (sentence: string | null) => void;
}

/** One job of the list and what can be done with it. */
export function JobLine({ card, onProblem }: Props) {
  const services = useServices();
  const { shelf, go } = services;
  const onBench = useBench((state) => state.jobId === card.id);
  const { id, name } = card;

  async function copy(): Promise<void> {
    const jobId = await shelf.copy(id);
    if (jobId !== null) go({ screen: 'set-up', jobId });
  }

  return (
    <li className={styles.job}>
      <div className={styles.what}>
        <h2>
          {name}
          {onBench && <span className={styles.quiet}> {words.onBench}</span>}
        </h2>
        <p className={styles.quiet}>
          <span>{card.engine ?? words.engineNotKnown}</span>
          <span>{words.progress(card.read, card.wanted)}</span>
          <span>{words.changed(when(card.changedAt))}</span>
        </p>
      </div>
      <div className={styles.actions}>
        {card.status === 'discarded' ? (
          <Action
            label={words.restoreOf(name)}
            onPress={() => void changeJob(services, id, 'restore')}
          >
            {words.restore}
          </Action>
        ) : (
          <>
            <Action
              main
              label={words.openOf(name)}
              onPress={() => go({ screen: 'bench', jobId: id })}
            >
              {words.open}
            </Action>
            <Action label={words.copyOf(name)} onPress={() => void copy()}>
              {words.copy}
            </Action>
            <Action
              label={words.exportOf(name)}
              onPress={() =>
                void exportJob(services, id, name).then((done) =>
                  onProblem(done ? null : words.exportFailed),
                )
              }
            >
              {words.exportJob}
            </Action>
            <Action
              label={words.discardOf(name)}
              onPress={() => void changeJob(services, id, 'discard')}
            >
              {words.discard}
            </Action>
          </>
        )}
      </div>
    </li>
  );
}

function when(at: number): string {
  return new Date(at).toLocaleString(languageTag, { dateStyle: 'medium', timeStyle: 'short' });
}
