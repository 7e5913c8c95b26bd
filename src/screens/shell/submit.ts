import type { Bench } from '#bench';
import type { Announcement, CommandBody } from '#counting';

/**
 * Gives the bench a command from a form beside it.
 * Null when it was taken, else what the bench told instead.
 */
export function submitFromScreen(bench: Bench, body: CommandBody): readonly Announcement[] | null {
  const before = bench.store.getState().job.seq;
  bench.fillIn(body);
  const { job, told } = bench.store.getState();
  return job.seq > before ? null : told;
}
