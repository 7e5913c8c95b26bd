import { useCallback, useState } from 'react';
import type { Announcement } from '#counting';
import { caption } from '#words';
import { useBench, useServices, useSettings } from '../services';
import { Action } from '../shell/Action';
import { submitFromScreen } from '../shell/submit';
import type { Draft } from './draft';
import { dropDraft, keepDraft } from './keptDraft';
import { SetUpFields } from './SetUpFields';
import styles from './set-up.module.css';
import { setUpWords as words } from './setUpWords';
import { useSetUpForm } from './useSetUpForm';

interface Props {
  readonly jobId: string;
  readonly start: Draft;
  /** What was typed before a reload is back: its note, and the way to the set-up in force instead. */
  readonly restored: { readonly note: string; readonly onDrop: () => void } | null;
}

/** Changes the set-up of the open job; with readings taken, asks what becomes of them. */
export function ChangeForm({ jobId, start, restored }: Props) {
  const { bench, go } = useServices();
  const settings = useSettings();
  const readings = useBench((state) => state.job.readings.length);
  const [asking, setAsking] = useState(false);
  const [told, setTold] = useState<readonly Announcement[]>([]);
  const keep = useCallback((draft: Draft) => keepDraft(sessionStorage, jobId, draft), [jobId]);
  const form = useSetUpForm(start, keep);

  function change(appliesTo: 'all' | 'from here'): void {
    const { setUp } = form.read;
    if (!form.ask() || setUp === null) return;
    const refused = submitFromScreen(bench, { type: 'changeSetUp', setUp, appliesTo });
    if (refused !== null) {
      setTold(refused);
      return;
    }
    dropDraft(sessionStorage, jobId);
    go({ screen: 'bench', jobId });
  }

  function finish(): void {
    if (!form.ask()) return;
    if (readings > 0) setAsking(true);
    else change('all');
  }

  return (
    <>
      {restored !== null && (
        <div className={styles.note} role="status">
          <p>{restored.note}</p>
          <Action onPress={restored.onDrop}>{words.inForce}</Action>
        </div>
      )}
      <SetUpFields form={form}>
        {told.length > 0 && (
          <p role="alert">
            {words.refused}{' '}
            {told
              .map((one) => caption(one, { ...settings, hands: 'alone', unkept: false }))
              .join(' ')}
          </p>
        )}
        {asking ? (
          <fieldset className={styles.apply}>
            <legend>{words.applyAsk(readings)}</legend>
            <Action main onPress={() => change('all')}>
              {words.applyAll}
            </Action>
            <Action onPress={() => change('from here')}>{words.applyFromHere}</Action>
          </fieldset>
        ) : (
          <Action main onPress={finish}>
            {words.keepChange}
          </Action>
        )}
      </SetUpFields>
    </>
  );
}
