import type { JobState } from '#counting';
import { type Engine, valveKey } from '#valvetrain';
import type { Units } from '#words';
import { EnginePlan } from '../pieces/EnginePlan';
import { figureIn } from '../pieces/figureIn';
import { type CylinderRows, countText } from './resultRows';
import styles from './results.module.css';
import { resultsWords as words } from './resultsWords';

interface Props {
  readonly job: JobState;
  readonly engine: Engine;
  readonly rows: readonly CylinderRows[];
  readonly units: Units;
}

/** The readings where they lie on the engine; preload where it is known, else the count. */
export function ResultsPlan({ job, engine, rows, units }: Props) {
  const lines = rows.flatMap((row) => row.lines);
  const valves = new Map(
    lines.map(({ valve, reading, figures, skipped }) => {
      const preload = figures?.preloadMm ?? null;
      const counted = reading === null ? null : countText(reading);
      return [
        valveKey(valve),
        {
          figure: preload === null ? counted : figureIn(units, preload, figures?.window ?? null),
          verdict: figures?.verdict ?? null,
          mark: reading === null && skipped ? ('skipped' as const) : null,
        },
      ];
    }),
  );
  return (
    <figure className={styles.plan}>
      <figcaption>
        {words.plan}, {words.unit[units]}
      </figcaption>
      <EnginePlan
        engine={engine}
        valves={valves}
        crankAt={job.crank.at?.cylinder ?? null}
        companion={null}
        label={`${words.plan}. ${lines
          .filter(({ reading }) => reading !== null)
          .map(({ valve, figures }) =>
            [
              words.valveName(valve),
              valves.get(valveKey(valve))?.figure ?? words.noUnit,
              figures?.verdict ?? '',
            ].join(' '),
          )
          .join('. ')}`}
        words={{
          front: words.planFront,
          here: words.planHere,
          watch: words.planWatch,
          state: words.planState,
          letter: words.letter,
        }}
      />
    </figure>
  );
}
