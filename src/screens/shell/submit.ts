import type { Bench } from '#bench';
import type { Announcement, CommandBody } from '#counting';

/**
 * Gives the bench a command from a screen beside it. A resting bench takes the first press as its
 * waking and does no more, so it is woken first: what is asked for on a form is no stray press.
 * Null when it was taken, else what the bench told instead.
 */
export function submitFromScreen(bench: Bench, body: CommandBody): readonly Announcement[] | null {
  if (bench.store.getState().resting) bench.submit({ type: 'ask', about: 'where' }, 'touch');
  const before = bench.store.getState().job.seq;
  bench.submit(body, 'touch');
  const { job, told } = bench.store.getState();
  return job.seq > before ? null : told;
}
