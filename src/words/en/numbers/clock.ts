import type { Turn48 } from '#valvetrain';
import { LARGEST_COUNT_48 } from './counts';
import { requireWhole } from './range';
import { cardinal } from './whole';

/** Where the mark on the socket stands, read as an hour hand. A quarter of an hour is 7.5 degrees, a 48th of a turn. */
export interface ClockTime {
  readonly hour: number;
  readonly minutes: 0 | 15 | 30 | 45;
}

/** Which way the socket goes: 'on' tightens, with the clock; 'off' loosens, against it. */
export type ClockDirection = 'on' | 'off';

/**
 * Where a mark set at twelve stands after a count: 'three', 'half past one', 'quarter to one'.
 * Exact for every 48th of a turn. Counting off, the mark runs the other way.
 * count48: whole 48ths of a turn, from 0, else RangeError.
 */
export function sayClock(count48: Turn48, direction: ClockDirection): string {
  const { hour, minutes } = clockOf(count48, direction);
  switch (minutes) {
    case 0:
      return cardinal(hour);
    case 15:
      return `quarter past ${cardinal(hour)}`;
    case 30:
      return `half past ${cardinal(hour)}`;
    case 45:
      return `quarter to ${cardinal((hour % 12) + 1)}`;
    default:
      return minutes satisfies never;
  }
}

/** The clock time of a mark set at twelve, after a count; see `sayClock`. */
export function clockOf(count48: Turn48, direction: ClockDirection): ClockTime {
  requireWhole(count48, 0, LARGEST_COUNT_48, 'count48');
  const within = count48 % 48;
  const clockwise = direction === 'on' ? within : (48 - within) % 48;
  const hour = Math.floor(clockwise / 4);
  return { hour: hour === 0 ? 12 : hour, minutes: MINUTES[clockwise % 4] ?? 0 };
}

/**
 * How far a clock time is from twelve, going the given way: 48ths of a turn, 0 to 47.
 * The hour must be 1 to 12, else RangeError.
 */
export function clockPosition48({ hour, minutes }: ClockTime, direction: ClockDirection): number {
  requireWhole(hour, 1, 12, 'hour');
  const clockwise = (hour % 12) * 4 + minutes / 15;
  return direction === 'on' ? clockwise : (48 - clockwise) % 48;
}

const MINUTES = [0, 15, 30, 45] as const;
