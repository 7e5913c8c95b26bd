import { describe, expect, test } from 'vitest';
import { companion, firingAngleDeg, makeEngine } from '#valvetrain';

function engineOf(order: string) {
  const firingOrder = order.split('-').map(Number);
  return makeEngine({
    layout: 'other',
    cylinders: firingOrder.length,
    firingOrder,
    numbering: 'in line',
    runningDirection: 'clockwise',
    seenFrom: 'front',
  });
}

// Published lists of companions, titles not noted.
describe('companions', () => {
  test.each([
    ['1-8-4-3-6-5-7-2', '1-6 8-5 4-7 3-2'],
    ['1-5-3-6-2-4', '1-6 5-2 3-4'],
    ['1-2-3-4-5-6', '1-4 2-5 3-6'],
    ['1-2-4-3', '1-4 2-3'],
    ['1-3-2-4', '1-2 3-4'],
  ])('%s: %s', (order, pairs) => {
    const e = engineOf(order);
    const half = e.firingOrder.slice(0, e.cylinders / 2);
    expect(half.map((cylinder) => `${cylinder}-${companion(e, cylinder)}`).join(' ')).toBe(pairs);
    for (const pair of pairs.split(' ')) {
      const [one, other] = pair.split('-').map(Number);
      expect(companion(e, other!)).toBe(one);
      expect(firingAngleDeg(e, other!) - firingAngleDeg(e, one!)).toBe(360);
    }
  });

  // Rule of nine for inline fours, published, title not noted: of the valves counted 1 to 8 from the
  // front, when n is full open set 9 − n. Derived: that valve is the companion's.
  test('in an inline four the rule of nine leads to the companion', () => {
    const e = engineOf('1-3-4-2');
    for (let open = 1; open <= 8; open += 1) {
      const cylinderOf = (valve: number) => Math.ceil(valve / 2);
      expect(cylinderOf(9 - open)).toBe(companion(e, cylinderOf(open)));
    }
  });
});
