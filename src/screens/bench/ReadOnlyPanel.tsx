import { useServices } from '../services';
import { benchWords } from './benchWords';
import styles from './panels.module.css';

const sentences = {
  'other window': benchWords.otherWindow,
  'newer log': benchWords.newerLog,
  'newer app': benchWords.newerApp,
};

/** Why this window only looks on, and the way to take over. */
export function ReadOnlyPanel({ why }: { readonly why: keyof typeof sentences }) {
  const { bench } = useServices();
  return (
    <section className={styles.readOnly} aria-label={benchWords.readOnly}>
      <p>{sentences[why]}</p>
      {why === 'other window' ? (
        <button type="button" onClick={() => void bench.takeOver()}>
          {benchWords.takeOver}
        </button>
      ) : null}
    </section>
  );
}
