import styles from './dial.module.css';
import { onDial } from './dialGeometry';

const HOURS = Array.from({ length: 12 }, (_, hour) => hour);
const PARTS = Array.from({ length: 48 }, (_, part) => part);

/** The dial's engraving: 48ths, hours, and the four hours a mark is called by. */
export function DialFace() {
  return (
    <g>
      <circle r={316} className={styles.rim} />
      <circle r={218} className={styles.hairline} />
      {PARTS.filter((part) => part % 4 !== 0).map((part) => (
        <Tick key={part} turns={part / 48} from={304} className={styles.partTick} />
      ))}
      {HOURS.map((hour) =>
        hour % 3 === 0 ? (
          <text
            key={hour}
            x={onDial(hour / 12, 299).x}
            y={onDial(hour / 12, 299).y + 11}
            className={styles.hour}
          >
            {hour === 0 ? 12 : hour}
          </text>
        ) : (
          <Tick key={hour} turns={hour / 12} from={288} className={styles.hourTick} />
        ),
      )}
    </g>
  );
}

function Tick({
  turns,
  from,
  className,
}: {
  readonly turns: number;
  readonly from: number;
  readonly className: string | undefined;
}) {
  const a = onDial(turns, from);
  const b = onDial(turns, 316);
  return <line x1={a.x} y1={a.y} x2={b.x} y2={b.y} className={className} />;
}
