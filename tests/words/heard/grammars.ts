import type { Calling, Stage } from '#counting';
import { type Grammar, grammarFor } from '#words';
import { walked } from '../../hearing/bench';

/** A grammar at a stage, by a job that stands there. */
export function grammarAt(stage: Stage, changes: Partial<Grammar> = {}): Grammar {
  return { ...grammarFor(walked(stage), { carrier: null }), ...changes };
}

/** The grammar of a job being counted. */
export function counting(changes: Partial<Grammar> = {}): Grammar {
  return grammarAt('counting', changes);
}

export const callings: readonly Calling[] = [
  { way: 'quarters' },
  { way: 'turns' },
  { way: 'strokes', degrees: 60 },
];
