import type { JobSheet, SheetValve } from '#counting';
import { type Verdict, valveKey, verdictWords } from '#valvetrain';
import { shown, type Units } from '#words';
import { readingText, verdictText } from '../pictures/pictureRows';
import { EnginePlan } from '../pieces/EnginePlan';
import { figureIn } from '../pieces/figureIn';
import type { PlanValve } from '../pieces/ValvePlate';
import { VerdictMark } from '../pieces/VerdictMark';
import { countText } from '../results/resultRows';
import styles from './paper.module.css';
import { sheetWords as words } from './sheetWords';

interface Props {
  readonly sheet: JobSheet;
  readonly units: Units;
}

/** Every reading with its band and its verdict's shape where it lies on the engine. */
export function PaperPlan({ sheet, units }: Props) {
  const { engine } = sheet.setUp;
  if (engine === null) return null;
  const found = new Set(sheet.valves.flatMap(({ measured }) => measured.figures?.verdict ?? []));
  const key: readonly Verdict[] = verdictWords.filter((word) => found.has(word));
  const title = words.plan(words.unit[units]);
  return (
    <figure className={styles.plan}>
      <figcaption>{title}</figcaption>
      <EnginePlan
        engine={engine}
        valves={new Map(sheet.valves.map((one) => [valveKey(one.valve), plateOf(one, units)]))}
        crankAt={null}
        companion={null}
        label={`${title}. ${sheet.valves
          .filter(({ measured }) => measured.reading !== null)
          .map((one) => `${words.valve(one.valve)} ${readingText(units, one)} ${verdictText(one)}`)
          .join('. ')}`}
        words={{
          front: words.planFront,
          here: words.planHere,
          watch: words.planWatch,
          state: words.planState,
          letter: words.letter,
        }}
      />
      {key.length > 0 && (
        <p className={styles.planKey}>
          {key.map((verdict) => (
            <span key={verdict}>
              <VerdictMark verdict={verdict} /> {shown.verdicts[verdict]}
            </span>
          ))}
        </p>
      )}
    </figure>
  );
}

function plateOf({ measured, window }: SheetValve, units: Units): PlanValve {
  const { figures, reading, skipped } = measured;
  const preloadMm = figures?.preloadMm ?? null;
  const guardMm = figures?.sure?.guardMm;
  return {
    figure: preloadMm === null ? reading && countText(reading) : figureIn(units, preloadMm, window),
    ...(preloadMm === null || guardMm === undefined
      ? {}
      : { band: words.band(figureIn(units, guardMm)) }),
    verdict: figures?.verdict ?? null,
    mark: reading === null && skipped ? 'skipped' : null,
  };
}
