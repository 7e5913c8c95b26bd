import { TURN, type Turn48 } from '#valvetrain';
import { CountNumeral } from './CountNumeral';
import { type CountUnit, countParts } from './countParts';
import { DialFace } from './DialFace';
import styles from './dial.module.css';
import { onDial } from './dialGeometry';
import { TurnRings } from './TurnRings';

interface Props {
  /** Counted so far, 48ths of a turn; null before zero. */
  readonly count48: Turn48 | null;
  readonly direction: 'on' | 'off';
  /** The spacing of the marks, 48ths of a turn. */
  readonly mark48: Turn48;
  readonly unit: CountUnit;
  /** A count being heard and not yet taken. */
  readonly ghost48?: Turn48 | null;
  /** The whole picture in words. */
  readonly label: string;
  /** Under the numeral: what it counts, and what stands beside it ('turn 2'). */
  readonly under: string;
  readonly beside: string;
}

/** The mark on the socket as a clock, its turns as rings, and the count inside. */
export function ClockDial(props: Props) {
  const { count48, direction, mark48, unit, label, under, beside } = props;
  const ghost48 = props.ghost48 ?? null;
  const way = direction === 'on' ? 1 : -1;
  const shown48 = count48 ?? 0;
  return (
    <svg viewBox="-322 -322 644 644" className={styles.dial} role="img" aria-label={label}>
      <DialFace />
      <TurnRings count48={shown48} mark48={mark48} way={way} ghost48={ghost48} />
      {ghost48 === null ? null : <Mark turns={(way * ghost48) / TURN} ghost />}
      <Mark turns={(way * shown48) / TURN} hollow={count48 === null} />
      {count48 === null ? (
        <rect x={-70} y={-34} width={140} height={18} className={styles.noCount} />
      ) : (
        <CountNumeral
          parts={countParts(count48, unit)}
          y={ghost48 === null ? -30 : -52}
          widest={396}
          tallest={ghost48 === null ? 300 : 236}
        />
      )}
      {ghost48 === null ? (
        <>
          <text y={136} className={styles.under}>
            {under}
          </text>
          <text y={180} className={styles.beside}>
            {beside}
          </text>
        </>
      ) : (
        <CountNumeral parts={countParts(ghost48, unit)} y={104} widest={230} tallest={150} ghost />
      )}
    </svg>
  );
}

/** The mark: a wedge on the socket, its point to the hours. */
function Mark({
  turns,
  hollow = false,
  ghost = false,
}: {
  readonly turns: number;
  readonly hollow?: boolean;
  readonly ghost?: boolean;
}) {
  const { x, y } = onDial(turns, 1);
  return (
    <path
      d="M0 -278L22 -210H-22Z"
      transform={`rotate(${(Math.atan2(x, -y) * 180) / Math.PI})`}
      className={ghost ? styles.ghostMark : hollow ? styles.hollowMark : styles.mark}
      data-mark={ghost ? 'ghost' : 'now'}
    />
  );
}
