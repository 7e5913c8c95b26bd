import { cylinderPlaces, type Engine, type RunningDirection } from '#valvetrain';
import styles from './set-up.module.css';
import { setUpWords as words } from './setUpWords';

const ROW = 62;
const BORE = 24;

interface Props {
  readonly engine: Engine;
  readonly direction: '' | RunningDirection;
}

/** The engine from above, front at the top: cylinder numbers, and each one's place in the order. */
export function NumberingPlan({ engine, direction }: Props) {
  const places = cylinderPlaces(engine);
  const rows = Math.max(...engine.banks.map((bank) => bank.length), 1);
  const banks = Math.max(engine.banks.length, 1);
  const width = 60 + banks * 110;
  const height = 76 + rows * ROW;
  const x = (bank: number) => width / 2 + (bank - (banks - 1) / 2) * 110;
  // The second bank of a V or a flat engine sits a little further back on the crank.
  const y = (bank: number, fromFront: number) =>
    50 + fromFront * ROW + (banks === 2 && bank === 1 ? 12 : 0);
  const block = `M16 ${30} H${width - 16} V${height - 30} H16 Z`;
  return (
    <figure className={styles.plan}>
      <figcaption>
        <strong>{words.plan}</strong> <span className={styles.quiet}>{words.planHint}</span>
      </figcaption>
      <svg
        role="img"
        aria-label={words.planLabel(engine)}
        viewBox={`0 0 ${width} ${height}`}
        className={styles.planDrawing}
        style={{ maxWidth: width * 1.25 }}
      >
        <path d={block} className={styles.outline} />
        <path
          d={`M${width / 2} 34 V${height - 34}`}
          className={styles.centreLine}
          strokeDasharray="14 4 3 4"
        />
        <text x={width / 2} y={20} textAnchor="middle" className={styles.planEnd}>
          {words.planFront}
        </text>
        <text x={width / 2} y={height - 10} textAnchor="middle" className={styles.planEnd}>
          {words.planRear}
        </text>
        {places
          .filter(({ cylinder }) => Number.isFinite(cylinder))
          .map(({ cylinder, bank, fromFront }) => (
            <g key={`${bank}-${fromFront}`}>
              <circle cx={x(bank)} cy={y(bank, fromFront) + 12} r={BORE} className={styles.bore} />
              <text
                x={x(bank)}
                y={y(bank, fromFront) + 20}
                textAnchor="middle"
                className={styles.boreNumber}
              >
                {cylinder}
              </text>
              <text
                x={x(bank) + (bank === 0 && banks === 2 ? -BORE - 6 : BORE + 6)}
                y={y(bank, fromFront) + 17}
                textAnchor={bank === 0 && banks === 2 ? 'end' : 'start'}
                className={styles.firingPlace}
              >
                {firingPlace(engine, cylinder)}
              </text>
            </g>
          ))}
      </svg>
      {direction !== '' && (
        <p className={styles.quiet}>
          {words.runs(direction, engine.seenFrom)} {direction === 'clockwise' ? '↻' : '↺'}
        </p>
      )}
    </figure>
  );
}

function firingPlace(engine: Engine, cylinder: number): string {
  const place = engine.firingOrder.indexOf(cylinder);
  return place < 0 ? '' : `${place + 1}.`;
}
