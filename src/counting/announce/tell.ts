import type { Announcement, Cue, Fact } from './announcement';

/**
 * One announcement. `keptThrough` is the seq whose keeping its words wait for; an instruction to
 * turn the crank is always perishable.
 */
export function tell(
  fact: Fact,
  keptThrough: number,
  cue: Cue | null = null,
  timing: Announcement['timing'] = 'at once',
): Announcement {
  return { fact, cue, timing, keptThrough, perishable: fact.kind === 'turn crank' };
}
