import { useStore } from 'zustand';
import { useServices } from '../services';
import { benchWords } from './benchWords';
import styles from './heard.module.css';

/** What is being heard, as a ghost; else what was last heard and what it was taken for. */
export function HeardLine() {
  const { ear, soundCheck } = useServices();
  const { state, ghost, captions, place } = useStore(ear);
  const checked = useStore(soundCheck.store, ({ kept }) => kept);
  if (state !== 'open') return null;
  if (ghost !== null) {
    return (
      <p className={styles.heard} data-ghost="">
        {benchWords.ear.hearing(ghost.heard)}
      </p>
    );
  }
  const last = captions.at(-1);
  if (last === undefined) {
    const hint = place === 'on device' && !checked;
    const { nothingHeard, notChecked } = benchWords.ear;
    return <p className={styles.heard}>{hint ? notChecked : nothingHeard}</p>;
  }
  return <p className={styles.heard}>{benchWords.ear.heard(last)}</p>;
}
