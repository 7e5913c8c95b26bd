import type { SetUp } from '#counting';

/**
 * The set-up of a count that starts at once: the last one's thread, lifters, test pushrod and way
 * of calling, and no engine, so that the first valve needs no name. With no last set-up the count
 * alone is kept. A count for valves whose lifters differ has no window until it is named.
 */
export function countNowSetUp(last: SetUp | null, name: string): SetUp {
  if (last !== null) return { ...last, name, engine: null, scope: [] };
  return {
    name,
    engine: null,
    scope: [],
    adjuster: null,
    rockers: 'bolt-down',
    groups: [],
    calling: { way: 'quarters' },
    callsLastOnly: false,
    asksLanding: true,
    clock: 'mark',
    hands: 'alone',
    testPushrod: null,
  };
}
