import { useId } from 'react';
import type { Verdict, Window } from '#valvetrain';
import styles from './gauge.module.css';
import { BOTTOM_STOP, depthY, type LimitLabel, limitLabels, TOP_STOP } from './gaugeScale';
import { LifterSection } from './LifterSection';
import { sideOf } from './VerdictMark';

interface Props {
  /** Preload now; null while nothing is counted. */
  readonly preloadMm: number | null;
  readonly window: Window;
  readonly verdict: Verdict | null;
  /** Full width in which the preload may lie, mm. */
  readonly bandMm?: number;
  readonly label: string;
  /** What a limit is called, and a length as a figure in the chosen unit. */
  readonly limitName: Readonly<Record<LimitLabel['kind'], string>>;
  readonly figure: (mm: number) => string;
}

/** The lifter as plunger travel: where the plunger stands, between which limits. */
export function PlungerGauge(props: Props) {
  const { preloadMm, window, verdict, bandMm, label, limitName, figure } = props;
  const id = useId();
  const travel = window.plungerTravelMm;
  const y = depthY(preloadMm ?? 0, travel);
  const band =
    preloadMm === null || bandMm === undefined
      ? null
      : {
          from: depthY(preloadMm - bandMm / 2, travel),
          to: depthY(preloadMm + bandMm / 2, travel),
        };
  return (
    <svg viewBox="0 20 430 436" className={styles.gauge} role="img" aria-label={label}>
      <Hatches id={id} />
      <LifterSection y={y} metal={`${id}metal`} />
      <Bands window={window} id={id} />
      {limitLabels(window).map((limit) => (
        <g key={`${limit.kind}${limit.mm}`}>
          <path d={`M246 ${limit.y}H256L268 ${limit.labelY}H276`} className={styles.leader} />
          <text x={328} y={limit.labelY + 9} className={styles.limit}>
            {figure(limit.mm)}
          </text>
          <text x={336} y={limit.labelY + 8} className={styles.limitName}>
            {limitName[limit.kind]}
          </text>
        </g>
      ))}
      {band === null ? null : (
        <path d={`M262 ${band.from}H254V${band.to}H262`} className={styles.band} data-band="" />
      )}
      {preloadMm === null ? null : (
        <g className={verdict === null ? styles.fits : styles[sideOf(verdict)]}>
          <path d={`M150 ${y}H248`} className={styles.datum} />
          <path d={`M184 ${y - 13}L206 ${y}L184 ${y + 13}Z`} className={styles.pointer} />
        </g>
      )}
    </svg>
  );
}

/** Bands told apart by hatch: keep-outs crossed, usable ruled, preferred solid. */
function Bands({ window, id }: { readonly window: Window; readonly id: string }) {
  const { plungerTravelMm: travel } = window;
  const at = (mm: number) => depthY(mm, travel);
  const band = (fromMm: number, toMm: number) => ({
    x: 208,
    width: 38,
    y: at(fromMm),
    height: Math.max(0, at(toMm) - at(fromMm)),
  });
  return (
    <g>
      <rect
        x={208}
        width={38}
        y={TOP_STOP}
        height={BOTTOM_STOP - TOP_STOP}
        className={styles.scale}
      />
      <rect {...band(0, window.keepOutTopMm)} fill={`url(#${id}crossed)`} />
      <rect {...band(window.usableMinMm, window.usableMaxMm)} fill={`url(#${id}ruled)`} />
      <rect {...band(window.usableMinMm, window.usableMaxMm)} className={styles.edge} />
      <rect {...band(window.preferredMinMm, window.preferredMaxMm)} className={styles.preferred} />
      <rect {...band(travel - window.keepOutBottomMm, travel)} fill={`url(#${id}crossed)`} />
    </g>
  );
}

function Hatches({ id }: { readonly id: string }) {
  return (
    <defs>
      <pattern id={`${id}metal`} width="9" height="9" patternUnits="userSpaceOnUse">
        <path d="M-2 11L11 -2M-2 2L2 -2M7 11L11 7" className={styles.metalLine} />
      </pattern>
      <pattern id={`${id}crossed`} width="8" height="8" patternUnits="userSpaceOnUse">
        <path d="M0 0L8 8M0 8L8 0" className={styles.crossLine} />
      </pattern>
      <pattern id={`${id}ruled`} width="6" height="6" patternUnits="userSpaceOnUse">
        <path d="M0 3H6" className={styles.ruleLine} />
      </pattern>
    </defs>
  );
}
