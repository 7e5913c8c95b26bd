import { cylinderSummaries, type JobState, setUpOf, type ValveLine } from '#counting';
import type { ValveId } from '#valvetrain';
import { type Units, writeInches, writeMm, writeThou } from '#words';
import { figureIn } from '../pieces/figureIn';
import { resultsWords as words } from './resultsWords';

/** A pushrod's length with its unit. */
export function lengthText(units: Units, mm: number): string {
  return units === 'inch' ? writeInches(mm) : writeMm(mm);
}

/** A short length with its unit. */
export function amountText(units: Units, mm: number): string {
  return `${figureIn(units, mm)} ${words.unit[units]}`;
}

/** The travel of a quarter turn with its unit, finer than a preload. */
export function travelText(units: Units, mm: number): string {
  return units === 'inch' ? writeThou(mm, 1) : writeMm(mm, 1);
}

/** Valves by name, in a row. */
export function valvesText(valves: readonly ValveId[]): string {
  return valves.map(words.valveName).join(', ');
}

/** The measured valves a choice rests on. */
export function measuredLines(job: JobState): readonly ValveLine[] {
  return cylinderSummaries(job, job.measured)
    .flatMap(({ lines }) => lines)
    .filter(({ standing }) => standing?.preload != null && standing.length !== null);
}

/** The lengths the valves were measured on. */
export function testLengthsText(job: JobState, units: Units): string {
  const lengths = measuredLines(job).flatMap(({ reading, standing }) =>
    reading?.kind === 'counted' && reading.checking ? [] : (standing?.length ?? []),
  );
  const texts = [...new Set(lengths.map(({ mm }) => lengthText(units, mm)))];
  return texts.length === 0 ? words.byChecking : words.testLengths(texts);
}

/** What an answer rests on: how many valves, of how many cylinders. */
export function restsOn(job: JobState): string {
  const measured = measuredLines(job);
  const wanted = cylinderSummaries(job, job.measured).flatMap(({ lines }) => lines).length;
  const engine = 2 * (setUpOf(job)?.engine?.cylinders ?? 0);
  const cylinders = new Set(measured.map(({ valve }) => valve.cylinder)).size;
  return words.restsOn({ valves: measured.length, wanted, engine, cylinders });
}
