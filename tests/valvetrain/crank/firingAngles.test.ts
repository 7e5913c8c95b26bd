import { describe, expect, test } from 'vitest';
import { companion, engineProblems, firingAngleDeg, tdcsOf, turnBetweenDeg } from '#valvetrain';
import { engine } from '../samples';

// A V6 with three crankpins 120° apart and banks at 90°: pairs on one pin fire 90° apart. Derived.
const ANGLES = [0, 90, 240, 330, 480, 570];
const v6 = engine([1, 6, 5, 4, 3, 2], { firingAnglesDeg: ANGLES });

describe('an odd-fire engine', () => {
  test('fires at its typed angles', () => {
    expect(v6.firingOrder.map((cylinder) => firingAngleDeg(v6, cylinder))).toEqual(ANGLES);
    expect(() => firingAngleDeg(v6, 7)).toThrow(RangeError);
    expect(engineProblems(v6)).toEqual([]);
  });

  test('is turned from one cylinder to another by what lies between, never back', () => {
    expect(turnBetweenDeg(v6, 1, 6)).toBe(90);
    expect(turnBetweenDeg(v6, 6, 5)).toBe(150);
    expect(turnBetweenDeg(v6, 2, 1)).toBe(150);
    expect(turnBetweenDeg(v6, 6, 1)).toBe(630);
    expect(turnBetweenDeg(v6, 5, 5)).toBe(720);
    expect(() => turnBetweenDeg(v6, 5, 8)).toThrow(RangeError);
  });

  test('has a companion only where one is a whole turn away', () => {
    expect(v6.firingOrder.map((cylinder) => companion(v6, cylinder))).toEqual(
      Array(6).fill(undefined),
    );
    const four = engine([1, 2, 4, 3], { firingAnglesDeg: [0, 90, 360, 450] });
    expect([1, 2, 3, 4].map((cylinder) => companion(four, cylinder))).toEqual([4, 3, 2, 1]);
  });

  test('has every piston’s two TDCs, in order', () => {
    const angles = tdcsOf(v6).map(({ angleDeg }) => angleDeg);
    expect(angles).toEqual([0, 90, 120, 210, 240, 330, 360, 450, 480, 570, 600, 690]);
    expect(tdcsOf(v6)[2]).toEqual({ angleDeg: 120, firing: null, crossing: 3 });
  });
});

describe('an evenly fired engine', () => {
  test('has a TDC at every firing, where its companion crosses', () => {
    const v8 = engine([1, 8, 4, 3, 6, 5, 7, 2]);
    expect(tdcsOf(v8)).toHaveLength(8);
    expect(tdcsOf(v8)[1]).toEqual({ angleDeg: 90, firing: 8, crossing: 5 });
    expect(turnBetweenDeg(v8, 1, 8)).toBe(90);
    expect(turnBetweenDeg(v8, 8, 1)).toBe(630);
  });

  test('of an odd number of cylinders has TDCs with nobody to fire between them', () => {
    const three = engine([1, 3, 2], { layout: 'inline', numbering: 'in line' });
    expect(tdcsOf(three)).toEqual([
      { angleDeg: 0, firing: 1, crossing: null },
      { angleDeg: 120, firing: null, crossing: 2 },
      { angleDeg: 240, firing: 3, crossing: null },
      { angleDeg: 360, firing: null, crossing: 1 },
      { angleDeg: 480, firing: 2, crossing: null },
      { angleDeg: 600, firing: null, crossing: 3 },
    ]);
  });
});

test.each([
  ['too few', [0, 90], '2 firing angles for 4 cylinders: give one for each, in firing order.'],
  [
    'one past two turns',
    [0, 90, 360, 720],
    'A firing angle of 720° can’t be: two turns of the crank hold 0 to 719°.',
  ],
  [
    'a gap in them',
    [0, 90, Number.NaN, 450],
    'A firing angle is missing: two turns of the crank hold 0 to 719°.',
  ],
  [
    'not begun at 0',
    [10, 90, 360, 450],
    'The firing angles begin at 10°: they count from the first cylinder in order, which is 0.',
  ],
  [
    'going back',
    [0, 360, 90, 450],
    'From 2 to 4 the firing angles go back by 270°: they rise in firing order.',
  ],
  ['two close together', [0, 20, 360, 450], 'From 1 to 2 is only 20°. Confirm it if it is right.'],
  [
    'two close across the end',
    [0, 90, 360, 700],
    'From 3 to 1 is only 20°. Confirm it if it is right.',
  ],
])('firing angles: %s', (_, firingAnglesDeg, sentence) => {
  const found = engineProblems(engine([1, 2, 4, 3], { firingAnglesDeg }));
  expect(found.map((problem) => problem.sentence)).toEqual([sentence]);
});
