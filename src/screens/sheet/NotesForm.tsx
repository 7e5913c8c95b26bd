import { useState } from 'react';
import type { JobNotes } from '#counting';
import { useBench, useServices } from '../services';
import { Action } from '../shell/Action';
import { Fold } from '../shell/Fold';
import { submitFromScreen } from '../shell/submit';
import { TextField } from '../shell/TextField';
import styles from './sheet.module.css';
import { sheetWords as words } from './sheetWords';

/** Who built it, for whom and what else: asked here, and kept with the job. */
export function NotesForm({ notes }: { readonly notes: JobNotes }) {
  const { bench } = useServices();
  const access = useBench((state) => state.access);
  const [typed, setTyped] = useState({ ...notes, tags: notes.tags.join(', ') });
  const [told, setTold] = useState<string | null>(null);

  function change(part: Partial<typeof typed>): void {
    setTyped({ ...typed, ...part });
    setTold(null);
  }

  function keep(): void {
    const refused = submitFromScreen(bench, {
      type: 'note',
      notes: { ...typed, tags: typed.tags.split(',') },
    });
    setTold(refused === null ? words.kept : words.notKept);
  }

  // Open for what was never noted; keeping shuts nothing.
  const [open] = useState(named(notes).length === 0);

  if (access !== 'writer') return <p role="status">{words.readOnly}</p>;
  return (
    <Fold title={words.notes} now={named(notes).join(', ')} open={open}>
      <div className={styles.notes}>
        <TextField
          field="builder"
          label={words.builder}
          value={typed.builder}
          onChange={(builder) => change({ builder })}
        />
        <TextField
          field="customer"
          label={words.customer}
          value={typed.customer}
          onChange={(customer) => change({ customer })}
        />
        <TextField
          field="remark"
          label={words.remark}
          value={typed.remark}
          onChange={(remark) => change({ remark })}
        />
        <TextField
          field="tags"
          label={words.tags}
          hint={words.tagsHint}
          value={typed.tags}
          onChange={(tags) => change({ tags })}
        />
      </div>
      <Action onPress={keep}>{words.keepNotes}</Action>
      <p role="status">{told}</p>
    </Fold>
  );
}

function named({ builder, customer, tags }: JobNotes): readonly string[] {
  return [builder, customer, ...tags].filter((text) => text !== '');
}
