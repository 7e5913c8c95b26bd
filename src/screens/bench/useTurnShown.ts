import { useState } from 'react';
import { setUpOf, stageOf } from '#counting';
import { useBench } from '../services';

/**
 * Whether the screen may tell the crank to turn. Never while the bench rests. With a helper at the
 * crank only after a fresh answer to 'hands clear?': what was told before a rest or a take-back is
 * not shown again.
 */
export function useTurnShown(): boolean {
  const turning = useBench(({ job, resting }) => !resting && stageOf(job) === 'turning');
  const told = useBench((state) => state.told.some(({ fact }) => fact.kind === 'turn crank'));
  const alone = useBench(({ job }) => setUpOf(job)?.hands === 'alone');
  const [fresh, setFresh] = useState(false);
  const now = turning && (fresh || told);
  if (now !== fresh) setFresh(now);
  return turning && (alone || now);
}
