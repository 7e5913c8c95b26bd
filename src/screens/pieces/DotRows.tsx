import { useId } from 'react';
import type { Window } from '#valvetrain';
import { type Dot, DotMark, WindowBand } from './DotParts';
import { type DotScale, dotScale } from './dotScale';
import styles from './dots.module.css';

export interface DotRow {
  readonly key: string;
  readonly label: string;
  readonly window: Window | null;
  readonly dots: readonly Dot[];
  /** What stands at the end of the row. */
  readonly figure: string;
}

interface Props {
  readonly rows: readonly DotRow[];
  readonly units: 'inch' | 'mm';
  /** Says in words what is drawn. */
  readonly label: string;
  /** A length as a bare figure of the unit, for the scale. */
  readonly tick: (mm: number) => string;
  /** Room for the figures at the end, in the drawing's own units. */
  readonly figureWidth?: number;
}

const WIDTH = 400;
const LEFT = 52;
const ROW = 27;
const HEAD = 26;

/**
 * Figures row by row along one scale, each in its window: usable hatched, preferred clear between two
 * strong lines. Bands as whiskers. Told by place and shape, so that it prints in black and white.
 */
export function DotRows({ rows, units, label, tick, figureWidth = 62 }: Props) {
  const id = useId();
  const right = WIDTH - figureWidth;
  const lengths = rows.flatMap(({ dots }) =>
    dots.flatMap(({ mm, bandMm }) => [mm - (bandMm ?? 0), mm + (bandMm ?? 0)]),
  );
  const windows = rows.flatMap(({ window }) => window ?? []);
  const scale = dotScale(lengths, windows, units, LEFT, right);
  const height = HEAD + rows.length * ROW + 4;
  return (
    <svg viewBox={`0 0 ${WIDTH} ${height}`} className={styles.dots} role="img" aria-label={label}>
      <defs>
        <pattern id={`${id}usable`} width="5" height="5" patternUnits="userSpaceOnUse">
          <path d="M-1 6L6 -1M-1 1L1 -1M4 6L6 4" className={styles.hatch} />
        </pattern>
      </defs>
      {scale.ticksMm.map((mm) => (
        <g key={mm}>
          <path d={`M${scale.at(mm)} ${HEAD - 4}V${height - 4}`} className={styles.grid} />
          <text x={scale.at(mm)} y={HEAD - 9} className={styles.tick}>
            {tick(mm)}
          </text>
        </g>
      ))}
      {rows.map((row, place) => (
        <Row key={row.key} row={row} y={HEAD + place * ROW} scale={scale} hatch={`${id}usable`} />
      ))}
    </svg>
  );
}

interface RowProps {
  readonly row: DotRow;
  readonly y: number;
  readonly scale: DotScale;
  readonly hatch: string;
}

function Row({ row, y, scale, hatch }: RowProps) {
  const middle = y + ROW / 2;
  const apart = row.dots.filter(({ bandMm }) => bandMm !== null).length === 2 ? 5 : 0;
  return (
    <g data-row={row.key}>
      {row.window !== null && (
        <WindowBand window={row.window} y={y + 2} height={ROW - 4} scale={scale} hatch={hatch} />
      )}
      <text x={LEFT - 8} y={middle + 6} className={styles.label}>
        {row.label}
      </text>
      {row.dots.map((dot, i) => (
        <DotMark
          key={`${dot.shape} ${dot.mm}`}
          dot={dot}
          y={middle + (i === 0 ? -apart : apart)}
          scale={scale}
        />
      ))}
      <text x={WIDTH} y={middle + 6} className={styles.figure}>
        {row.figure}
      </text>
    </g>
  );
}
