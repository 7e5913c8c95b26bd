import { hearNumber } from '../../numbers';

/** A cylinder by its number; null for anything else. */
export function cylinderNamed(tokens: readonly string[]): number | null {
  const heard = hearNumber(tokens.join(' '));
  if (heard === undefined || heard.fraction.num !== 0 || heard.unit !== undefined) return null;
  return heard.whole >= 1 ? heard.whole : null;
}
