import { useId } from 'react';
import type { Window } from '#valvetrain';
import { type Dot, DotMark, WindowBand } from './DotParts';
import type { DotScale } from './dotScale';
import styles from './dots.module.css';

interface Props {
  readonly dots: readonly Dot[];
  readonly window: Window | null;
  readonly scale: DotScale;
}

/** How wide a strip's scale is drawn. */
export const STRIP_WIDTH = 220;
const HEIGHT = 20;

/** One valve's figures in its window, for a row of a table whose cells have them all. */
export function ReadingStrip({ dots, window, scale }: Props) {
  const id = useId();
  return (
    <svg viewBox={`0 0 ${STRIP_WIDTH} ${HEIGHT}`} className={styles.strip} aria-hidden="true">
      <defs>
        <pattern id={`${id}usable`} width="4" height="4" patternUnits="userSpaceOnUse">
          <path d="M-1 5L5 -1M-1 1L1 -1M3 5L5 3" className={styles.hatch} />
        </pattern>
      </defs>
      {window !== null && (
        <WindowBand window={window} y={1} height={HEIGHT - 2} scale={scale} hatch={`${id}usable`} />
      )}
      {dots.map((dot, place) => (
        <DotMark
          key={`${dot.shape} ${dot.mm}`}
          dot={dot}
          y={dots.length === 1 ? HEIGHT / 2 : 5.5 + (place * (HEIGHT - 11)) / (dots.length - 1)}
          scale={scale}
        />
      ))}
    </svg>
  );
}
