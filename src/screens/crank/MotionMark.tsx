import type { ValveMotion } from '#valvetrain';
import styles from './crank.module.css';

/** A valve's state as a shape: a ring on base circle, down opening, a bar open, up closing. */
export function MotionMark({ motion }: { readonly motion: ValveMotion }) {
  return (
    <svg viewBox="0 0 20 20" className={styles.motion} aria-hidden="true">
      <Shape motion={motion} />
    </svg>
  );
}

function Shape({ motion }: { readonly motion: ValveMotion }) {
  switch (motion) {
    case 'shut':
      return <circle cx={10} cy={10} r={7} className={styles.markLine} />;
    case 'opening':
      return <path d="M2 4H18L10 17Z" className={styles.markSolid} />;
    case 'open':
      return <rect x={3} y={3} width={14} height={14} className={styles.markSolid} />;
    case 'closing':
      return <path d="M2 16H18L10 3Z" className={styles.markLine} />;
    default: {
      const never: never = motion;
      return never;
    }
  }
}
