/**
 * How many runs of a long test are made: all, or a share of them where RUNS_PERCENT says so, as it
 * does where one test is run again for each of many planted faults.
 */
export function shareOfRuns(runs: number): number {
  return Math.max(1, Math.floor((runs * Number(process.env.RUNS_PERCENT ?? 100)) / 100));
}
