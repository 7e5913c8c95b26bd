import { useStore } from 'zustand';
import { useServices } from '../services';
import { benchWords } from './benchWords';
import styles from './more.module.css';

/** Every line since this page was opened, oldest first: for the builder who missed one. */
export function SaidSoFar() {
  const captions = useStore(useServices().mouth, (mouth) => mouth.captions);
  return (
    <details className={styles.saidSoFar}>
      <summary>{benchWords.saidSoFar}</summary>
      {captions.length === 0 ? <p>{benchWords.notSaid}</p> : null}
      <ol aria-label={benchWords.saidSoFar}>
        {captions.map(({ token, text, at }) => (
          <li key={token}>
            <time dateTime={new Date(at).toISOString()}>{clockTime(at)}</time> <span>{text}</span>
          </li>
        ))}
      </ol>
    </details>
  );
}

/** Hours, minutes and seconds where the builder is. */
function clockTime(at: number): string {
  return new Date(at).toLocaleTimeString([], { hour12: false });
}
