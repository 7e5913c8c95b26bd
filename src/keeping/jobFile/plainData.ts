import { DEEPEST } from './limits';
import type { JobFileProblem } from './problems';

/** Names that reach an object's prototype instead of its data. */
const FORBIDDEN: ReadonlySet<string> = new Set(['__proto__', 'constructor', 'prototype']);

/**
 * What makes parsed JSON unfit to be looked into further: nesting beyond `DEEPEST`, a name that
 * reaches a prototype, a number too large to be one (1e999 parses to infinity). Null when nothing.
 */
export function plainDataProblem(value: unknown, depth = 0): JobFileProblem | null {
  if (typeof value === 'number') return Number.isFinite(value) ? null : 'not a number';
  if (typeof value !== 'object' || value === null) return null;
  if (depth >= DEEPEST) return 'too deep';
  for (const [name, member] of Object.entries(value)) {
    if (FORBIDDEN.has(name)) return 'forbidden name';
    const problem = plainDataProblem(member, depth + 1);
    if (problem !== null) return problem;
  }
  return null;
}
