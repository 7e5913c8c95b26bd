import { useState } from 'react';
import type { JobCard } from '#shelf';
import { useServices } from '../services';
import { Action } from '../shell/Action';
import { TextField } from '../shell/TextField';
import { noteJob } from './changeJob';
import styles from './jobs.module.css';
import { jobsWords as words } from './jobsWords';

interface Props {
  readonly card: JobCard;
  readonly onDone: () => void;
}

/** A job's tags, changed from the list. */
export function TagsForm({ card, onDone }: Props) {
  const services = useServices();
  const [text, setText] = useState(card.notes.tags.join(', '));

  async function keep(): Promise<void> {
    await noteJob(services, card.id, { ...card.notes, tags: text.split(',') });
    onDone();
  }

  return (
    <div className={styles.tags}>
      <TextField
        field={`tags-${card.id}`}
        label={words.tagsOf(card.name)}
        hint={words.tagsHint}
        value={text}
        onChange={setText}
      />
      <Action onPress={() => void keep()}>{words.keepTags}</Action>
    </div>
  );
}
