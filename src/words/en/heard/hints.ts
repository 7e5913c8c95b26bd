import { cardinal } from '../numbers';
import type { Grammar } from './grammar';
import { GROUPS } from './groups';

/** Counts up to here are hinted at: more than most valves take. */
const MOST_COUNTED = 12;

/** The phrases that make sense now, for a service that listens better when it is told them. */
export function hintsFor({ allowed, carrier }: Grammar): readonly string[] {
  const phrases = GROUPS.flatMap(({ fixed, numbers }) => [
    ...fixed
      .filter(({ commands }) => commands.every((type) => allowed.includes(type)))
      .map(({ said }) => said),
    ...numbers
      .filter(({ commands }) => commands.some((type) => allowed.includes(type)))
      .flatMap(({ examples }) => examples),
  ]);
  const counts = allowed.includes('call')
    ? Array.from({ length: MOST_COUNTED }, (_, i) => cardinal(i + 1))
    : [];
  const carried = counts.map((count) => (carrier === null ? count : `${carrier} ${count}`));
  return [...new Set([...carried, ...phrases])];
}
