import { useServices } from '../services';
import { benchWords } from './benchWords';
import styles from './panels.module.css';

/** Why this window only looks on, and the way to take over. */
export function ReadOnlyPanel({ why }: { readonly why: 'other window' | 'newer log' }) {
  const { bench } = useServices();
  return (
    <section className={styles.readOnly} aria-label={benchWords.readOnly}>
      <p>{why === 'other window' ? benchWords.otherWindow : benchWords.newerLog}</p>
      {why === 'other window' ? (
        <button type="button" onClick={() => void bench.takeOver()}>
          {benchWords.takeOver}
        </button>
      ) : null}
    </section>
  );
}
