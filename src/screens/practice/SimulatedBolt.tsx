import { TURN } from '#valvetrain';
import { sayClock } from '#words';
import { DialFace } from '../pieces/DialFace';
import { type Bolt, boltMark48, isTight } from './bolts';
import styles from './practice.module.css';
import { practiceWords as words } from './practiceWords';

/** A hexagon about the middle, its corners this far out. */
const HEXAGON = Array.from({ length: 6 }, (_, corner) => {
  const angle = (corner * Math.PI) / 3;
  return `${(132 * Math.sin(angle)).toFixed(1)},${(-132 * Math.cos(angle)).toFixed(1)}`;
}).join(' ');

interface Props {
  readonly bolt: Bolt;
  /** Counted so far, 48ths of a turn; null before zero. */
  readonly count48: number | null;
}

/** The bolt the app plays: its socket from above with the mark, turned as the builder counts. */
export function SimulatedBolt({ bolt, count48 }: Props) {
  const at48 = count48 === null ? 0 : boltMark48(bolt, count48);
  const tight = count48 !== null && isTight(bolt, count48);
  const label =
    count48 === null
      ? words.boltAtZero
      : words.boltLabel(sayClock(boltMark48(bolt, count48), 'on'), tight);
  return (
    <svg viewBox="-322 -322 644 644" className={styles.bolt} role="img" aria-label={label}>
      <DialFace />
      <g transform={`rotate(${(360 * at48) / TURN})`} data-mark48={at48}>
        <circle r={206} className={tight ? styles.tightSocket : styles.socket} />
        <polygon points={HEXAGON} className={styles.hexagon} />
        <path d="M0 -278L26 -198H-26Z" className={styles.mark} />
      </g>
      {tight && (
        <text y={17} className={styles.tight}>
          {words.tight}
        </text>
      )}
    </svg>
  );
}
