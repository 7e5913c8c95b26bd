import { useEffect } from 'react';
import { useBench, useServices } from '../services';

/** Opens a job on the bench unless it is open there already; how far that has come. */
export function useOpenJob(
  jobId: string | null,
): 'none' | 'opening' | 'unreadable' | 'unknown' | 'open' {
  const { bench } = useServices();
  const openId = useBench((state) => state.jobId);
  const access = useBench((state) => state.access);
  useEffect(() => {
    if (jobId !== null && bench.store.getState().jobId !== jobId) void bench.open(jobId);
  }, [bench, jobId]);
  if (jobId === null) return 'none';
  if (openId !== jobId || access === 'opening' || access === 'closed') return 'opening';
  return access === 'unreadable' || access === 'unknown' ? access : 'open';
}
