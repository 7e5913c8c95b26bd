import { sameValve, targetPreloadMm, type ValveId } from '#valvetrain';
import { choosable } from '../order/choosable';
import { type JobState, setUpOf } from '../state';
import { type JobLengths, jobLengths } from './jobLengths';
import { recipeOf } from './recipe';

/** One valve in two jobs. Lengths needed, mm; null where a job has not measured it. */
export interface ComparedValve {
  readonly valve: ValveId;
  readonly firstMm: number | null;
  readonly secondMm: number | null;
  /** The second less the first. */
  readonly differenceMm: number | null;
}

/** Two jobs beside each other. */
export interface ComparedJobs {
  readonly first: JobLengths | null;
  readonly second: JobLengths | null;
  /** Their engines and parts are the same, as far as the set-ups tell. */
  readonly sameRecipe: boolean;
  /** By cylinder number, intake first; valves either job counts. */
  readonly valves: readonly ComparedValve[];
}

/** Each valve's length needed, for the preload its own job aims at. */
export function compareJobs(first: JobState, second: JobState): ComparedJobs {
  const [a, b] = [setUpOf(first), setUpOf(second)];
  const recipe = a === null ? null : recipeOf(a);
  const [ofFirst, ofSecond] = [needed(first), needed(second)];
  const valves = [...(a?.scope ?? []), ...(b?.scope ?? [])];
  const once = valves.filter((id, at) => valves.findIndex((other) => sameValve(id, other)) === at);
  return {
    first: jobLengths(first),
    second: jobLengths(second),
    sameRecipe: recipe !== null && b !== null && recipe === recipeOf(b),
    valves: once.toSorted(byNumber).map((valve) => {
      const [firstMm, secondMm] = [ofFirst(valve), ofSecond(valve)];
      const differenceMm = firstMm === null || secondMm === null ? null : secondMm - firstMm;
      return { valve, firstMm, secondMm, differenceMm };
    }),
  };
}

function byNumber(a: ValveId, b: ValveId): number {
  return a.cylinder - b.cylinder || b.valve.localeCompare(a.valve);
}

function needed(state: JobState): (valve: ValveId) => number | null {
  const { valves } = choosable(state);
  return (valve) => {
    const found = valves.find(({ id }) => sameValve(id, valve));
    if (found === undefined) return null;
    return found.testLengthMm - found.preload.preloadMm + targetPreloadMm(found.window);
  };
}
