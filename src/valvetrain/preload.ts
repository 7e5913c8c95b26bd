import { type Adjuster, travelPerQuarterMm } from './lever';
import { quarters, type Turn48 } from './turns';

/**
 * Preload in mm for a count taken from zero lash to seated: quarter turns × travel per quarter.
 * Never below 0: lash is not counted, it is recorded by seating loose.
 */
export function preloadMm(count: Turn48, a: Adjuster): number {
  return quarters(count) * travelPerQuarterMm(a);
}
