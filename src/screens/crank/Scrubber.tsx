import { TouchBar } from '../pieces/TouchBar';
import styles from './crank.module.css';
import { crankWords as words } from './crankWords';
import type { ScrubMoves } from './useScrubKeys';

interface Props {
  readonly angleDeg: number;
  readonly place: string;
  /** Where the crank stands is known. */
  readonly stands: boolean;
  readonly moves: ScrubMoves;
  readonly onAngle: (angleDeg: number) => void;
}

/** Moves the picture: a slider over two turns, and large targets. */
export function Scrubber({ angleDeg, place, stands, moves, onAngle }: Props) {
  return (
    <>
      <div className={styles.sticky}>
        <p className={styles.place} aria-live="polite">
          {place}
        </p>
        <input
          type="range"
          className={styles.slider}
          min={0}
          max={719}
          step="any"
          value={angleDeg}
          aria-label={words.scrub}
          aria-valuetext={words.scrubValue(angleDeg, place)}
          onChange={(change) => onAngle(Math.round(change.target.valueAsNumber))}
        />
      </div>
      <div className={styles.scrub}>
        <TouchBar
          label={words.bar}
          targets={[
            { id: 'before', label: words.before, act: moves.stopBefore },
            { id: 'back', label: words.back, act: () => moves.by(-10) },
            { id: 'on', label: words.on, act: () => moves.by(10) },
            { id: 'after', label: words.after, wide: true, act: moves.stopAfter },
            { id: 'home', label: stands ? words.home : words.homeUnknown, act: moves.home },
          ]}
        />
        <p className={styles.quiet}>{words.keys}</p>
      </div>
    </>
  );
}
