import { describe, expect, test } from 'vitest';
import { groupDifferences } from '#valvetrain';
import { THOU } from '../samples';
import { engine, sixteen } from './bench';

const by = (valves: ReturnType<typeof sixteen>) =>
  Object.fromEntries(groupDifferences(valves, engine).map((one) => [one.by, one]));

describe('differences of groups', () => {
  test('the travel’s share is common and cancels; the rest shrinks by the square root', () => {
    const small = by(sixteen(() => 90, { commonThou: 0 })).valve?.allowedMm;
    const large = by(sixteen(() => 90, { commonThou: 9 })).valve?.allowedMm;
    expect(small).toBeCloseTo(1.96 * 3.3 * THOU * Math.sqrt(2 / 8), 9);
    expect(large).toBeCloseTo(small ?? 0, 9);
  });

  test('the one that reads less needs the longer pushrods', () => {
    const { valve } = by(sixteen(({ valve: kind }) => (kind === 'intake' ? 80 : 100)));
    expect(valve).toMatchObject({
      isReal: true,
      groups: [{ valve: 'intake' }, { valve: 'exhaust' }],
    });
    expect(valve?.differenceMm).toBeCloseTo(20 * THOU, 9);
  });

  test('kinds that differ alike on both banks do not differ together', () => {
    const found = by(
      sixteen(({ cylinder, valve }) => 90 + (valve === 'intake' ? 8 : 0) + (cylinder % 2) * 12),
    );
    expect(found).toMatchObject({
      valve: { isReal: true },
      bank: { isReal: true },
      together: { isReal: false, groups: null },
    });
    expect(found.together?.differenceMm).toBeCloseTo(0, 9);
  });

  test('nothing to tell apart: no differences', () => {
    const intakes = sixteen(() => 90).filter(
      ({ id }) => id.valve === 'intake' && id.cylinder % 2 === 1,
    );
    expect(groupDifferences(intakes, engine)).toEqual([]);
  });
});
