import { useState } from 'react';
import { useStore } from 'zustand';
import { type Caption, useBench, useServices } from '../services';

interface Seen {
  readonly paused: boolean;
  readonly newest: number;
  readonly floor: number;
}

/**
 * Captions since the bench was last woken or held. What was said before that is dropped: a line that
 * turned the crank must not stand on the screen once the work has been broken off, or in another job.
 */
export function useFreshCaptions(): readonly Caption[] {
  const captions = useStore(useServices().mouth, (mouth) => mouth.captions);
  const awakeSince = useBench((state) => state.awakeSince);
  const paused = useBench(({ resting, job }) => resting || job.held);
  const newest = captions.at(-1)?.token ?? Number.NEGATIVE_INFINITY;
  const [seen, setSeen] = useState<Seen>({ paused, newest, floor: Number.NEGATIVE_INFINITY });
  let floor = seen.floor;
  if (seen.paused !== paused || seen.newest !== newest) {
    if (paused && !seen.paused) floor = seen.newest;
    setSeen({ paused, newest, floor });
  }
  return captions.filter(({ token, at }) => token > floor && at >= (awakeSince ?? 0));
}
