import type { Verdict } from '#valvetrain';
import styles from './verdict.module.css';

/**
 * Each verdict's own shape: pointing up wants more, pointing down wants less, a lozenge fits; a bar
 * is a stop that is touched. Drawn 24 by 24 about 0,0, for use inside another drawing.
 */
export function VerdictShape({ verdict }: { readonly verdict: Verdict }) {
  return (
    <g className={styles[sideOf(verdict)]} data-shape={verdict}>
      {shapeOf(verdict)}
    </g>
  );
}

/** The same shape standing alone beside its word. */
export function VerdictMark({ verdict }: { readonly verdict: Verdict }) {
  return (
    <svg viewBox="-12 -12 24 24" className={styles.alone} aria-hidden="true">
      <VerdictShape verdict={verdict} />
    </svg>
  );
}

/** Which side of its window a verdict lies on: the colour that seconds its shape. */
export function sideOf(verdict: Verdict): 'short' | 'fits' | 'past' {
  switch (verdict) {
    case 'lash':
    case 'light':
      return 'short';
    case 'fits, light side':
    case 'fits':
    case 'fits, heavy side':
      return 'fits';
    case 'heavy':
    case 'near bottom':
      return 'past';
    default: {
      const never: never = verdict;
      return never;
    }
  }
}

function shapeOf(verdict: Verdict) {
  switch (verdict) {
    case 'lash':
      return (
        <>
          <path d="M0 -4L9 10H-9Z" className={styles.hollow} />
          <path d="M-10 -10H10" className={styles.bar} />
        </>
      );
    case 'light':
      return <path d="M0 -9L10 8H-10Z" className={styles.hollow} />;
    case 'fits, light side':
      return (
        <>
          <path d="M0 -10L10 0H-10Z" className={styles.solid} />
          <path d="M0 -10L10 0L0 10L-10 0Z" className={styles.hollow} />
        </>
      );
    case 'fits':
      return <path d="M0 -10L10 0L0 10L-10 0Z" className={styles.solid} />;
    case 'fits, heavy side':
      return (
        <>
          <path d="M0 10L10 0H-10Z" className={styles.solid} />
          <path d="M0 -10L10 0L0 10L-10 0Z" className={styles.hollow} />
        </>
      );
    case 'heavy':
      return <path d="M0 9L10 -8H-10Z" className={styles.solid} />;
    case 'near bottom':
      return (
        <>
          <path d="M0 4L9 -10H-9Z" className={styles.solid} />
          <path d="M-10 10H10" className={styles.bar} />
        </>
      );
    default: {
      const never: never = verdict;
      return never;
    }
  }
}
