import styles from './dial.module.css';
import { arc, onDial } from './dialGeometry';

interface Props {
  /** How far to turn, crank degrees; null when it is not to be told, or not known. */
  readonly turnDeg: number | null;
  /** The running direction as the builder sees it. */
  readonly way: 'clockwise' | 'anticlockwise';
  /** Inside, large, and under it. */
  readonly figure: string;
  readonly under: string;
  /** Two short lines at the foot. */
  readonly beside: readonly string[];
  readonly label: string;
}

const PINS = Array.from({ length: 24 }, (_, pin) => pin);

/** The crank seen on its pulley: where it is to go, or that it stands still. */
export function CrankDial({ turnDeg, way, figure, under, beside, label }: Props) {
  const sign = way === 'clockwise' ? 1 : -1;
  const sweep = turnDeg === null ? 0 : ((turnDeg % 360 || (turnDeg > 0 ? 360 : 0)) / 360) * sign;
  const end = Math.abs(sweep) >= 1 ? 0.985 * sign : sweep;
  const tip = onDial(end, 250);
  return (
    <svg viewBox="-322 -322 644 644" className={styles.dial} role="img" aria-label={label}>
      <circle r={316} className={styles.rim} />
      <circle r={286} className={styles.hairline} />
      <circle r={212} className={styles.hairline} />
      {PINS.map((pin) => {
        const a = onDial(pin / 24, 290);
        const b = onDial(pin / 24, 312);
        return <line key={pin} x1={a.x} y1={a.y} x2={b.x} y2={b.y} className={styles.hourTick} />;
      })}
      {sweep === 0 ? null : (
        <>
          <path d={arc(0, end - 0.03 * sign, 250)} className={styles.sweep} />
          <path
            d="M-40 -32L14 0L-40 32Z"
            transform={`translate(${tip.x} ${tip.y}) rotate(${end * 360 + (sign === 1 ? 0 : 180)})`}
            className={styles.arrow}
          />
          <path d="M0 -224V-276" className={styles.sweepStart} />
        </>
      )}
      <g className={styles.numeral}>
        <text y={26} fontSize={figure.length > 3 ? 170 : figure.length > 2 ? 200 : 250}>
          {figure}
        </text>
      </g>
      <text y={90} className={styles.under}>
        {under}
      </text>
      {beside.map((line, i) => (
        <text key={line} y={134 + 38 * i} className={styles.beside}>
          {line}
        </text>
      ))}
    </svg>
  );
}
