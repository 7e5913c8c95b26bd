import {
  groupOf,
  type TurnsToStop,
  turnsToStop,
  type ValveId,
  ZERO_FEEL_QUARTERS,
} from '#valvetrain';
import { type JobState, setUpOf } from '../state';
import { travelIn } from '../sure/travelIn';

/** Where to stop turning the adjustable rockers of one group of valves. */
export interface GroupStop {
  readonly group: string;
  readonly stop: TurnsToStop;
}

/** How finely a stop on a quarter of a quarter is read, 48ths. */
const RESOLUTION_48 = 6;

/** Where to stop with one valve; null where nothing is adjusted, or its group is not known. */
export function stopFor(state: JobState, valve: ValveId | null): GroupStop | null {
  const setUp = setUpOf(state);
  const stops = groupStops(state);
  if (valve === null || setUp === null || setUp.engine === null)
    return stops.length === 1 ? (stops[0] ?? null) : null;
  const group = groupOf(valve, setUp.groups, setUp.engine)?.name;
  return stops.find((stop) => stop.group === group) ?? null;
}

/** A stop for each group of valves; none where the rockers bolt down or nothing is known of them. */
export function groupStops(state: JobState): readonly GroupStop[] {
  const setUp = setUpOf(state);
  const travel = setUp === null ? null : travelIn(setUp);
  if (setUp === null || travel === null || setUp.rockers !== 'adjustable') return [];
  const count = {
    resolution48: RESOLUTION_48,
    zeroFeelQuarters: ZERO_FEEL_QUARTERS[setUp.zeroFeel ?? 'up-and-down play'],
  };
  return setUp.groups.map(({ name, window }) => ({
    group: name,
    stop: turnsToStop(window, travel, count),
  }));
}
