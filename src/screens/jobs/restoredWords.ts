import type { RestoreReport } from '#shelf';

/** What a restored backup came to, in a few sentences. */
export function restoredWords({ jobs, settings }: RestoreReport): string {
  const of = (count: number, what: string): string =>
    count === 0 ? '' : `${count === 1 ? '1 job' : `${count} jobs`} ${what}.`;
  const sentences = [
    of(jobs.new, 'brought in'),
    of(jobs.longer, 'taken further'),
    of(jobs.here, 'here already, left as on this device'),
    of(jobs.apart, 'went on otherwise on this device, left as here'),
    of(jobs.open, 'being counted now, left as here: close it and restore again'),
    settings ? 'The settings were taken too.' : '',
  ].filter((sentence) => sentence !== '');
  return sentences.length === 0 ? 'The backup holds no jobs.' : sentences.join(' ');
}
