import type { ReactNode } from 'react';
import styles from './touch.module.css';

/** One target on the bar. */
export interface TouchTarget {
  readonly id: string;
  readonly label: string;
  /** The next stage: what a hold does too. */
  readonly leads?: boolean;
  /** One more: the widest. */
  readonly wide?: boolean;
  readonly act: () => void;
}

interface Props {
  readonly label: string;
  readonly targets: readonly TouchTarget[];
  /** What stands at the end of the bar. */
  readonly children?: ReactNode;
}

/** A row of large targets. */
export function TouchBar({ label, targets, children }: Props) {
  return (
    <div className={styles.bar} role="toolbar" aria-label={label}>
      {targets.map(({ id, label: name, leads, wide, act }) => (
        <button
          key={id}
          type="button"
          className={leads ? styles.leads : wide ? styles.wide : styles.target}
          onClick={act}
        >
          {name}
        </button>
      ))}
      {children}
    </div>
  );
}
