import {
  cylinderSummaries,
  figuresForReading,
  figuresNow,
  type JobState,
  nextStop,
  setUpOf,
  standingOf,
  type ValveLine,
  valvesLeft,
} from '#counting';
import { sameValve, type ValveId, valveKey } from '#valvetrain';
import type { Units } from '#words';
import { EnginePlan } from '../pieces/EnginePlan';
import { figureIn } from '../pieces/figureIn';
import type { PlanValve } from '../pieces/ValvePlate';
import { VerdictMark } from '../pieces/VerdictMark';
import { useBench, useSettings } from '../services';
import { countLine } from './benchFigures';
import { benchWords } from './benchWords';
import styles from './plan.module.css';

/** The engine from above with every valve's reading; without an engine, the readings in a row. */
export function BenchPlan({ turnShown }: { readonly turnShown: boolean }) {
  const job = useBench((state) => state.job);
  const { units } = useSettings();
  const engine = setUpOf(job)?.engine ?? null;
  if (engine === null) return <Unnamed job={job} units={units} />;
  const next = nextValve(job);
  const lines = cylinderSummaries(job).flatMap((cylinder) => cylinder.lines);
  const valves = new Map(
    lines.map((line) => [valveKey(line.valve), planValve(job, line, next, units)]),
  );
  return (
    <section className={styles.planPanel} aria-label={benchWords.plan}>
      <EnginePlan
        engine={engine}
        valves={valves}
        crankAt={job.crank.at?.cylinder ?? null}
        companion={turnShown ? (nextStop(job)?.companion ?? null) : null}
        label={`${benchWords.plan}. ${lines.map((line) => spoken(line, valves)).join(' ')}`}
        words={{ ...benchWords.planWords, letter: benchWords.letter }}
      />
    </section>
  );
}

function planValve(job: JobState, line: ValveLine, next: ValveId | null, units: Units): PlanValve {
  const { valve, figures, reading } = line;
  const open = job.open?.valve != null && sameValve(job.open.valve, valve);
  if (open) {
    const now = figuresNow(job);
    const preload = now?.preloadMm ?? null;
    const counted = job.open?.phase === 'to start' ? null : countLine(job, standingOf(job).count48);
    return {
      figure: preload === null ? counted : figureIn(units, preload, now?.window ?? null),
      verdict: now?.verdict ?? null,
      mark: 'open',
    };
  }
  const preload = figures?.preloadMm ?? null;
  const counted =
    reading?.kind === 'counted'
      ? countLine(job, reading.count48 + (reading.landing?.past48 ?? 0))
      : null;
  return {
    figure: preload === null ? counted : figureIn(units, preload, figures?.window ?? null),
    verdict: figures?.verdict ?? null,
    mark: markOf(line, next),
  };
}

function markOf(line: ValveLine, next: ValveId | null): PlanValve['mark'] {
  if (next !== null && sameValve(next, line.valve)) return 'next';
  return line.skipped && line.reading === null ? 'skipped' : null;
}

/** The valve taken up after the open one. */
function nextValve(job: JobState): ValveId | null {
  const open = job.open?.valve ?? null;
  const left = valvesLeft(job).filter((valve) => open === null || !sameValve(valve, open));
  const fresh = left.filter((valve) => !job.skipped.some((id) => sameValve(id, valve)));
  const wanted = fresh.length > 0 ? fresh : left;
  const has = (valve: ValveId) => wanted.some((id) => sameValve(id, valve));
  const here = job.crank.at?.valves.find(has);
  if (job.open === null && job.crank.headingValve !== null) return job.crank.headingValve;
  return here ?? nextStop({ ...job, open: null })?.position.valves.find(has) ?? wanted[0] ?? null;
}

function spoken(line: ValveLine, valves: ReadonlyMap<string, PlanValve>): string {
  const drawn = valves.get(valveKey(line.valve));
  const state = drawn?.mark == null ? '' : benchWords.planWords.state[drawn.mark];
  const parts = [drawn?.figure ?? '', drawn?.verdict ?? '', state].filter((part) => part !== '');
  return parts.length === 0 ? '' : `${benchWords.valve(line.valve)}: ${parts.join(', ')}.`;
}

function Unnamed({ job, units }: { readonly job: JobState; readonly units: Units }) {
  return (
    <section className={styles.planPanel} aria-label={benchWords.plan}>
      <p className={styles.noEngine}>{benchWords.noEngine}</p>
      <ol className={styles.unnamed}>
        {job.readings.slice(-12).map((reading) => {
          const { preloadMm, verdict, window } = figuresForReading(job, reading);
          return (
            <li key={reading.id}>
              {preloadMm === null
                ? reading.kind === 'counted' && countLine(job, reading.count48)
                : figureIn(units, preloadMm, window)}
              {verdict === null ? null : <VerdictMark verdict={verdict} />}
            </li>
          );
        })}
      </ol>
    </section>
  );
}
