import { useStore } from 'zustand';
import { useServices } from '../services';
import { benchWords } from './benchWords';
import styles from './heard.module.css';

/** What is being heard, as a ghost; else what was last heard and what it was taken for. */
export function HeardLine() {
  const { state, ghost, captions } = useStore(useServices().ear);
  if (state !== 'open') return null;
  if (ghost !== null) {
    return (
      <p className={styles.heard} data-ghost="">
        {benchWords.ear.hearing(ghost.heard)}
      </p>
    );
  }
  const last = captions.at(-1);
  if (last === undefined) return <p className={styles.heard}>{benchWords.ear.nothingHeard}</p>;
  return <p className={styles.heard}>{benchWords.ear.heard(last)}</p>;
}
