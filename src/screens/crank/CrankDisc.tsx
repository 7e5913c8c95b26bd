import type { PlannedPosition } from '#counting';
import type { Engine } from '#valvetrain';
import { arc, onDial } from '../pieces/dialGeometry';
import styles from './crank.module.css';
import { lastTdc, onCycle, samePlace, tdcsOn } from './crankNow';
import { crankWords as words } from './crankWords';

interface Props {
  readonly engine: Engine;
  readonly stops: readonly PlannedPosition[];
  readonly angleDeg: number;
}

const RIM = 200;
const HOLES = Array.from({ length: 6 }, (_, hole) => hole);

/**
 * The crank seen from where the builder stands, its pointer at twelve. Round it stand the TDCs of the
 * coming turn: each comes to the pointer as the crank runs on.
 */
export function CrankDisc({ engine, stops, angleDeg }: Props) {
  const sign = engine.runningDirection === 'clockwise' ? 1 : -1;
  const comingIn = (onDeg: number) => (-onDeg / 360) * sign;
  const marks = tdcsOn(engine, angleDeg);
  const turned = (angleDeg / 360) * sign;
  const running = words.running(engine.runningDirection, engine.seenFrom);
  return (
    <svg
      viewBox="-356 -336 712 672"
      className={styles.disc}
      role="img"
      aria-label={[words.disc, running, placeOf(engine, angleDeg)].join(', ')}
    >
      <circle r={RIM} className={styles.rim} />
      {HOLES.map((hole) => {
        const { x, y } = onDial(turned + hole / HOLES.length, 116);
        return (
          <circle key={hole} cx={x} cy={y} r={8} className={hole ? styles.hole : styles.key} />
        );
      })}
      {marks.map(({ angleDeg: tdcDeg, onDeg, firing, crossing }) => {
        const inner = onDial(comingIn(onDeg), RIM - 20);
        const outer = onDial(comingIn(onDeg), RIM);
        const at = onDial(comingIn(onDeg), 292);
        const here = samePlace(tdcDeg, angleDeg);
        return (
          <g key={`${tdcDeg} ${firing} ${crossing}`}>
            <line x1={inner.x} y1={inner.y} x2={outer.x} y2={outer.y} className={styles.tdcMark} />
            <text x={at.x} y={at.y} className={here ? styles.firesNow : styles.fires}>
              {firing ?? '–'}
            </text>
            {crossing !== null && (
              <text x={at.x} y={at.y + 30} className={styles.crosses}>
                {words.crosses(crossing)}
              </text>
            )}
          </g>
        );
      })}
      {stops.map(({ position }, place) => {
        const onDeg = position.angleDeg === null ? 720 : onCycle(position.angleDeg - angleDeg);
        if (onDeg >= 360) return null;
        const at = onDial(comingIn(onDeg), 152);
        return (
          <g key={position.angleDeg} transform={`translate(${at.x} ${at.y})`}>
            <circle r={20} className={styles.stopMark} />
            <text y={10} className={styles.stopNumber}>
              {place + 1}
            </text>
          </g>
        );
      })}
      <path d={arc(0.05 * sign, 0.15 * sign, 222)} className={styles.runs} />
      <path
        d="M-16 -14L12 0L-16 14Z"
        transform={arrowAt(0.15 * sign, 222, sign)}
        className={styles.arrow}
      />
      <path d="M0 -206L-15 -236H15Z" className={styles.pointer} />
      <text y={18} className={styles.angle}>
        {words.angle(angleDeg)}
      </text>
      <text y={58} className={styles.of}>
        {words.of720}
      </text>
    </svg>
  );
}

/** Where the crank stands in words: at a TDC, or so far past the last one. */
export function placeOf(engine: Engine, angleDeg: number): string {
  const last = lastTdc(engine, angleDeg);
  if (last === undefined) return '';
  const { tdc, pastDeg } = last;
  const at = pastDeg < 0.01;
  if (tdc.firing !== null)
    return at ? words.atFiring(tdc.firing) : words.past(pastDeg, words.firingTdc(tdc.firing));
  if (tdc.crossing === null) return '';
  return at ? words.atCrossing(tdc.crossing) : words.past(pastDeg, words.crossingTdc(tdc.crossing));
}

function arrowAt(turns: number, radius: number, sign: number): string {
  const { x, y } = onDial(turns, radius);
  return `translate(${x} ${y}) rotate(${turns * 360 + (sign === 1 ? 0 : 180)})`;
}
