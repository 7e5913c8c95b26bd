import styles from './gauge.module.css';
import { BOTTOM_STOP, TOP_STOP } from './gaugeScale';

/** How deep the plunger itself is drawn, from its shoulder to its foot. */
const PLUNGER = 54;
const FLOOR = BOTTOM_STOP + PLUNGER;
const COILS = 7;

interface Props {
  /** Where the plunger's shoulder stands. */
  readonly y: number;
  /** The id of the metal's hatch. */
  readonly metal: string;
}

/** A lifter cut open: body and floor hatched, retainer, plunger with its pushrod, spring under it. */
export function LifterSection({ y, metal }: Props) {
  const foot = y + PLUNGER;
  return (
    <g>
      <path
        d={`M22 48H54V${FLOOR}H150V48H182V${FLOOR + 26}H22Z`}
        fill={`url(#${metal})`}
        className={styles.body}
      />
      <path d={spring(foot, FLOOR)} className={styles.spring} />
      <path
        d={`M57 ${y}H80A22 20 0 0 0 124 ${y}H147V${foot}H57Z`}
        className={styles.plunger}
        data-plunger=""
      />
      <path d={`M91 24V${y - 2}A11 16 0 0 0 113 ${y - 2}V24`} className={styles.pushrod} />
      <path d={`M54 ${TOP_STOP - 13}H70V${TOP_STOP - 2}H54Z`} className={styles.retainer} />
      <path d={`M150 ${TOP_STOP - 13}H134V${TOP_STOP - 2}H150Z`} className={styles.retainer} />
    </g>
  );
}

function spring(from: number, to: number): string {
  const step = (to - from) / COILS;
  const points = Array.from({ length: COILS }, (_, coil) => {
    const x = coil % 2 === 0 ? 136 : 68;
    return `L${x} ${from + (coil + 0.5) * step}`;
  });
  return `M102 ${from}${points.join('')}L102 ${to}`;
}
