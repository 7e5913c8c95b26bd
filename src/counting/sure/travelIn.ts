import { type Travel, travelOf } from '#valvetrain';
import type { SetUp } from '../setUp';

/**
 * The travel per quarter turn of a set-up with its uncertainty: its own where it was fitted to readings,
 * else by what it rests on. Null while it is not known.
 */
export function travelIn({ adjuster, measuredTravel }: SetUp): Travel | null {
  if (adjuster === null) return null;
  return measuredTravel !== undefined &&
    measuredTravel.perQuarterMm === adjuster.measuredTravelPerQuarterMm
    ? measuredTravel
    : travelOf(adjuster);
}
