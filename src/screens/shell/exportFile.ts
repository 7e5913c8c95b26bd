import type { Services } from '../services';

/** A file name from a job's name: letters, digits and dashes, never empty. */
export function exportName(jobName: string, ending = 'json'): string {
  const plain = jobName
    .normalize('NFKD')
    .replace(/[^A-Za-z0-9]+/g, '-')
    .replace(/^-|-$/g, '')
    .slice(0, 60);
  return `${plain === '' ? 'job' : plain.toLowerCase()}.${ending}`;
}

/** Hands the builder a job's file. False when there is nothing to hand over. */
export async function exportJob(
  { shelf, save }: Pick<Services, 'shelf' | 'save'>,
  jobId: string,
  jobName: string,
): Promise<boolean> {
  const text = await shelf.exportJob(jobId);
  if (text === null) return false;
  save(exportName(jobName), text);
  return true;
}
