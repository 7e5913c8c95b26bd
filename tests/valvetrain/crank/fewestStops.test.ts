import { describe, expect, test } from 'vitest';
import {
  fewestStops,
  planAtAngles,
  type StopFinding,
  type StopPlan,
  tdcsOf,
  valvesOf,
} from '#valvetrain';
import { engine } from '../samples';
import { cam } from './samples';

const v8 = engine([1, 8, 4, 3, 6, 5, 7, 2]);
const six = engine([1, 5, 3, 6, 2, 4], { layout: 'inline', numbering: 'in line' });

function planIn(finding: StopFinding): StopPlan {
  if (!finding.found) throw new Error(finding.problem.sentence);
  return finding.plan;
}

function sentenceIn(finding: StopFinding): string {
  return finding.found ? 'found' : finding.problem.sentence;
}

const anglesIn = (finding: StopFinding) => planIn(finding).stops.map(({ angleDeg }) => angleDeg);

describe('the fewest stops', () => {
  test('are at TDCs unless said otherwise, each with its proof, its margins and its room', () => {
    const plan = planIn(fewestStops(v8, cam(260, 112, 108)));
    expect(plan.wantedDeg).toBe(15);
    expect(plan.leastMarginDeg).toBe(68);
    expect(plan.shortfalls).toEqual([]);
    expect(plan.stops[0]).toMatchObject({
      angleDeg: 0,
      firing: 1,
      leastMarginDeg: 68,
      roomShortDeg: 76,
      roomPastDeg: 68,
      nearestPistonDeg: 0,
      proof: { kind: 'crossing', crossing: 6, firing: 1 },
      description: '6’s valves rock, or its lifters cross: 1 is at its firing TDC.',
    });
    expect(plan.stops[0]?.margins).toContainEqual({
      valve: { cylinder: 1, valve: 'exhaust' },
      marginDeg: 114,
    });
    expect(plan.stops[0]?.valves[0]).toEqual({ cylinder: 1, valve: 'exhaust' });
  });

  test('at any angle have more margin, and say how far from which TDC', () => {
    const plan = planIn(fewestStops(v8, cam(260, 112, 108), { at: 'any angle' }));
    expect(plan.leastMarginDeg).toBe(73);
    expect(plan.stops.map(({ description }) => description)).toEqual([
      '41° past 1’s firing TDC, by a degree wheel.',
      '41° past 6’s firing TDC, by a degree wheel.',
    ]);
    const before = planIn(fewestStops(six, cam(260, 112, 108), { at: 'any angle' }));
    expect(before.stops.map(({ description }) => description)).toEqual([
      '4° before 6’s firing TDC, by a degree wheel.',
      '4° before 1’s firing TDC, by a degree wheel.',
    ]);
  });

  test('can keep every piston as far from TDC as the crank allows', () => {
    const wish = { at: 'any angle', prefer: 'pistons away from TDC' } as const;
    const ofEight = planIn(fewestStops(v8, cam(260, 112, 108), wish));
    expect(ofEight.stops.map(({ nearestPistonDeg }) => nearestPistonDeg)).toEqual([45, 45]);
    expect(ofEight.leastMarginDeg).toBe(69);
    const ofSix = planIn(fewestStops(six, cam(260, 112, 108), wish));
    expect(ofSix.stops.map(({ nearestPistonDeg }) => nearestPistonDeg)).toEqual([60, 60]);
    expect(ofSix.leastMarginDeg).toBe(54);
  });

  test('of plans alike begin nearest the first firing TDC', () => {
    const four = engine([1, 3, 4, 2], { layout: 'inline', numbering: 'in line' });
    const timing = cam(260, 112, 108);
    const finding = fewestStops(four, timing, {
      at: 'any angle',
      prefer: 'pistons away from TDC',
    });
    const other = planAtAngles(four, timing.events, [270, 630]);
    expect(anglesIn(finding)).toEqual([90, 450]);
    expect(other.leastMarginDeg).toBe(planIn(finding).leastMarginDeg);
  });

  // Derived: two places 360° apart leave at least (360 − D)/2.
  test('are two up to 330° with 15° wanted, and more beyond', () => {
    expect(anglesIn(fewestStops(v8, cam(330), { at: 'any angle' }))).toHaveLength(2);
    expect(anglesIn(fewestStops(v8, cam(400), { at: 'any angle' }))).toHaveLength(3);
  });

  test('may be only at marked angles', () => {
    const marks = [0, 90, 360, 450];
    expect(anglesIn(fewestStops(v8, cam(260), { at: marks }))).toEqual([0, 360]);
    expect(sentenceIn(fewestStops(v8, cam(260), { at: [0] }))).toBe(
      'No crank position keeps cylinder 3’s intake 15° off its ramps: it is never shut at the places the crank may stop, 230° at any angle.',
    );
  });

  test('of one cylinder, or of some valves only, are one', () => {
    const one = engine([1], { layout: 'other', numbering: 'in line' });
    expect(anglesIn(fewestStops(one, cam(300)))).toEqual([0]);
    const two = [
      { cylinder: 3, valve: 'exhaust' },
      { cylinder: 3, valve: 'intake' },
    ] as const;
    const plan = planIn(fewestStops(v8, cam(300), { valves: two }));
    expect(plan.stops).toHaveLength(1);
    expect(plan.stops[0]?.firing).toBe(3);
    expect(plan.stops[0]?.valves).toEqual(two);
  });

  test('of an odd-fire V6 hold every valve', () => {
    const v6 = engine([1, 6, 5, 4, 3, 2], { firingAnglesDeg: [0, 90, 240, 330, 480, 570] });
    const plan = planIn(fewestStops(v6, cam(280)));
    expect(plan.stops).toHaveLength(2);
    expect(plan.stops.flatMap(({ valves }) => valves)).toHaveLength(12);
    expect(plan.stops[0]?.proof).toEqual({ kind: 'watching', firing: 1 });
    const tdcs = tdcsOf(v6).map(({ angleDeg }) => angleDeg);
    for (const { angleDeg } of plan.stops) expect(tdcs).toContain(angleDeg);
  });

  test('name every valve once, whatever is wished', () => {
    for (const at of ['TDCs', 'any angle'] as const) {
      const { stops } = planIn(fewestStops(six, cam(390), { at }));
      const keys = stops.flatMap(({ valves }) => valves.map((v) => `${v.cylinder} ${v.valve}`));
      expect(keys.toSorted()).toEqual(
        valvesOf(six)
          .map((v) => `${v.cylinder} ${v.valve}`)
          .toSorted(),
      );
    }
  });
});

describe('no stops', () => {
  test.each<[string, StopFinding, string]>([
    [
      'a margin no position can give',
      fewestStops(v8, cam(320), { at: 'any angle', marginDeg: 210 }),
      'No crank position keeps cylinder 1’s intake 210° off its ramps: it is open for 320° of 720°, so 200° is the most.',
    ],
    [
      'a margin no TDC can give',
      fewestStops(v8, cam(320), { marginDeg: 190 }),
      'No crank position keeps cylinder 1’s intake 190° off its ramps: 180° is the most at the places the crank may stop, 200° at any angle.',
    ],
    [
      'a margin below nought',
      fewestStops(v8, cam(320), { marginDeg: -3 }),
      'A margin of -3° can’t be used: give crank degrees, 0 or more.',
    ],
    [
      'a margin left empty',
      fewestStops(v8, cam(320), { marginDeg: Number.NaN }),
      'The margin is missing: give crank degrees, 0 or more.',
    ],
    ['no valve', fewestStops(v8, cam(320), { valves: [] }), 'No valve is to be counted.'],
    [
      'a valve of no cylinder',
      fewestStops(v8, cam(320), { valves: [{ cylinder: 9, valve: 'intake' }] }),
      'Cylinder 9 is not in the firing order.',
    ],
    [
      'an order that is not known',
      fewestStops(engine([], { cylinders: 8 }), cam(320)),
      'The firing order is not known: 0 of 8 cylinders are given. Without it the crank can be walked only by watching each cylinder’s own valves.',
    ],
    [
      'an order with a slip',
      fewestStops(engine([1, 8, 4, 3, 6, 5, 7, 7]), cam(320)),
      'Cylinder 7 is in the firing order more than once: each cylinder belongs there once.',
    ],
  ])('%s: a sentence with the figures', (_, finding, sentence) => {
    expect(sentenceIn(finding)).toBe(sentence);
  });
});
