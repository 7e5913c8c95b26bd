import { type JobLengths, type JobState, jobLengths, replay } from '#counting';
import type { JobKeeper } from './ports';

/** Past jobs that are looked into: the last ones tell enough. */
const MOST_PAST = 40;

/** How the demonstration job's id begins: its readings are invented, and no past of any shop. */
const DEMO = 'demo-';

/** A job as its kept log folds. */
export async function stateIn(keeper: Pick<JobKeeper, 'read'>, jobId: string): Promise<JobState> {
  return replay((await keeper.read(jobId)).events);
}

/** The lengths of other jobs of a recipe, the last ones first; not those discarded or not measured. */
export async function pastLengths(
  keeper: Pick<JobKeeper, 'jobs' | 'read'>,
  recipe: string,
  but: string,
): Promise<readonly JobLengths[]> {
  // A device that can't be read has no past.
  const cards = await keeper.jobs().catch(() => []);
  const alike = cards.filter(
    ({ recipe: own, id, status }) =>
      own === recipe && id !== but && status === 'open' && !id.startsWith(DEMO),
  );
  const jobs = await Promise.all(alike.slice(0, MOST_PAST).map(({ id }) => stateIn(keeper, id)));
  return jobs.flatMap((job) => jobLengths(job) ?? []);
}
