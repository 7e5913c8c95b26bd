import type { Announcement, Fact } from '#counting';

type BenchFact = Extract<Fact, { kind: 'not kept' | 'kept again' | 'read only' | 'no voice' }>;

/** An announcement of the bench's own, which no log holds: said at once, waiting for nothing. */
export function benchFact(fact: BenchFact): Announcement {
  const cue = fact.kind === 'not kept' ? 'refused' : 'soft';
  return { fact, cue, timing: 'at once', keptThrough: 0, perishable: false };
}
