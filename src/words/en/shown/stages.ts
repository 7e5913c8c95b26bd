import type { CommandType, Direction, Stage } from '#counting';

/** Where the bench stands, as a heading. */
export const stages: Readonly<Record<Stage, string>> = {
  'not opened': 'No job open',
  discarded: 'Discarded',
  held: 'Holding',
  cautions: 'Cautions',
  'pushrods loose': 'Waiting for bleed-down',
  'hands clear': 'Hands clear?',
  turning: 'Crank on its way',
  'choose valve': 'Choose a valve',
  'to start': 'Run down to zero lash',
  counting: 'Counting',
  landing: 'How far past the last mark?',
  read: 'Read',
  'all read': 'All read',
};

/** Counting off, two stages are named otherwise. */
export function stageName(stage: Stage, direction: Direction): string {
  if (direction === 'on') return stages[stage];
  if (stage === 'to start') return 'Loosen off its stand';
  return stage === 'counting' ? 'Counting off' : stages[stage];
}

/** What letting go at the first tone will do now, large on the screen. Null: nothing is next. */
export function holdWillDo(next: CommandType | null, direction: Direction): string {
  switch (next) {
    case 'carryOn':
      return 'Carry on';
    case 'cautionsHeard':
      return 'Cautions heard';
    case 'pushrodsLoose':
      return 'Pushrods loose';
    case 'handsClear':
      return 'Hands clear';
    case 'crankThere':
      return 'Crank’s there';
    case 'chooseValve':
      return 'Take up the valve';
    case 'zero':
      return direction === 'on' ? 'Zero lash' : 'First play: zero lash';
    case 'seat':
      return direction === 'on' ? 'Rocker seated' : 'Off its stand';
    case 'next':
      return 'Accept, next valve';
    default:
      return 'Nothing next';
  }
}
