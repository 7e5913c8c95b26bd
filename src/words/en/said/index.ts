import type { Fact } from '#counting';
import type { SayingContext } from '../../context';

/** The spoken line of a fact; empty where a tick says it all. */
export function said(_fact: Fact, _context: SayingContext): string {
  return '';
}
