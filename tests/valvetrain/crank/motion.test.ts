import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { openSpan, pistonAt, pistonsAt, valveAt, valvesAt } from '#valvetrain';
import { checkProperty } from '../checkProperty';
import { engine } from '../samples';
import { marginOf, openSpans } from './referees';
import { cam, camOf } from './samples';

const four = engine([1, 3, 4, 2], { layout: 'inline', numbering: 'in line' });
const timing = cam(260, 110);

describe('a valve', () => {
  test('is off its base circle between its events', () => {
    expect(openSpan(timing.events, 'exhaust')).toEqual({ opensDeg: 120, closesDeg: 380 });
    expect(openSpan(timing.events, 'intake')).toEqual({ opensDeg: 340, closesDeg: 600 });
  });

  test.each([
    [0, 'shut', 120],
    [119, 'shut', 1],
    [120, 'opening', 0],
    [160, 'opening', -40],
    [250, 'open', -130],
    [340, 'closing', -40],
    [380, 'closing', 0],
    [381, 'shut', 1],
    [700, 'shut', 140],
    [-20, 'shut', 140],
    [1440, 'shut', 120],
  ])('exhaust of 1 at %d°: %s, %d°', (angle, motion, marginDeg) => {
    const at = valveAt(four, timing.events, { cylinder: 1, valve: 'exhaust' }, angle);
    expect(at.motion).toBe(motion);
    expect(at.marginDeg + 0).toBeCloseTo(marginDeg, 9);
  });

  test('lifts smoothly from nothing to all of it and back', () => {
    const share = (angle: number) =>
      valveAt(four, timing.events, { cylinder: 1, valve: 'exhaust' }, angle).liftShare;
    expect(share(100)).toBe(0);
    expect(share(250)).toBeCloseTo(1, 9);
    expect(share(185)).toBeCloseTo(0.5, 9);
  });

  test('of a cylinder that is not in the order can’t be placed', () => {
    expect(() => valveAt(four, timing.events, { cylinder: 9, valve: 'intake' }, 0)).toThrow(
      RangeError,
    );
  });

  test('at any angle of any engine has the margin worked out another way', () => {
    const met = { shut: 0, open: 0, 'odd-fire': 0 };
    const drawn = fc.record({
      n: fc.integer({ min: 1, max: 12 }),
      step: fc.option(fc.integer({ min: 5, max: 59 }), { nil: undefined }),
      angle: fc.double({ min: -2000, max: 2000, noNaN: true }),
      intake: fc.double({ min: 150, max: 400, noNaN: true }),
      exhaust: fc.double({ min: 150, max: 400, noNaN: true }),
      separation: fc.double({ min: 95, max: 125, noNaN: true }),
      centre: fc.double({ min: 95, max: 125, noNaN: true }),
    });
    checkProperty(
      'margins',
      fc.property(drawn, ({ n, step, angle, intake, exhaust, separation, centre }) => {
        const order = Array.from({ length: n }, (_, place) => n - place);
        const e = engine(order, {
          layout: 'other',
          numbering: 'in line',
          ...(step === undefined ? {} : { firingAnglesDeg: order.map((_, k) => k * step) }),
        });
        if (step !== undefined) met['odd-fire'] += 1;
        const { events } = camOf({
          intakeDurationDeg: intake,
          exhaustDurationDeg: exhaust,
          lobeSeparationDeg: separation,
          intakeCentrelineDeg: centre,
        });
        const spans = openSpans(e, events);
        const all = valvesAt(e, events, angle);
        expect(all).toHaveLength(2 * n);
        for (const { valve, marginDeg, motion } of all) {
          const place = 2 * order.indexOf(valve.cylinder) + (valve.valve === 'intake' ? 0 : 1);
          expect(marginDeg).toBeCloseTo(marginOf(spans[place]!, angle), 6);
          expect(motion === 'shut').toBe(marginDeg > 0);
          met[motion === 'shut' ? 'shut' : 'open'] += 1;
        }
      }),
      met,
    );
  });
});

describe('a piston', () => {
  test.each([
    [0, 'power', 0, 0],
    [180, 'exhaust', 180, 1],
    [350, 'exhaust', 10, undefined],
    [360, 'intake', 0, 0],
    [540, 'compression', 180, 1],
    [700, 'compression', 20, undefined],
    [-90, 'compression', 90, undefined],
  ])('of 1 at %d°: %s, %d° from TDC', (angle, stroke, fromTdcDeg, down) => {
    const at = pistonAt(four, 1, angle);
    expect(at.stroke).toBe(stroke);
    expect(at.fromTdcDeg).toBe(fromTdcDeg);
    if (down !== undefined) expect(at.downShare).toBeCloseTo(down, 9);
  });

  // The rod leans at a quarter turn, so the piston is past half way: textbook slider-crank.
  test('is past half way down a quarter turn after TDC', () => {
    expect(pistonAt(four, 1, 90).downShare).toBeCloseTo((1 + 3.5 - Math.sqrt(3.5 ** 2 - 1)) / 2, 9);
  });

  test('companions stand alike', () => {
    const all = pistonsAt(four, 37);
    expect(all.map(({ cylinder }) => cylinder)).toEqual([1, 2, 3, 4]);
    expect(all[0]?.downShare).toBeCloseTo(all[3]!.downShare, 9);
    expect(all[1]?.fromTdcDeg).toBe(all[2]?.fromTdcDeg);
  });
});
