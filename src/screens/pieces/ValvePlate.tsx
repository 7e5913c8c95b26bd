import type { Verdict } from '#valvetrain';
import type { PlatePlace } from './enginePlanPlaces';
import styles from './plan.module.css';
import { VerdictShape } from './VerdictMark';

/** One valve as the plan shows it. */
export interface PlanValve {
  /** The reading as a figure; null while there is none. */
  readonly figure: string | null;
  /** Its band, beside the figure: '±8'. */
  readonly band?: string;
  readonly verdict: Verdict | null;
  readonly mark: 'open' | 'next' | 'skipped' | null;
}

interface Props {
  readonly place: PlatePlace;
  readonly letter: string;
  readonly valve: PlanValve | null;
  readonly words: Readonly<Record<'open' | 'next' | 'skipped', string>>;
}

/** A valve's plate in the engine plan: its letter, its reading and the verdict's shape. */
export function ValvePlate({ place, letter, valve, words }: Props) {
  const { x, y, width, height } = place;
  const size = Math.min(28, height - 7);
  const base = y + height / 2 + size * 0.34;
  // A figure in millimetres and its band are longer.
  const [shrunk, bandX] = (valve?.band?.length ?? 0) > 3 ? [0.76, 78] : [0.86, 75];
  if (valve === null) {
    return (
      <text x={x + 16} y={base} fontSize={size * 0.8} className={styles.notHere}>
        {letter}
      </text>
    );
  }
  const { figure, band, verdict, mark } = valve;
  return (
    <g className={mark === 'open' ? styles.open : styles.shut} data-mark={mark ?? 'none'}>
      <rect
        x={x}
        y={y}
        width={width}
        height={height}
        className={styles[mark === null ? (figure === null ? 'empty' : 'read') : mark]}
      />
      <text x={x + 18} y={base} fontSize={size * 0.8} className={styles.letter}>
        {letter}
      </text>
      {band === undefined ? (
        <text x={x + width - 44} y={base} fontSize={size} className={styles.figure}>
          {figure ?? ''}
        </text>
      ) : (
        <>
          <text
            x={x + width - bandX - 3}
            y={base}
            fontSize={size * shrunk}
            className={styles.figure}
          >
            {figure ?? ''}
          </text>
          <text
            x={x + width - bandX}
            y={base}
            fontSize={size * shrunk * 0.7}
            className={styles.state}
          >
            {band}
          </text>
        </>
      )}
      {verdict === null ? null : (
        <g
          transform={`translate(${x + width - 22} ${y + height / 2}) scale(${Math.min(1, height / 30)})`}
        >
          <VerdictShape verdict={verdict} />
        </g>
      )}
      {mark !== null && figure === null ? (
        <text x={x + 40} y={base} fontSize={size * 0.82} className={styles.state}>
          {words[mark]}
        </text>
      ) : null}
    </g>
  );
}
