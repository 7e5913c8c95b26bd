import type { SeatTiming } from '#valvetrain';
import { CamLobe } from './CamLobe';
import styles from './crank.module.css';
import type { CylinderNow } from './crankNow';
import { crankWords as words } from './crankWords';

interface Props {
  readonly now: CylinderNow;
  readonly timing: SeatTiming;
  readonly wantedDeg: number;
}

/** Why the valves of one cylinder may be counted at this angle, or may not. */
export function WhyPanel({ now, timing, wantedDeg }: Props) {
  const { cylinder, exhaust, intake, companion } = now;
  const countable = exhaust.countable || intake.countable;
  return (
    <section className={styles.why} aria-labelledby="crank-why">
      <h2 id="crank-why">{words.why(cylinder)}</h2>
      {[exhaust, intake].map((valve) => (
        <div key={valve.valve.valve} className={styles.whyValve}>
          <figure className={styles.lobeFigure}>
            <CamLobe now={valve} timing={timing} wantedDeg={wantedDeg} />
            <figcaption>{words.valve[valve.valve.valve]}</figcaption>
          </figure>
          <p>{words.because(valve, wantedDeg)}</p>
        </div>
      ))}
      {now.at === 'firing TDC' && companion !== null && (
        <p>{words.crossingProves(companion, cylinder)}</p>
      )}
      {countable && <p>{words.proveIt}</p>}
    </section>
  );
}
