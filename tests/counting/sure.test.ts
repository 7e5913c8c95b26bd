import { describe, expect, test } from 'vitest';
import { figuresForReading, SAID_UNPROVEN, tellLog } from '#counting';
import { QUARTER } from '#valvetrain';
import { decided } from '../fakes/decided';
import { oneCylinder, v8SetUp } from '../fakes/setUps';

const THOU = 0.0254;
const K = ((1.25 / 25.4) * 1000 * (1 + 1 / 1.7)) / 4;

/** u(p) in thou, worked out anew: r and z in quarters, k good to 7 % either way, all rectangular. */
function u(quarters: number, r: number): number {
  const own = K * Math.sqrt(r ** 2 / 12 + 0.15 ** 2 / 3);
  const common = (quarters * K * 0.07) / Math.sqrt(3);
  return Math.hypot(own, common);
}

/** A job on which valves have been counted to so many quarters, each answered or not at 'how far?'. */
function counted(...counts: readonly (readonly [quarters: number, answer: 'nothing' | null])[]) {
  const job = decided(counts.length > 2 ? v8SetUp() : oneCylinder());
  for (const [quarters, answer] of counts) {
    job.toCounting();
    job.run({ type: 'call', to48: (quarters * QUARTER) as never, form: 'turns' });
    job.run({ type: 'seat', loose: false });
    if (answer !== null) job.run({ type: 'land', word: answer });
    job.run({ type: 'next', cylinder: false });
  }
  return job;
}

const reading = (job: ReturnType<typeof counted>, at = 0) => {
  const found = job.state().readings[at];
  if (found === undefined) throw new Error('no reading');
  return figuresForReading(job.state(), found);
};

describe('how sure a reading is', () => {
  test('its uncertainty is what the formula gives, its guard 1.65 of it', () => {
    const { sure } = reading(counted([4, 'nothing']));
    expect((sure?.uMm ?? 0) / THOU).toBeCloseTo(u(4, 0.5), 6);
    expect((sure?.guardMm ?? 0) / THOU).toBeCloseTo(1.65 * u(4, 0.5), 6);
  });

  test('unasked, a whole quarter is open and the reading is half a quarter on', () => {
    const figures = reading(counted([4, null]));
    expect((figures.preloadMm ?? 0) / THOU).toBeCloseTo(4.5 * K, 6);
    expect((figures.sure?.uMm ?? 0) / THOU).toBeCloseTo(u(4.5, 1), 6);
  });

  test.each([
    [3, null, 'proven light'],
    [4, 'light', 'near the light limit'],
    [5, null, 'proven in'],
    [6, 'fits', 'past the heavy limit, not proven'],
    [7, null, 'proven heavy'],
  ] as const)('%d quarters: against %s, %s', (quarters, against, _why) => {
    expect(reading(counted([quarters, 'nothing'])).sure?.against?.word ?? null).toBe(against);
  });

  test('at four quarters no count settles it without measuring the travel', () => {
    const { sure } = reading(counted([4, 'nothing']));
    const recount = sure?.settling?.remedies.find(({ kind }) => kind === 'recount');
    expect(recount).toMatchObject({ settles: false, counts: { enough: false } });
    expect(sure?.settling?.first?.kind).toBe('measure the travel');
  });

  test('no thread, no uncertainty', () => {
    const job = decided(oneCylinder({ adjuster: null, groups: [] }));
    job.toCounting();
    job.run({ type: 'seat', loose: false });
    job.run({ type: 'land', word: 'nothing' });
    expect(figuresForReading(job.state(), job.state().readings[0] as never).sure).toBeNull();
  });
});

describe('telling it', () => {
  test('the first few are each said, the next once with what settles most, then a tone', () => {
    const job = counted(
      [4, 'nothing'],
      [4, 'nothing'],
      [4, 'nothing'],
      [4, 'nothing'],
      [4, 'nothing'],
    );
    const read = tellLog(job.events).flatMap(({ fact, cue }) =>
      fact.kind === 'read' ? [{ unproven: fact.unproven, settles: fact.settlesMost, cue }] : [],
    );
    expect(read.map(({ unproven }) => unproven)).toEqual([1, 2, 3, 4, 5]);
    expect(read.map(({ cue }) => cue === 'unproven')).toEqual([false, false, false, true, true]);
    expect(new Set(read.map(({ settles }) => settles))).toEqual(new Set(['measure the travel']));
    expect(SAID_UNPROVEN).toBe(3);
  });
});
