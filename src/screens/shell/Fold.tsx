import { type ReactNode, useLayoutEffect, useRef } from 'react';
import styles from './fold.module.css';

interface Props {
  readonly title: string;
  /** What is set inside, so that it need not be opened to be known. */
  readonly now?: string;
  /** Opens it; once open, only the builder shuts it. */
  readonly open?: boolean;
  readonly children: ReactNode;
}

/** A part of a page that most builders need not open. */
export function Fold({ title, now, open = false, children }: Props) {
  const fold = useRef<HTMLDetailsElement>(null);
  useLayoutEffect(() => {
    if (open && fold.current !== null) fold.current.open = true;
  }, [open]);
  return (
    <details ref={fold} className={styles.fold}>
      <summary className={styles.summary}>
        <span>{title}</span>
        {now && <span className={styles.now}>{now}</span>}
      </summary>
      <div className={styles.inside}>{children}</div>
    </details>
  );
}
