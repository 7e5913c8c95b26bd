/** What the name of a practice run's job begins with: no other job's does. */
export const PRACTICE_JOB = 'practice run ';

/** Whether a job is a practice run: it is held in memory, neither kept nor listed. */
export function isPractice(jobId: string | null): boolean {
  return jobId?.startsWith(PRACTICE_JOB) ?? false;
}
