import {
  type CountedReading,
  cylinderSummaries,
  type Figures,
  figuresForReading,
  type JobState,
  type Reading,
  readingResolution48,
  readingSaid48,
  readingsOf,
  setUpOf,
  type ValveLine,
  valveLine,
} from '#counting';
import { sameValve } from '#valvetrain';
import { type Units, writeCount } from '#words';
import { countParts, countText as partsText } from '../pieces/countParts';
import { figureIn } from '../pieces/figureIn';
import { lengthText } from './orderText';
import { resultsWords as words } from './resultsWords';

/** The readings of one cylinder as the table lists them. */
export interface CylinderRows {
  readonly cylinder: number;
  readonly lines: readonly ValveLine[];
}

/** Cylinders in firing order; without an engine, those that readings have been named for. */
export function cylinderRows(job: JobState): readonly CylinderRows[] {
  if (setUpOf(job)?.engine != null) return cylinderSummaries(job);
  const valves = job.readings.flatMap(({ valve, round }) =>
    valve !== null && round === job.round.number ? [valve] : [],
  );
  const once = valves.filter((valve, at) => valves.findIndex((id) => sameValve(id, valve)) === at);
  return [...new Set(once.map(({ cylinder }) => cylinder))]
    .sort((a, b) => a - b)
    .map((cylinder) => ({
      cylinder,
      lines: once.filter((id) => id.cylinder === cylinder).map((valve) => valveLine(job, valve)),
    }));
}

/** Readings of this round that have no valve's name yet, oldest first. */
export function unnamedReadings(job: JobState): readonly Reading[] {
  return job.readings.filter(({ valve, round }) => valve === null && round === job.round.number);
}

/**
 * A reading's count in quarter turns: '4½', or in turns of a checking pushrod; in words where nothing
 * was counted.
 */
export function countText(reading: Reading): string {
  switch (reading.kind) {
    case 'counted':
      return reading.checking === undefined
        ? writeCount(readingSaid48(reading))
        : partsText(countParts(readingSaid48(reading), 'turns'));
    case 'seated loose':
      return words.loose;
    case 'dial':
      return words.dial;
    default: {
      const never: never = reading;
      return never;
    }
  }
}

/** What a count resolves, as the trade says it: 'to half a quarter'. */
export function resolutionText(reading: CountedReading): string {
  const width = readingResolution48(reading);
  return words.resolution[width] ?? words.resolutionDeg(width * 7.5);
}

/** A preload as a bare figure; a dash while it can't be known. */
export function preloadFigure(units: Units, figures: Figures | null): string {
  if (figures?.lengthMm !== undefined) return lengthText(units, figures.lengthMm);
  if (figures?.preloadMm == null) return words.none;
  return figureIn(units, figures.preloadMm, figures.window);
}

/** A preload with its unit. */
export function preloadText(units: Units, figures: Figures | null): string {
  const figure = preloadFigure(units, figures);
  const bare = figure === words.none || figures?.lengthMm !== undefined;
  return bare ? figure : `${figure} ${words.unit[units]}`;
}

/** A reading among others of its valve: its count and what that comes to. */
export function readingText(job: JobState, reading: Reading, units: Units): string {
  const preload = preloadText(units, figuresForReading(job, reading));
  return reading.kind === 'seated loose' || preload === words.none
    ? countText(reading)
    : words.reading(countText(reading), preload);
}

/** Counts of the readings before the one that stands, oldest first. */
export function earlierCounts(job: JobState, line: ValveLine): readonly string[] {
  return readingsOf(job, line.valve).slice(0, -1).map(countText);
}
