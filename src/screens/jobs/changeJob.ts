import type { JobNotes } from '#counting';
import type { Services } from '../services';
import { submitFromScreen } from '../shell/submit';

/**
 * Discards a job or brings it back. The one open on the bench goes through the bench, which is its
 * only writer; any other through the shelf.
 */
export async function changeJob(
  { bench, shelf }: Pick<Services, 'bench' | 'shelf'>,
  jobId: string,
  change: 'discard' | 'restore',
): Promise<void> {
  const { jobId: openId, access } = bench.store.getState();
  if (openId !== jobId || access !== 'writer') {
    await shelf[change](jobId);
    return;
  }
  submitFromScreen(bench, { type: change });
  await allKept(bench.store);
  await shelf.list();
}

/** Changes a job's notes, through the bench where the job is open there. */
export async function noteJob(
  { bench, shelf }: Pick<Services, 'bench' | 'shelf'>,
  jobId: string,
  notes: JobNotes,
): Promise<void> {
  const { jobId: openId, access } = bench.store.getState();
  if (openId !== jobId || access !== 'writer') {
    await shelf.note(jobId, notes);
    return;
  }
  submitFromScreen(bench, { type: 'note', notes });
  await allKept(bench.store);
  await shelf.list();
}

/** Resolves once everything the bench decided is on disk, or the bench has turned to another job. */
function allKept(store: Services['bench']['store']): Promise<void> {
  const { jobId } = store.getState();
  const done = (state: ReturnType<typeof store.getState>) =>
    state.keptThrough >= state.job.seq || state.jobId !== jobId || state.alarm !== null;
  return new Promise((resolve) => {
    if (done(store.getState())) {
      resolve();
      return;
    }
    const stop = store.subscribe((state) => {
      if (!done(state)) return;
      stop();
      resolve();
    });
  });
}
