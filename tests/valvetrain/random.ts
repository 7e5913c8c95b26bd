/**
 * A small seeded generator (mulberry32): the same seed gives the same run. Numbers from 0 up to 1.
 * Written out here so that a printed seed means the same on every machine.
 */
export function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

/** A whole number from `from` to `to`, both included. */
export function whole(random: () => number, from: number, to: number): number {
  return from + Math.floor(random() * (to - from + 1));
}

/** One of the items. */
export function oneOf<T>(random: () => number, items: readonly T[]): T {
  return items[whole(random, 0, items.length - 1)]!;
}
