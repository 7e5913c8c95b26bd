import type { Verdict, Window } from '#valvetrain';
import type { DotScale } from './dotScale';
import styles from './dots.module.css';
import { VerdictShape } from './VerdictMark';

/** One figure in a row, by its shape: a verdict's own, a hollow or solid ring, or a tick. */
export interface Dot {
  readonly mm: number;
  /** Half of its band, mm; null where it is drawn without one. */
  readonly bandMm: number | null;
  readonly shape: 'hollow' | 'solid' | 'tick' | 'mean' | Verdict;
}

/** A window along the scale: usable hatched, preferred clear between two strong lines. */
export function WindowBand({
  window,
  y,
  height,
  scale,
  hatch,
}: {
  readonly window: Window;
  readonly y: number;
  readonly height: number;
  readonly scale: DotScale;
  readonly hatch: string;
}) {
  const { usableMinMm, usableMaxMm, preferredMinMm, preferredMaxMm } = window;
  const [from, to] = [scale.at(usableMinMm), scale.at(usableMaxMm)];
  const [least, most] = [scale.at(preferredMinMm), scale.at(preferredMaxMm)];
  return (
    <g>
      <rect x={from} y={y} width={to - from} height={height} fill={`url(#${hatch})`} />
      <rect x={from} y={y} width={to - from} height={height} className={styles.usable} />
      <rect x={least} y={y} width={most - least} height={height} className={styles.preferred} />
      <path d={`M${least} ${y}v${height}M${most} ${y}v${height}`} className={styles.limit} />
    </g>
  );
}

/** One figure with its band, by its shape. */
export function DotMark({
  dot,
  y,
  scale,
}: {
  readonly dot: Dot;
  readonly y: number;
  readonly scale: DotScale;
}) {
  const { mm, bandMm, shape } = dot;
  const x = scale.at(mm);
  return (
    <g>
      {bandMm !== null && (
        <path
          d={`M${scale.at(mm - bandMm)} ${y - 4}v8M${scale.at(mm - bandMm)} ${y}H${scale.at(mm + bandMm)}m0 -4v8`}
          className={styles.whisker}
          data-band=""
        />
      )}
      <Shape shape={shape} x={x} y={y} />
    </g>
  );
}

function Shape({
  shape,
  x,
  y,
}: {
  readonly shape: Dot['shape'];
  readonly x: number;
  readonly y: number;
}) {
  switch (shape) {
    case 'hollow':
      return <circle cx={x} cy={y} r={4.5} className={styles.hollow} />;
    case 'solid':
      return <circle cx={x} cy={y} r={5} className={styles.solid} />;
    case 'tick':
      return <path d={`M${x} ${y - 6}v12`} className={styles.tickMark} />;
    case 'mean':
      return (
        <path
          d={`M${x} ${y - 9}L${x + 6} ${y}L${x} ${y + 9}L${x - 6} ${y}Z`}
          className={styles.solid}
        />
      );
    default:
      return (
        <g transform={`translate(${x} ${y}) scale(0.62)`}>
          <VerdictShape verdict={shape} />
        </g>
      );
  }
}
