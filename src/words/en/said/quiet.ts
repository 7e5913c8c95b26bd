import type { Cue, Fact } from '#counting';
import type { SayingContext } from '../../context';

/** The caption of a tick without words. */
export function quiet(_fact: Fact, _cue: Cue | null, _context: SayingContext): string {
  return 'Heard.';
}
