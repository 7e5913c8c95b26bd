import { useId } from 'react';
import { hasRefusal, type Window, windowProblems } from '#valvetrain';
import { figureMm, figureThou, type Units } from '#words';
import styles from './set-up.module.css';
import { setUpWords as words } from './setUpWords';

const LEFT = 10;
const WIDTH = 380;

interface Props {
  readonly window: Window;
  readonly units: Units;
}

/** The plunger's travel laid flat: keep-outs hatched, usable outlined, preferred filled. */
export function WindowDrawing({ window, units }: Props) {
  const hatch = useId();
  if (hasRefusal(windowProblems(window))) return null;
  const at = (mm: number) => LEFT + (mm / window.plungerTravelMm) * WIDTH;
  const figure = (mm: number) => (units === 'inch' ? figureThou(mm) : figureMm(mm));
  const bottom = window.plungerTravelMm - window.keepOutBottomMm;
  const span = (from: number, to: number) => ({ x: at(from), width: at(to) - at(from) });
  return (
    <svg
      role="img"
      viewBox="0 0 400 96"
      className={styles.window}
      aria-label={`${words.window.label}: ${words.window.usable} ${figure(window.usableMinMm)} – ${figure(window.usableMaxMm)}, ${words.window.preferred} ${figure(window.preferredMinMm)} – ${figure(window.preferredMaxMm)}`}
    >
      <defs>
        <pattern
          id={hatch}
          width="7"
          height="7"
          patternUnits="userSpaceOnUse"
          patternTransform="rotate(45)"
        >
          <path d="M0 0 V7" className={styles.hatchLine} />
        </pattern>
      </defs>
      <rect {...span(0, window.keepOutTopMm)} y="30" height="30" fill={`url(#${hatch})`} />
      <rect {...span(bottom, window.plungerTravelMm)} y="30" height="30" fill={`url(#${hatch})`} />
      <rect
        {...span(window.usableMinMm, window.usableMaxMm)}
        y="30"
        height="30"
        className={styles.usable}
      />
      <rect
        {...span(window.preferredMinMm, window.preferredMaxMm)}
        y="36"
        height="18"
        className={styles.preferred}
      />
      <rect x={LEFT} y="30" width={WIDTH} height="30" className={styles.outline} />
      {[window.usableMinMm, window.usableMaxMm].map((mm) => (
        <text key={`u${mm}`} x={at(mm)} y="78" textAnchor="middle" className={styles.windowFigure}>
          {figure(mm)}
        </text>
      ))}
      {distinctPreferred(window).map((mm) => (
        <text key={`p${mm}`} x={at(mm)} y="22" textAnchor="middle" className={styles.windowFigure}>
          {figure(mm)}
        </text>
      ))}
      <text x={LEFT} y="78" className={styles.windowFigure}>
        0
      </text>
      <text x={LEFT + WIDTH} y="78" textAnchor="end" className={styles.windowFigure}>
        {figure(window.plungerTravelMm)}
      </text>
      <text x={LEFT} y="22" className={styles.windowWord}>
        {words.window.top}
      </text>
      <text x={LEFT + WIDTH} y="22" textAnchor="end" className={styles.windowWord}>
        {words.window.bottom}
      </text>
    </svg>
  );
}

/** Edges of the preferred band that are not the usable limits themselves. */
function distinctPreferred(window: Window): readonly number[] {
  return [window.preferredMinMm, window.preferredMaxMm].filter(
    (mm) => mm !== window.usableMinMm && mm !== window.usableMaxMm,
  );
}
