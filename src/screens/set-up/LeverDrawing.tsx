import type { AdjusterKind } from '#valvetrain';
import styles from './set-up.module.css';
import { setUpWords as words } from './setUpWords';

const PUSHROD_X = 60;
const PIVOT_X = 130;
const Y = 74;

interface Props {
  readonly kind: AdjusterKind;
  readonly rockerRatio: number;
}

/** The rocker from the side: the valve's tip stands still, what turns is live, the pushrod goes down. */
export function LeverDrawing({ kind, rockerRatio }: Props) {
  const valveX = PIVOT_X + (PIVOT_X - PUSHROD_X) * Math.min(Math.max(rockerRatio, 1), 2.2);
  const screwX = { pivot: PIVOT_X, 'pushrod-end screw': PUSHROD_X, 'valve-end screw': valveX };
  return (
    <svg
      role="img"
      aria-label={`${words.lever.label}. ${words.whyKinds[kind]}`}
      viewBox="0 0 320 190"
      className={styles.lever}
    >
      <path
        d={`M${PUSHROD_X - 14} ${Y} Q${PIVOT_X} ${Y - 34} ${valveX + 14} ${Y} L${valveX + 10} ${Y + 14} Q${PIVOT_X} ${Y - 6} ${PUSHROD_X - 10} ${Y + 14} Z`}
        className={styles.outline}
      />
      <path
        d={`M${PUSHROD_X - 5} ${Y + 14} V150 H${PUSHROD_X + 5} V${Y + 14}`}
        className={styles.outline}
      />
      <path
        d={`M${valveX - 4} ${Y + 14} V150 M${valveX + 4} ${Y + 14} V150`}
        className={styles.outline}
      />
      <path d={`M${valveX - 16} 150 H${valveX + 16}`} className={styles.hatchLine} />
      <g className={styles.live}>
        <path d={`M${screwX[kind] - 7} 22 H${screwX[kind] + 7} V${Y - 6} H${screwX[kind] - 7} Z`} />
        <path d={[30, 37, 44, 51, 58].map((y) => `M${screwX[kind] - 7} ${y} l14 -5`).join(' ')} />
        <path d={`M${screwX[kind]} 4 v12 m-4 -5 l4 5 l4 -5`} />
      </g>
      <text x={screwX[kind] + 14} y={16} className={styles.leverWord}>
        {words.lever.pitch}
      </text>
      <path d={`M${PUSHROD_X - 26} 92 v40 m-5 -7 l5 7 l5 -7`} className={styles.live} />
      <text x={PUSHROD_X} y={170} textAnchor="middle" className={styles.leverWord}>
        {words.lever.pushrod}
      </text>
      <text x={valveX} y={170} textAnchor="middle" className={styles.leverWord}>
        {words.lever.valve}
      </text>
      <path
        d={`M${PUSHROD_X} 112 H${PIVOT_X} M${PIVOT_X} 112 H${valveX} M${PUSHROD_X} 107 v10 M${PIVOT_X} 107 v10 M${valveX} 107 v10`}
        className={styles.dimension}
      />
      <text x={(PUSHROD_X + PIVOT_X) / 2} y={128} textAnchor="middle" className={styles.leverWord}>
        1
      </text>
      <text x={(PIVOT_X + valveX) / 2} y={128} textAnchor="middle" className={styles.leverWord}>
        {words.lever.ratioIs(rockerRatio)}
      </text>
      <circle cx={PIVOT_X} cy={Y - 10} r={5} className={styles.outline} />
    </svg>
  );
}
