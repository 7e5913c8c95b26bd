import { type Engine, type ValveId, valveKey } from '#valvetrain';
import { planOf } from './enginePlanPlaces';
import styles from './plan.module.css';
import { type PlanValve, ValvePlate } from './ValvePlate';

interface Props {
  readonly engine: Engine;
  /** Every valve of the job by its key; a valve that is missing is not counted here. */
  readonly valves: ReadonlyMap<string, PlanValve>;
  /** The cylinder at firing TDC where the crank stands. */
  readonly crankAt: number | null;
  /** The cylinder whose valves are watched while the crank turns. */
  readonly companion: number | null;
  readonly label: string;
  readonly words: {
    readonly front: string;
    readonly here: string;
    readonly watch: string;
    readonly state: Readonly<Record<'open' | 'next' | 'skipped', string>>;
    readonly letter: Readonly<Record<ValveId['valve'], string>>;
  };
}

/** The engine from above, front at the top: every cylinder in its bank with both valves' readings. */
export function EnginePlan(props: Props) {
  const { engine, valves, crankAt, companion, label, words } = props;
  const plan = planOf(engine);
  return (
    <svg
      viewBox={`0 0 ${plan.width} ${plan.height}`}
      className={styles.plan}
      role="img"
      aria-label={label}
    >
      <path d={plan.outline} className={styles.block} />
      <text x={plan.width / 2} y={22} className={styles.front}>
        {words.front}
      </text>
      {plan.cylinders.map(({ cylinder, x, y, bore, plates }) => {
        const here = cylinder === crankAt;
        const watch = cylinder === companion;
        return (
          <g key={cylinder} data-cylinder={cylinder}>
            {here ? <circle cx={x} cy={y} r={bore + 5} className={styles.here} /> : null}
            <circle
              cx={x}
              cy={y}
              r={bore}
              className={here ? styles.boreHere : watch ? styles.boreWatch : styles.bore}
            />
            <text
              x={x}
              y={y + ((here || watch) && bore > 24 ? 3 : bore > 24 ? 11 : 7)}
              className={here ? styles.numberHere : styles.number}
              fontSize={bore > 24 ? 32 : 20}
            >
              {cylinder}
            </text>
            {(here || watch) && bore > 24 ? (
              <text x={x} y={y + 22} className={here ? styles.tagHere : styles.tag}>
                {here ? words.here : words.watch}
              </text>
            ) : null}
            {plates.map((plate) => (
              <ValvePlate
                key={plate.valve}
                place={plate}
                letter={words.letter[plate.valve]}
                valve={valves.get(valveKey({ cylinder, valve: plate.valve })) ?? null}
                words={words.state}
              />
            ))}
          </g>
        );
      })}
    </svg>
  );
}
