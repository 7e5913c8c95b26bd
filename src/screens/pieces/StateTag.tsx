import type { ReactNode } from 'react';
import styles from './tag.module.css';

/** What a tag's shape says: done, under way, wrong, off, or merely so. */
export type TagShape = 'ring full' | 'ring open' | 'broken' | 'barred' | 'dot';

interface Props {
  readonly shape: TagShape;
  readonly strong?: boolean;
  readonly children: ReactNode;
}

/** A state in words with its own shape. */
export function StateTag({ shape, strong = false, children }: Props) {
  return (
    <span className={strong ? styles.strong : styles.tag} data-shape={shape}>
      <svg viewBox="-10 -10 20 20" className={styles.shape} aria-hidden="true">
        {drawn(shape)}
      </svg>
      <span>{children}</span>
    </span>
  );
}

function drawn(shape: TagShape) {
  switch (shape) {
    case 'ring full':
      return (
        <>
          <rect x={-8} y={-8} width={16} height={16} className={styles.line} />
          <path d="M-4.5 0L-1 4L5 -4.5" className={styles.line} />
        </>
      );
    case 'ring open':
      return (
        <>
          <rect x={-8} y={-8} width={16} height={16} className={styles.dashed} />
          <path d="M-4 4L4 -4" className={styles.line} />
        </>
      );
    case 'broken':
      return (
        <>
          <path d="M-9 8L0 -9L9 8Z" className={styles.line} />
          <path d="M0 -3V3" className={styles.line} />
          <path d="M0 4.6V6.6" className={styles.line} />
        </>
      );
    case 'barred':
      return (
        <>
          <circle r={8} className={styles.line} />
          <path d="M-5.6 5.6L5.6 -5.6" className={styles.line} />
        </>
      );
    case 'dot':
      return <rect x={-3.5} y={-3.5} width={7} height={7} className={styles.solid} />;
    default: {
      const never: never = shape;
      return never;
    }
  }
}
