import { useStore } from 'zustand';
import { useServices, useSettings } from '../services';
import { Action } from '../shell/Action';
import styles from './sound-check.module.css';
import { soundCheckWords as words } from './soundCheckWords';

/** How the sound check ended, and what to do about it. */
export function CheckVerdict() {
  const { soundCheck, settings } = useServices();
  const { carrier } = useSettings();
  const { state, verdict } = useStore(soundCheck.store);
  if (state !== 'over' || verdict === null) return null;
  return (
    <div className={styles.asked} role="status">
      <p className={styles.verdict}>{words.verdicts[verdict]}</p>
      <p>{words.meaning[verdict]}</p>
      {verdict !== 'carrier' ? null : carrier ? (
        <p>{words.carrierUsed}</p>
      ) : (
        <div className={styles.buttons}>
          <Action onPress={() => settings.change({ carrier: true })}>{words.useCarrier}</Action>
        </div>
      )}
    </div>
  );
}
