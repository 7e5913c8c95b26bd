import { describe, expect, test } from 'vitest';
import { type Beeper, createTicker, type Note, type Tick } from '#speaking';
import { TICKS, tickMs } from '../../src/speaking/ticks';
import { fakeClock } from '../fakes/clock';

const all = Object.keys(TICKS) as Tick[];

/** Two sounds a builder can tell apart: by number, direction, pitch (a minor third) or length. */
function apart(a: readonly Note[], b: readonly Note[]): boolean {
  if (a.length !== b.length) return true;
  const direction = (notes: readonly Note[]) => {
    const from = notes[0]!.hz;
    const to = notes.at(-1)!.toHz ?? notes.at(-1)!.hz;
    return Math.sign(to - from);
  };
  if (direction(a) !== direction(b)) return true;
  const ratio = (x: number, y: number) => Math.max(x, y) / Math.min(x, y);
  const pitch = a.some((note, i) => ratio(note.hz, b[i]!.hz) >= 1.18);
  const length = (notes: readonly Note[]) =>
    notes.reduce((s, { ms, afterMs }) => s + ms + afterMs, 0);
  return pitch || ratio(length(a), length(b)) >= 1.4;
}

describe('ticks as notes', () => {
  const pairs = all.flatMap((a, i) => all.slice(i + 1).map((b) => [a, b] as const));

  test.each(pairs)('%s and %s sound different', (a, b) => {
    expect(apart(TICKS[a], TICKS[b])).toBe(true);
  });

  test('pitch climbs from short of the window, through it, to past it', () => {
    const hz = (tick: Tick) => TICKS[tick][0]!.hz;
    expect(hz('short')).toBeLessThan(hz('in'));
    expect(hz('in')).toBeLessThan(hz('past'));
  });

  test('entering rises, leaving falls', () => {
    const [enterFrom, enterTo] = TICKS.enter;
    const [leaveFrom, leaveTo] = TICKS.leave;
    expect(enterTo!.hz).toBeGreaterThan(enterFrom!.hz);
    expect(leaveTo!.hz).toBeLessThan(leaveFrom!.hz);
  });

  test('every tick lies where small speakers are loud; those of counting last under 80 ms', () => {
    for (const tick of all) {
      for (const { hz, toHz = hz } of TICKS[tick]) {
        expect(Math.min(hz, toHz), tick).toBeGreaterThanOrEqual(600);
        expect(Math.max(hz, toHz), tick).toBeLessThanOrEqual(2400);
      }
      const long = tick.startsWith('hold') || tick === 'refused' || tick === 'unproven';
      expect(tickMs(tick), tick).toBeLessThan(long ? 160 : 80);
    }
  });
});

function beeperAt(timeS: number | null) {
  const beeps: { hz: number; atS: number }[] = [];
  let nowS = timeS;
  let wakes = 0;
  const beeper: Beeper = {
    nowS: () => nowS,
    beep: ({ hz }, atS) => void beeps.push({ hz, atS }),
    wake() {
      wakes += 1;
      nowS = 0;
      return Promise.resolve();
    },
  };
  return {
    beeper,
    beeps,
    wakes: () => wakes,
    setS(s: number | null) {
      nowS = s;
    },
  };
}

describe('ticker', () => {
  test('a tick is scheduled for now, in the call itself, and reported', () => {
    const { beeper, beeps } = beeperAt(3);
    const seen: unknown[] = [];
    const ticker = createTicker({ clock: fakeClock(5), beeper, onTick: (one) => seen.push(one) });
    ticker.tick('in');
    expect(beeps).toEqual([{ hz: 1245, atS: 3 }]);
    expect(seen).toEqual([{ tick: 'in', askedAt: 5, soundsAtS: 3 }]);
    expect(ticker.last()).toEqual(seen[0]);
  });

  test('two at the same moment are heard one after the other', () => {
    const { beeper, beeps } = beeperAt(3);
    const ticker = createTicker({ clock: fakeClock(), beeper });
    ticker.tick('in');
    ticker.tick('seat');
    expect(beeps[1]!.atS).toBeGreaterThan(3 + tickMs('in') / 1000);
  });

  test('before the first gesture there is no sound; the gesture that wakes it plays its own tick', async () => {
    const clock = fakeClock();
    const { beeper, beeps, wakes } = beeperAt(null);
    const ticker = createTicker({ clock, beeper });
    ticker.tick('short');
    expect(ticker.last()?.soundsAtS).toBeNull();
    clock.advance(5000);
    ticker.unlock();
    ticker.tick('soft');
    await Promise.resolve();
    expect(wakes()).toBe(1);
    expect(beeps.map(({ hz }) => hz)).toEqual([988]);
  });

  test('a tick gone stale while asleep is not played on waking', async () => {
    const clock = fakeClock();
    const { beeper, beeps } = beeperAt(null);
    const ticker = createTicker({ clock, beeper });
    ticker.tick('short');
    clock.advance(5000);
    ticker.unlock();
    await Promise.resolve();
    expect(beeps).toEqual([]);
  });

  test('sound interrupted, as by a call, starts again with the next gesture', () => {
    const { beeper, beeps, wakes, setS } = beeperAt(3);
    const ticker = createTicker({ clock: fakeClock(), beeper });
    ticker.unlock();
    expect(wakes()).toBe(0);
    setS(null);
    ticker.unlock();
    expect(wakes()).toBe(1);
    ticker.tick('past');
    expect(beeps).toHaveLength(1);
  });
});
