import type { PlannedPosition } from '#counting';
import { describeProof } from '#valvetrain';
import styles from './crank.module.css';
import { crankWords as words } from './crankWords';

interface Props {
  readonly stops: readonly PlannedPosition[];
  readonly method: string;
  /** Number in the list of the stop the picture stands at; -1 for none. */
  readonly at: number;
  readonly onJump: (stop: PlannedPosition) => void;
}

/** The stops of the walk, each a place to jump to. */
export function StopList({ stops, method, at, onJump }: Props) {
  return (
    <section aria-labelledby="crank-stops">
      <h2 id="crank-stops">{words.stops}</h2>
      <p>{words.method(method)}</p>
      <ol className={styles.stops}>
        {stops.map((stop, place) => (
          <li key={stop.position.angleDeg}>
            <button
              type="button"
              className={styles.stop}
              aria-current={place === at ? 'step' : undefined}
              onClick={() => onJump(stop)}
            >
              <strong>{words.stop(place + 1)}</strong>
              <span>{words.countAt(stop.position.valves)}</span>
              <span className={styles.under}>
                {`${describeProof(stop.proof)} ${words.least(stop.leastMarginDeg)}.`}
              </span>
            </button>
          </li>
        ))}
      </ol>
    </section>
  );
}
