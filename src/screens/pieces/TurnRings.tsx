import { TURN } from '#valvetrain';
import styles from './dial.module.css';
import { ringPiece } from './dialGeometry';

const OUTER = 268;
const INNER = 222;
/** Rings that can still be told apart; of more turns than this the newest are drawn. */
const MOST_RINGS = 4;
const BETWEEN = 5;

interface Props {
  readonly count48: number;
  /** The spacing of the marks, 48ths: a full mark is one piece. */
  readonly mark48: number;
  /** 1 counting on (clockwise), -1 counting off. */
  readonly way: 1 | -1;
  readonly ghost48: number | null;
}

/** One ring a turn, first turn outermost, filled mark by mark from twelve. */
export function TurnRings({ count48, mark48, way, ghost48 }: Props) {
  const reach48 = Math.max(count48, ghost48 ?? 0);
  const turns = Math.max(1, Math.ceil(reach48 / TURN));
  const first = Math.max(0, turns - MOST_RINGS);
  const rings = Math.max(2, Math.min(MOST_RINGS, turns));
  const pitch = (OUTER - INNER) / rings;
  return (
    <g>
      {Array.from({ length: rings }, (_, ring) => {
        const turn = first + ring;
        const outer = OUTER - ring * pitch;
        const inner = outer - pitch + BETWEEN;
        const filled = within(count48 - turn * TURN);
        const ghost = ghost48 === null ? 0 : within(ghost48 - turn * TURN);
        return (
          <g key={turn}>
            <path d={ringPiece(0, 1, inner, outer)} className={styles.track} />
            {pieces(filled, mark48).map(([from, to]) => (
              <path
                key={from}
                d={ringPiece((way * from) / TURN, (way * to) / TURN, inner, outer)}
                className={styles.filled}
                data-ring={turn}
              />
            ))}
            {ghost > filled ? (
              <path
                d={ringPiece((way * filled) / TURN, (way * ghost) / TURN, inner, outer)}
                className={styles.ghostArc}
              />
            ) : null}
          </g>
        );
      })}
    </g>
  );
}

function within(count48: number): number {
  return Math.max(0, Math.min(TURN, count48));
}

/** The filled part cut at every mark, 48ths, with a hair's gap at either end of a piece. */
function pieces(filled48: number, mark48: number): readonly (readonly [number, number])[] {
  const gap = 0.16;
  const found: [number, number][] = [];
  for (let from = 0; from < filled48; from += mark48) {
    found.push([from + gap, Math.min(from + mark48, filled48) - gap]);
  }
  return found;
}
