import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type Engine,
  goRoundAgain,
  valvesOf,
  type Walk,
  type WalkMethod,
  type WalkStep,
  type WalkWish,
  walkFor,
  walkMethods,
} from '#valvetrain';
import { checkProperty } from '../checkProperty';
import { engine } from '../samples';
import { cam, camOf } from './samples';

const v8 = engine([1, 8, 4, 3, 6, 5, 7, 2]);
const three = engine([1, 3, 2], { layout: 'inline', numbering: 'in line' });
const v6 = engine([1, 6, 5, 4, 3, 2], { firingAnglesDeg: [0, 90, 240, 330, 480, 570] });

function walkOf(e: Engine, method: WalkMethod, wish: WalkWish = {}, durationDeg = 280): Walk {
  const finding = walkFor(e, cam(durationDeg), method, wish);
  if (!finding.found) throw new Error(finding.problem.sentence);
  return finding.walk;
}

const turnsOf = (steps: readonly WalkStep[]) => steps.map(({ turnDeg }) => turnDeg);
const firingOf = (steps: readonly WalkStep[]) => steps.map(({ firing }) => firing);

describe('in firing order', () => {
  test('each step is 720/n on, proved by the companion, both valves counted', () => {
    const { steps } = walkOf(v8, 'firing order');
    expect(firingOf(steps)).toEqual(v8.firingOrder);
    expect(turnsOf(steps)).toEqual([null, 90, 90, 90, 90, 90, 90, 90]);
    expect(steps[1]).toMatchObject({
      proof: { kind: 'crossing', crossing: 5, firing: 8 },
      count: [
        { cylinder: 8, valve: 'exhaust' },
        { cylinder: 8, valve: 'intake' },
      ],
    });
    expect(steps[1]?.roomPastDeg).toBe(110);
  });

  test('begins with the next ahead of where the crank stands', () => {
    const { steps } = walkOf(v8, 'firing order', { fromDeg: 100 });
    expect(firingOf(steps)).toEqual([4, 3, 6, 5, 7, 2, 1, 8]);
    expect(turnsOf(steps)[0]).toBe(80);
    expect(turnsOf(walkOf(v8, 'firing order', { fromDeg: 90 }).steps)[0]).toBe(0);
  });

  test('of an odd-fire V6 turns by what lies between its cylinders', () => {
    const { steps } = walkOf(v6, 'firing order');
    expect(turnsOf(steps)).toEqual([null, 90, 150, 90, 150, 90]);
    expect(steps[3]?.description).toBe(
      '4’s intake opens, then shuts; its piston’s next time up is its firing TDC.',
    );
  });
});

describe('fewest stops', () => {
  test('are walked one turn apart', () => {
    const { steps, shortfalls } = walkOf(v8, 'fewest stops');
    expect(turnsOf(steps)).toEqual([null, 360]);
    expect(steps.flatMap(({ count }) => count)).toHaveLength(16);
    expect(shortfalls).toEqual([]);
  });

  test('are refused when no position gives the margin', () => {
    const finding = walkFor(v8, cam(320), 'fewest stops', { marginDeg: 300 });
    expect(finding.found ? '' : finding.problem.code).toBe('no position gives it');
  });
});

describe('timing dots', () => {
  test('dots together is the companion of one; one turn on, the cam’s dot at twelve is one', () => {
    const { steps } = walkOf(v8, 'timing dots');
    expect(firingOf(steps)).toEqual([6, 5, 7, 2, 1, 8, 4, 3]);
    expect(steps[0]?.proof).toEqual({ kind: 'timing dots together', crossing: 1, firing: 6 });
    expect(steps[4]?.proof).toEqual({ kind: 'cam dot at twelve', firing: 1 });
    expect((steps[4]?.angleDeg ?? 0) + 720 - (steps[0]?.angleDeg ?? 0)).toBe(360);
    expect(steps[1]?.proof).toEqual({ kind: 'crossing', crossing: 8, firing: 5 });
  });

  test('without a companion dots together is a landmark with nothing to count', () => {
    const { steps } = walkOf(three, 'timing dots');
    expect(steps[0]).toMatchObject({ angleDeg: 360, firing: null, count: [] });
    expect(steps[0]?.description).toBe(
      'The timing dots face each other: 1 is between its exhaust and intake strokes.',
    );
    expect(firingOf(steps)).toEqual([null, 2, 1, 3]);
    expect(turnsOf(steps)).toEqual([null, 120, 240, 240]);
  });

  test('a landmark comes first too when its own cylinder is not wanted', () => {
    const valves = valvesOf(v8).filter(({ cylinder }) => cylinder === 1);
    const { steps } = walkOf(v8, 'timing dots', { valves });
    expect(steps.map(({ count }) => count.length)).toEqual([0, 2]);
    expect(turnsOf(steps)).toEqual([null, 360]);
    expect(steps[0]?.firing).toBe(6);
  });
});

describe('watching the valves', () => {
  test('proves each cylinder by its own intake', () => {
    const { steps } = walkOf(v8, 'watching the valves');
    expect(steps.map(({ proof }) => proof)).toEqual(
      v8.firingOrder.map((firing) => ({ kind: 'watching', firing })),
    );
  });

  test('does without a firing order: by number, no turn named', () => {
    const unknown = engine([], { cylinders: 4, layout: 'inline', numbering: 'in line' });
    const { steps } = walkOf(unknown, 'watching the valves');
    expect(firingOf(steps)).toEqual([1, 2, 3, 4]);
    expect(turnsOf(steps)).toEqual([null, null, null, null]);
    expect(steps.map(({ angleDeg }) => angleDeg)).toEqual([null, null, null, null]);
    expect(steps[2]?.margins.map(({ marginDeg }) => marginDeg)).toEqual([110, 110]);
  });
});

describe('companion', () => {
  test('is refused of an engine that has none', () => {
    for (const e of [three, v6]) {
      const finding = walkFor(e, cam(280), 'companion');
      expect(finding.found ? '' : finding.problem.sentence).toMatch(
        /^Cylinder 1 of [36] has no companion 360° away/,
      );
    }
  });

  test('names who crosses at every step', () => {
    const { steps } = walkOf(v8, 'companion');
    expect(steps.map(({ description }) => description)[2]).toBe(
      '7’s valves rock, or its lifters cross: 4 is at its firing TDC.',
    );
  });
});

describe('exhaust opening, intake closing', () => {
  test('of an inline six takes in every valve in two turns', () => {
    const six = engine([1, 5, 3, 6, 2, 4], { layout: 'inline', numbering: 'in line' });
    const { steps } = walkOf(six, 'exhaust opening, intake closing', { fromDeg: 0 });
    expect(steps).toHaveLength(12);
    expect(steps[0]).toMatchObject({
      turnDeg: 10,
      description: '5’s intake is nearly shut.',
      count: [{ cylinder: 5, valve: 'exhaust' }],
    });
    expect(turnsOf(steps).reduce<number>((sum, turn) => sum + (turn ?? 0), 0)).toBeLessThan(720);
  });

  test('does without a firing order', () => {
    const unknown = engine([], { cylinders: 4, layout: 'inline', numbering: 'in line' });
    const { steps } = walkOf(unknown, 'exhaust opening, intake closing');
    expect(steps.map(({ description }) => description).slice(0, 2)).toEqual([
      '1’s exhaust just starts to open.',
      '1’s intake is nearly shut.',
    ]);
    expect(steps).toHaveLength(8);
  });
});

test('a place overshot is two turns on, at the same proof', () => {
  const step = walkOf(v8, 'firing order').steps[3]!;
  expect(goRoundAgain(step)).toEqual({ ...step, turnDeg: 720 });
});

test('a walk says which valve its cam leaves too near a ramp', () => {
  const finding = walkFor(v8, cam(400), 'firing order', { marginDeg: 60 });
  expect(finding.found && finding.walk.shortfalls[0]?.sentence).toBe(
    'Cylinder 1’s exhaust is only 50° off its ramp where this plan counts it, 10° short of the 60° wanted.',
  );
});

test('any walk of any engine goes forward only, within two turns, and takes in each valve once', () => {
  const met: Record<WalkMethod | 'odd-fire' | 'refused', number> = {
    'firing order': 0,
    'fewest stops': 0,
    'timing dots': 0,
    'watching the valves': 0,
    companion: 0,
    'exhaust opening, intake closing': 0,
    'odd-fire': 0,
    refused: 0,
  };
  const drawn = fc.integer({ min: 1, max: 12 }).chain((n) =>
    fc.record({
      order: fc.shuffledSubarray(
        Array.from({ length: n }, (_, place) => place + 1),
        { minLength: n },
      ),
      typed: fc.option(
        fc.uniqueArray(fc.integer({ min: 1, max: 719 }), { minLength: n - 1, maxLength: n - 1 }),
        { nil: undefined, freq: 2 },
      ),
      method: fc.constantFrom(...walkMethods),
      fromDeg: fc.option(fc.double({ min: 0, max: 719, noNaN: true }), { nil: undefined }),
      duration: fc.integer({ min: 200, max: 400 }),
      centre: fc.integer({ min: 100, max: 120 }),
    }),
  );
  checkProperty(
    'walks',
    fc.property(drawn, ({ order, typed, method, fromDeg, duration, centre }) => {
      const angles = typed && [0, ...typed.toSorted((a, b) => a - b)];
      const e = engine(order, {
        layout: 'other',
        numbering: 'in line',
        ...(angles ? { firingAnglesDeg: angles } : {}),
      });
      const timing = camOf({
        intakeDurationDeg: duration,
        exhaustDurationDeg: duration,
        lobeSeparationDeg: centre,
        intakeCentrelineDeg: centre,
      });
      const finding = walkFor(e, timing, method, fromDeg === undefined ? {} : { fromDeg });
      if (!finding.found) {
        met.refused += 1;
        expect(method).toBe('companion');
        return;
      }
      met[method] += 1;
      if (angles) met['odd-fire'] += 1;
      const { steps, shortfalls } = finding.walk;
      const turns = turnsOf(steps);
      expect(turns[0] === null).toBe(fromDeg === undefined);
      for (const turn of turns.slice(1)) expect(turn).not.toBeNull();
      for (const turn of turns) expect(turn ?? 0).toBeGreaterThanOrEqual(0);
      const total = turns.slice(1).reduce<number>((sum, turn) => sum + (turn ?? 0), 0);
      expect(total).toBeLessThan(720);
      const keys = steps.flatMap(({ count }) => count.map((v) => `${v.cylinder} ${v.valve}`));
      expect(keys).toHaveLength(2 * order.length);
      expect(new Set(keys).size).toBe(2 * order.length);
      if (method !== 'firing order') expect(shortfalls).toEqual([]);
      for (const step of steps) {
        expect(step.description).toMatch(/^[A-Z0-9].*\.$/);
        expect(step.description).not.toMatch(/NaN|Infinity|undefined|null/);
        const least = Math.min(...step.margins.map(({ marginDeg }) => marginDeg));
        if (step.count.length > 0) {
          expect(Math.min(step.roomShortDeg, step.roomPastDeg)).toBeCloseTo(least, 6);
        }
      }
    }),
    met,
  );
});
