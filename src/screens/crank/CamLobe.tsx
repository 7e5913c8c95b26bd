import type { SeatTiming } from '#valvetrain';
import { openSpan } from '#valvetrain';
import { arc, onDial } from '../pieces/dialGeometry';
import styles from './crank.module.css';
import type { ValveNow } from './crankNow';
import { crankWords as words } from './crankWords';

const BASE = 62;
const RISE = 34;

interface Props {
  readonly now: ValveNow;
  readonly timing: SeatTiming;
  readonly wantedDeg: number;
}

/**
 * The valve's cam under its lifter, seen end on and drawn as if it ran clockwise: two turns of the
 * crank are one of the cam. The heavy part of the base circle is where the valve may be counted.
 */
export function CamLobe({ now, timing, wantedDeg }: Props) {
  const { opensDeg, closesDeg } = openSpan(timing.events, now.valve.valve);
  const duration = closesDeg - opensDeg;
  // A point of the cam that meets the lifter `onDeg` of crank later stands so far before the top.
  const before = (onDeg: number) => -onDeg / 720;
  const opens = now.motion === 'shut' ? now.untilOpensDeg : now.untilOpensDeg - 720;
  const lobe = Array.from({ length: 49 }, (_, part) => {
    const through = part / 48;
    return onDial(
      before(opens + duration * through),
      BASE + RISE * Math.sin(Math.PI * through) ** 2,
    );
  });
  const safe = 720 - duration - 2 * wantedDeg;
  const top = -(BASE + RISE * now.liftShare);
  return (
    <svg
      viewBox="-110 -190 220 300"
      className={styles.lobe}
      role="img"
      aria-label={words.lobe(now.valve.valve, now.motion)}
    >
      <circle r={BASE} className={styles.base} />
      <path d={`M${lobe.map(({ x, y }) => `${x} ${y}`).join('L')}`} className={styles.nose} />
      {safe > 0 && (
        <path
          d={arc(before(opens - wantedDeg), before(opens - wantedDeg - safe), BASE)}
          className={styles.safe}
        />
      )}
      <circle r={7} className={styles.hole} />
      <g transform={`translate(0 ${top})`}>
        <rect x={-24} y={-64} width={48} height={62} className={styles.lifter} />
        <path d="M0 -64V-92" className={styles.rod} />
      </g>
    </svg>
  );
}
