/** Numbers from a seed, the same every time. */
export interface Random {
  /** 0 up to, but not, 1. */
  readonly next: () => number;
  /** A whole number from 0 up to, but not, `below`. */
  readonly whole: (below: number) => number;
  readonly chance: (share: number) => boolean;
  readonly pick: <T>(items: readonly [T, ...T[]]) => T;
}

/** Mulberry32, a small public-domain generator. */
export function randomFrom(seed: number): Random {
  let state = seed >>> 0;
  const next = () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
  const whole = (below: number) => Math.floor(next() * below);
  return {
    next,
    whole,
    chance: (share) => next() < share,
    pick: (items) => items[whole(items.length)] ?? items[0],
  };
}
