import { cylinderSummaries, type JobState, oneLength, setUpOf, type ValveLine } from '#counting';
import { QUARTER_OF_QUARTER, targetPreloadMm, travelPerQuarterMm, turn48 } from '#valvetrain';
import { type Units, writeCount, writeInches, writeMm } from '#words';
import { figureIn } from '../pieces/figureIn';
import { resultsWords as words } from './resultsWords';

/** One length for all, as the results show it. */
export interface LengthAnswer {
  /** The length with its unit. */
  readonly length: string;
  readonly convention: string;
  readonly fits: string;
  /** The lengths it was measured on. */
  readonly testLengths: string;
  readonly restsOn: string;
  /** Test lengths by both conventions went into it. */
  readonly mixed: boolean;
}

export function lengthText(units: Units, mm: number): string {
  return units === 'inch' ? writeInches(mm) : writeMm(mm);
}

/** The one length by the simple rule; null while there is nothing to work it out from. */
export function lengthAnswer(job: JobState, units: Units): LengthAnswer | null {
  const answer = oneLength(job);
  if (answer === null) return null;
  const measured = measuredLines(job);
  const rods = measured.flatMap(({ reading }) => reading?.pushrod ?? []);
  const conventions = [...new Set(rods.map(({ convention }) => convention))];
  const lengths = [...new Set(rods.map(({ mm }) => lengthText(units, mm)))];
  return {
    length: lengthText(units, answer.lengthMm),
    convention: conventions.map((one) => words.conventions[one]).join(', '),
    fits: words.fits(answer.fits, answer.of),
    testLengths: words.testLengths(lengths),
    restsOn: restsOn(job, measured),
    mixed: conventions.length > 1,
  };
}

/** What an answer rests on: how many valves, of how many cylinders. */
function restsOn(job: JobState, measured: readonly ValveLine[]): string {
  const wanted = cylinderSummaries(job).flatMap(({ lines }) => lines).length;
  const engine = 2 * (setUpOf(job)?.engine?.cylinders ?? 0);
  const cylinders = new Set(measured.map(({ valve }) => valve.cylinder)).size;
  return words.restsOn({ valves: measured.length, wanted, engine, cylinders });
}

/** The lines a length can be worked out from. */
function measuredLines(job: JobState): readonly ValveLine[] {
  return cylinderSummaries(job)
    .flatMap(({ lines }) => lines)
    .filter(
      ({ reading, figures }) =>
        reading?.pushrod != null && figures?.window != null && figures.preloadMm !== null,
    );
}

/** Where to stop with adjustable rockers, a line for each group of valves. */
export function stopLines(job: JobState, units: Units): readonly string[] {
  const setUp = setUpOf(job);
  if (setUp === null || setUp.adjuster === null) return [];
  const perQuarter = travelPerQuarterMm(setUp.adjuster);
  return setUp.groups.map(({ name, window }) => {
    const target = targetPreloadMm(window);
    const steps = Math.round((target / perQuarter) * (12 / QUARTER_OF_QUARTER));
    const count = writeCount(turn48(steps * QUARTER_OF_QUARTER));
    return words.stopAt(name, count, `${figureIn(units, target)} ${words.unit[units]}`);
  });
}
