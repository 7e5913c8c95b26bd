import styles from './crank.module.css';
import type { CylinderNow, ValveNow } from './crankNow';
import { crankWords as words } from './crankWords';
import { MotionMark } from './MotionMark';

interface Props {
  readonly now: CylinderNow;
  readonly chosen: boolean;
  /** Its valves are watched: it is the companion of the chosen cylinder. */
  readonly watched: boolean;
  readonly onChoose: () => void;
}

/** One cylinder: its piston's height, both valves' lift and state. */
export function CylinderCard({ now, chosen, watched, onChoose }: Props) {
  const { cylinder, piston, exhaust, intake } = now;
  const tag = now.at === null ? (watched ? words.companion : null) : words.at[now.at];
  return (
    <button
      type="button"
      className={watched ? `${styles.card} ${styles.watched}` : styles.card}
      aria-pressed={chosen}
      aria-label={words.cardNamed(cylinder, [exhaust, intake])}
      onClick={onChoose}
    >
      <span className={styles.cardHead}>
        <strong>{cylinder}</strong>
        <span>{tag ?? words.stroke[piston.stroke]}</span>
      </span>
      <svg viewBox="0 0 120 168" className={styles.bore} aria-hidden="true">
        <path d="M14 164V48H106V164" className={styles.wall} />
        <Valve x={38} now={exhaust} />
        <Valve x={82} now={intake} />
        <g transform={`translate(0 ${72 + 56 * piston.downShare})`}>
          <rect x={17} width={86} height={24} className={styles.pistonCrown} />
          <path d="M17 9H103" className={styles.ring} />
        </g>
      </svg>
      {[exhaust, intake].map((valve) => (
        <span key={valve.valve.valve} className={styles.cardValve}>
          <MotionMark motion={valve.motion} />
          <span>{`${words.letter[valve.valve.valve]} ${words.motions[valve.motion]}`}</span>
        </span>
      ))}
    </button>
  );
}

function Valve({ x, now }: { readonly x: number; readonly now: ValveNow }) {
  return (
    <g transform={`translate(${x} ${18 * now.liftShare})`}>
      <path d="M0 8V44" className={styles.stem} />
      <path
        d="M-17 50L-4 40H4L17 50Z"
        className={now.motion === 'shut' ? styles.head : styles.lifted}
      />
    </g>
  );
}
