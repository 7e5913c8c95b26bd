import { figuresNow, type JobState, setUpOf, stopFor, windowFor } from '#counting';
import { figureInches, figureMm, shown, type Units } from '#words';
import { figureIn } from '../pieces/figureIn';
import { PlungerGauge } from '../pieces/PlungerGauge';
import { VerdictMark } from '../pieces/VerdictMark';
import { useBench, useSettings } from '../services';
import { countLine, countUnitWord, ofValveAhead } from './benchFigures';
import { benchWords } from './benchWords';
import styles from './preload.module.css';

/** Keeps the figure's line open while there is none, so that nothing moves when it comes. */
const NO_FIGURE = '\u00a0';

/** The preload as a figure, a word and its shape, and the lifter with its plunger where it stands. */
export function BenchGauge() {
  const job = useBench((state) => state.job);
  const { units } = useSettings();
  const setUp = setUpOf(job);
  const figures = figuresNow(job);
  const window =
    figures?.window ??
    (setUp === null ? null : ofValveAhead(job, (valve) => windowFor(setUp, valve)));
  const preload = figures?.preloadMm ?? null;
  const verdict = figures?.verdict ?? null;
  const unit = benchWords.units[units];
  const figure = preload === null ? null : figureIn(units, preload, window);
  const nothing = job.open === null ? benchWords.noValveOpen : benchWords.nothingCounted;
  if (setUp?.checking !== undefined) return <CheckingLength job={job} units={units} />;
  const against = figures?.sure?.against ?? null;
  const word = verdict === null ? '' : shown.verdicts[verdict];
  return (
    <section className={styles.gaugePanel} aria-label={benchWords.preload}>
      <div className={styles.figureRow}>
        <p className={styles.figure}>
          {figure === null ? (
            NO_FIGURE
          ) : (
            <>
              <span className={styles.figureNumber} data-figure="">
                {figure}
              </span>
              <span className={styles.figureUnit}>{unit}</span>
            </>
          )}
        </p>
        {verdict === null ? (
          <p className={styles.noVerdict}>{figure === null ? nothing : ''}</p>
        ) : (
          <p className={styles.verdict} data-verdict={verdict}>
            <VerdictMark verdict={verdict} />
            <span>
              {word}
              {against === null ? null : (
                <small className={styles.against}>{benchWords.cantTell(against.word)}</small>
              )}
            </span>
          </p>
        )}
      </div>
      {setUp?.rockers === 'adjustable' && <Stop job={job} units={units} />}
      <Missing
        noTravel={setUp !== null && setUp.adjuster === null}
        noLifter={window === null}
        past={figures?.pastTravel ?? false}
      />
      {window === null ? null : (
        <div className={styles.gaugeDrawing}>
          <PlungerGauge
            preloadMm={preload}
            window={window}
            verdict={verdict}
            {...(figures?.sure == null ? {} : { bandMm: 2 * figures.sure.guardMm })}
            label={figure === null ? nothing : benchWords.gaugeLabel(figure, unit, word)}
            limitName={benchWords.limits}
            figure={(mm) => figureIn(units, mm)}
          />
        </div>
      )}
    </section>
  );
}

interface PartProps {
  readonly job: JobState;
  readonly units: Units;
}

/** A checking pushrod's length as it is opened: no plunger is pressed. */
function CheckingLength({ job, units }: PartProps) {
  const { open } = job;
  const closedMm = setUpOf(job)?.checking?.closedMm ?? null;
  const mm = figuresNow(job)?.lengthMm ?? closedMm;
  if (mm === null) return null;
  const phase = open === null ? 'none' : open.phase;
  return (
    <section className={styles.gaugePanel} aria-label={benchWords.checking.title}>
      <div className={styles.figureRow}>
        <p className={styles.figure}>
          <span className={styles.figureNumber} data-figure="">
            {units === 'inch' ? figureInches(mm) : figureMm(mm)}
          </span>
          <span className={styles.figureUnit}>{benchWords.checking.units[units]}</span>
        </p>
        <p className={styles.noVerdict}>{benchWords.checking.phases[phase]}</p>
      </div>
      <p className={styles.missing}>{benchWords.checking.how}</p>
    </section>
  );
}

/** Where to stop turning an adjustable rocker. */
function Stop({ job, units }: PartProps) {
  const coming = ofValveAhead(job, (valve) => stopFor(job, valve));
  if (coming === null) return null;
  const { count48, preload } = coming.stop;
  const figure = `${figureIn(units, preload.preloadMm)} ${benchWords.units[units]}`;
  const count = `${countLine(job, count48)} ${countUnitWord(job, count48)}`;
  return <p className={styles.stop}>{benchWords.stopAt(count, figure)}</p>;
}

/** What can't be shown, and why; the plunger at its stop. */
function Missing(props: {
  readonly noTravel: boolean;
  readonly noLifter: boolean;
  readonly past: boolean;
}) {
  if (props.past) return <p className={styles.pastTravel}>{benchWords.pastTravel}</p>;
  if (props.noTravel) return <p className={styles.missing}>{benchWords.noTravel}</p>;
  if (props.noLifter) return <p className={styles.missing}>{benchWords.noLifter}</p>;
  return null;
}
