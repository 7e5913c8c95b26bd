import type { ReactNode } from 'react';
import styles from './fold.module.css';

interface Props {
  readonly title: string;
  /** What is set inside, so that it need not be opened to be known. */
  readonly now?: string;
  readonly open?: boolean;
  readonly children: ReactNode;
}

/** A part of a page that most builders need not open. */
export function Fold({ title, now, open = false, children }: Props) {
  return (
    <details className={styles.fold} open={open}>
      <summary className={styles.summary}>
        <span>{title}</span>
        {now && <span className={styles.now}>{now}</span>}
      </summary>
      <div className={styles.inside}>{children}</div>
    </details>
  );
}
