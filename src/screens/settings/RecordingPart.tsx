import { useEffect } from 'react';
import { useStore } from 'zustand';
import { useServices } from '../services';
import { Action } from '../shell/Action';
import { Tick } from '../shell/Tick';
import styles from './settings.module.css';
import { settingsWords as words } from './settingsWords';

/** A session of the ear taken down, for whoever wants to know what it made of it. */
export function RecordingPart() {
  const { recording } = useServices();
  const { wanted, seconds, unkept } = useStore(recording.store);
  useEffect(recording.look, [recording]);
  return (
    <>
      <p className={styles.quiet}>{words.recordLead}</p>
      <div className={styles.ticks}>
        <Tick label={words.record} ticked={wanted} onChange={recording.want} />
      </div>
      {unkept && <p role="alert">{words.recordUnkept}</p>}
      {seconds === null ? null : (
        <>
          <p role="status">{words.recorded(Math.floor(seconds / 60), Math.floor(seconds % 60))}</p>
          <div className={styles.buttons}>
            <Action onPress={recording.hand}>{words.saveRecording}</Action>
            <Action onPress={recording.forget}>{words.deleteRecording}</Action>
          </div>
        </>
      )}
    </>
  );
}
