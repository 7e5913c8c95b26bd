import { useStore } from 'zustand';
import { useServices } from '../services';
import { Action } from './Action';
import styles from './notice.module.css';
import { shellWords as words } from './shellWords';

/** What the app has to say of itself: that it is ready offline, that a new version is here. */
export function NoticeStrip() {
  const { device } = useServices();
  const { readyNow, update, store } = useStore(device.store);
  return (
    <aside className={styles.strip} aria-label={words.notices}>
      {store !== 'here' && (
        <div className={styles.notice} role="alert">
          <p>{words.store[store]}</p>
        </div>
      )}
      {readyNow && (
        <div className={styles.notice} role="status">
          <p>{words.readyOffline}</p>
          <Action onPress={device.readyTold}>{words.understood}</Action>
        </div>
      )}
      {update !== 'none' && (
        <div className={styles.notice} role="status">
          <p>{update === 'here' ? words.updateHere : words.updateWaits}</p>
          <Action onPress={device.updateApp}>{words.updateNow}</Action>
        </div>
      )}
    </aside>
  );
}
