import { useCallback, useState } from 'react';
import { useStore } from 'zustand';
import { useServices } from '../services';
import { Action } from '../shell/Action';
import type { Draft } from './draft';
import { dropDraft, keepDraft } from './keptDraft';
import { SetUpFields } from './SetUpFields';
import styles from './set-up.module.css';
import { setUpWords as words } from './setUpWords';
import { useSetUpForm } from './useSetUpForm';

interface Props {
  readonly start: Draft;
  /** Says where the answers already there come from; null when there are none. */
  readonly note: string | null;
  readonly onStartEmpty: () => void;
}

/** Sets up a new job and begins to count. */
export function NewJobForm({ start, note, onStartEmpty }: Props) {
  const { shelf, go } = useServices();
  const trouble = useStore(shelf.store, (state) => state.trouble);
  const [failed, setFailed] = useState(false);
  const [busy, setBusy] = useState(false);
  const keep = useCallback((draft: Draft) => keepDraft(sessionStorage, null, draft), []);
  const form = useSetUpForm(start, keep);

  async function begin(): Promise<void> {
    const { setUp } = form.read;
    if (!form.ask() || setUp === null || busy) return;
    setBusy(true);
    const jobId = await shelf.create(setUp);
    setBusy(false);
    setFailed(jobId === null);
    if (jobId === null) return;
    dropDraft(sessionStorage, null);
    go({ screen: 'bench', jobId });
  }

  return (
    <>
      {note !== null && (
        <div className={styles.note} role="status">
          <p>{note}</p>
          {form.read.setUp !== null && (
            <Action main disabled={busy} onPress={() => void begin()}>
              {words.beginAsIs}
            </Action>
          )}
          <Action onPress={onStartEmpty}>{words.startEmpty}</Action>
        </div>
      )}
      <SetUpFields form={form}>
        {failed && <p role="alert">{`${words.notKept} ${trouble ?? ''}`}</p>}
        <Action main disabled={busy} onPress={() => void begin()}>
          {words.begin}
        </Action>
      </SetUpFields>
    </>
  );
}
