import styles from './keys.module.css';

interface Props {
  readonly label: string;
  readonly items: readonly { readonly meaning: string; readonly keys: string }[];
  /** What stands here while the keys are switched off. */
  readonly off: string | null;
}

/** The keys as they now are, each with what it does. */
export function KeyStrip({ label, items, off }: Props) {
  if (off !== null) return <p className={styles.strip}>{off}</p>;
  return (
    <dl className={styles.strip} aria-label={label}>
      {items.map(({ meaning, keys }) => (
        <div key={meaning} className={styles.item}>
          <dt>{keys}</dt>
          <dd>{meaning}</dd>
        </div>
      ))}
    </dl>
  );
}
