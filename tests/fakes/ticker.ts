import type { Clock } from '#clock';
import type { ScheduledTick, Ticker } from '#speaking';

export interface FakeTicker extends Ticker {
  readonly ticks: readonly ScheduledTick[];
}

/** A ticker that only writes down when it was asked. */
export function fakeTicker(clock: Clock): FakeTicker {
  const ticks: ScheduledTick[] = [];
  return {
    ticks,
    tick(tick) {
      ticks.push({ tick, askedAt: clock.now(), soundsAtS: clock.now() / 1000 });
    },
    unlock() {},
    last: () => ticks.at(-1) ?? null,
  };
}
