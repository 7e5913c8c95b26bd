import type { ReactNode } from 'react';
import styles from './page.module.css';
import { useArrival } from './useArrival';

interface Props {
  readonly title: string;
  readonly children: ReactNode;
  /** Wide pages use the whole of a big screen; a form keeps to a readable width. */
  readonly wide?: boolean;
}

/** The frame of every screen but the bench: its title and its contents. */
export function Page({ title, children, wide = false }: Props) {
  const heading = useArrival(title);
  return (
    <main className={wide ? `${styles.page} ${styles.wide}` : styles.page}>
      <h1 className={styles.title} tabIndex={-1} ref={heading}>
        {title}
      </h1>
      {children}
    </main>
  );
}
