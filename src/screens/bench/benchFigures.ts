import {
  type JobState,
  nextStop,
  type Stage,
  samePosition,
  setUpOf,
  stageOf,
  walkOf,
} from '#counting';
import { QUARTER, type Turn48, turn48, type ValveId } from '#valvetrain';
import { type CountUnit, countParts, countText } from '../pieces/countParts';
import { benchWords } from './benchWords';
import { stopNamed } from './stopNamed';

/** What counts of this job are told in. */
export function unitOfJob(job: JobState): CountUnit {
  return setUpOf(job)?.calling.way === 'turns' ? 'turns' : 'quarters';
}

/** A count as a line of text in the job's unit. */
export function countLine(job: JobState, count48: number): string {
  return countText(countParts(turn48(Math.round(count48)), unitOfJob(job)));
}

/** The unit's word beside a count. */
export function countUnitWord(job: JobState, count48: Turn48): string {
  const unit = unitOfJob(job);
  const size = unit === 'turns' ? 4 * QUARTER : QUARTER;
  return benchWords.quarters[unit](count48 > 0 && count48 <= size);
}

/** The name at the head of the bench: the open valve, or where the crank goes. */
export function benchTitle(job: JobState, stage: Stage): string {
  const { open } = job;
  if (open !== null) return open.valve === null ? benchWords.unnamed : benchWords.valve(open.valve);
  const to = nextStop(job)?.position ?? null;
  switch (stage) {
    case 'pushrods loose':
    case 'hands clear':
    case 'turning':
      return to === null ? '' : benchWords.toPlace(stopNamed(job, to));
    case 'choose valve': {
      const { at } = job.crank;
      return at === null ? '' : benchWords.atPlace(stopNamed(job, at));
    }
    default:
      return '';
  }
}

/** Which position of the walk the bench is at or heads for, from 1; null where there is no walk. */
export function placeInWalk(job: JobState): { readonly n: number; readonly of: number } | null {
  const setUp = setUpOf(job);
  if (setUp === null) return null;
  const walk = walkOf(setUp);
  const here = job.open !== null || stageOf(job) === 'choose valve';
  const position = here ? job.crank.at : (nextStop(job)?.position ?? job.crank.at);
  const n = walk.findIndex((other) => samePosition(other, position)) + 1;
  return n === 0 ? null : { n, of: walk.length };
}

/** What the gauge shows of the valve that is open, or of the one that is next: its window, its stop. */
export function ofValveAhead<T>(job: JobState, of: (valve: ValveId | null) => T): T {
  const coming = job.open?.valve ?? job.crank.headingValve ?? nextStop(job)?.position.valves[0];
  return of(coming ?? null);
}
