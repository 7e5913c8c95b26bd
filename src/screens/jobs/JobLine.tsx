import { useState } from 'react';
import type { JobCard } from '#shelf';
import { languageTag } from '#words';
import { useBench, useServices } from '../services';
import { Action } from '../shell/Action';
import { exportJob } from '../shell/exportFile';
import { changeJob } from './changeJob';
import styles from './jobs.module.css';
import { jobsWords as words } from './jobsWords';
import { TagsForm } from './TagsForm';

interface Props {
  readonly card: JobCard;
  readonly onProblem: (sentence: string | null) => void;
  /** Chosen to be compared. */
  readonly compared: boolean;
  readonly onCompare: () => void;
}

/** One job of the list and what can be done with it. */
export function JobLine({ card, onProblem, compared, onCompare }: Props) {
  const services = useServices();
  const { shelf, go } = services;
  const onBench = useBench((state) => state.jobId === card.id);
  const [tagging, setTagging] = useState(false);
  const { id, name, notes } = card;
  const people = [notes.builder, notes.customer].filter((text) => text !== '');

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
          {people.length > 0 && <span>{people.join(', ')}</span>}
        </p>
        {notes.tags.length > 0 && (
          <ul className={styles.tagList} aria-label={words.tagsOf(name)}>
            {notes.tags.map((tag) => (
              <li key={tag}>{tag}</li>
            ))}
          </ul>
        )}
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
            <Action label={words.sheetOf(name)} onPress={() => go({ screen: 'sheet', jobId: id })}>
              {words.sheet}
            </Action>
            <Action label={words.compareOf(name)} pressed={compared} onPress={onCompare}>
              {words.compare}
            </Action>
            <Action
              label={words.tagsOf(name)}
              pressed={tagging}
              onPress={() => setTagging(!tagging)}
            >
              {words.tags}
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
      {tagging && <TagsForm card={card} onDone={() => setTagging(false)} />}
    </li>
  );
}

function when(at: number): string {
  return new Date(at).toLocaleString(languageTag, { dateStyle: 'medium', timeStyle: 'short' });
}
