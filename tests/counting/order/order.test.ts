import { describe, expect, test } from 'vitest';
import {
  type Buying,
  choosable,
  groupStops,
  offGrid,
  orderTold,
  pushrodAnswer,
  type SetUp,
} from '#counting';
import { makeEngine, QUARTER } from '#valvetrain';
import { begun, bothKinds, counted, fitRod } from '../counted';
import { given, type Job } from '../given';
import { eightCylinders, exhaust, intake, longTravel, THOU } from '../samples';
import { repeat, seatedLoose } from '../steps';

const INCH = 25.4;
/** Two banks of four: even on one, odd on the other. */
const engine = makeEngine({
  layout: 'V',
  cylinders: 8,
  firingOrder: [1, 8, 4, 3, 6, 5, 7, 2],
  numbering: 'alternating',
  runningDirection: 'clockwise',
  seenFrom: 'front',
});
const v8: SetUp = { ...eightCylinders, engine };

function job(
  exhausts: readonly number[],
  intakes: readonly number[],
  changes: Partial<SetUp> = {},
): Job {
  return counted(begun({ ...v8, ...changes }), ...bothKinds(exhausts, intakes));
}

const eight = (quarters: number) => Array.from({ length: 8 }, () => quarters);
const buying = (changes: Partial<Buying>): Buying => ({
  offer: { kind: 'grid', stepMm: 25 * THOU, offsetMm: 0 },
  convention: 'tip to tip',
  spares: 0,
  ends: null,
  ...changes,
});
const inches = (mm: number | null | undefined) => Number(((mm ?? Number.NaN) / INCH).toFixed(3));

describe('lengths by groups', () => {
  test('intakes and exhausts that really differ get a length each', () => {
    // 19.54 thou a quarter on 8.000: exhausts at 97.7 keep it, intakes at 48.9 want 8.050.
    const answer = pushrodAnswer(job(eight(5), eight(2.5)).state);
    expect(answer?.taken.scheme).toBe('by valve');
    expect(answer?.choice.suggestion.reasons).toContain('difference is real');
    const lengths = answer?.taken.groups.map(({ label, lengthMm }) => [
      label.valve,
      inches(lengthMm),
    ]);
    expect(lengths).toEqual([
      ['exhaust', 8],
      ['intake', 8.05],
    ]);
    expect(answer?.taken.fits).toBe(true);
    expect(answer?.order.map(({ quantity }) => quantity)).toEqual([8, 8]);
  });

  test('a difference that is only noise gets one length', () => {
    // The means differ by a sixteenth of a quarter, 1.2 thou; 1.96 u of that is about 3.
    const intakes = eight(4.5).with(0, 4.25).with(1, 4.25);
    const answer = pushrodAnswer(job(eight(4.5), intakes).state);
    expect(answer?.taken).toMatchObject({ scheme: 'one for all', fits: true });
    expect(answer?.choice.suggestion.reasons).toContain('difference is noise');
    expect(answer?.choice.suggestion.differences.every(({ isReal }) => !isReal)).toBe(true);
  });

  test('another answer can be asked for, and each bank has its own', () => {
    const made = job(eight(4.5), eight(4.5));
    const answer = pushrodAnswer(made.state, 'by bank');
    expect(answer?.taken.scheme).toBe('by bank');
    expect(answer?.taken.groups).toHaveLength(2);
  });

  test('nothing fits: which valves, and why', () => {
    const narrow = { ...longTravel, usableMinMm: 88 * THOU, usableMaxMm: 96 * THOU };
    const window = { ...narrow, preferredMinMm: 90 * THOU, preferredMaxMm: 94 * THOU };
    const groups = [{ id: 'all', name: 'all valves', window, members: { kind: 'all' } as const }];
    const made = job(eight(4.5).slice(0, 1), [], { groups });
    const answer = pushrodAnswer(made.state);
    expect(answer?.taken.usable).toBe(0);
    expect(answer?.taken.valves[0]).toMatchObject({
      id: exhaust(1),
      whyNot: 'uncertainty wider than the window',
    });
    expect(orderTold(made.state)).toMatchObject({ fits: 0, of: 1, failing: [exhaust(1)] });
  });

  test('stock that runs out leaves valves without, and spares short', () => {
    const lines = [{ lengthMm: 8 * INCH, quantity: 6 }];
    const stocked = buying({ offer: { kind: 'stock', lines }, spares: 1 });
    const answer = pushrodAnswer(job(eight(4.5), [], { buying: stocked }).state);
    expect(answer?.taken.usable).toBe(6);
    expect(answer?.taken.valves.filter(({ whyNot }) => whyNot === 'stock runs out')).toHaveLength(
      2,
    );
    expect(answer?.choice.suggestion.reasons).toContain('stock runs out');
    expect(answer?.order).toEqual([
      expect.objectContaining({ quantity: 6, spares: 0, sparesShort: 1, left: 0 }),
    ]);
  });

  test('spares of each length from a grid', () => {
    const answer = pushrodAnswer(
      job(eight(5), eight(2.5), { buying: buying({ spares: 2 }) }).state,
    );
    expect(answer?.order.map(({ quantity, spares }) => [quantity, spares])).toEqual([
      [8, 2],
      [8, 2],
    ]);
  });

  test.each([
    [{ kind: 'grid', stepMm: 25 * THOU, offsetMm: 0 }, 8 * INCH, false],
    [{ kind: 'grid', stepMm: 25 * THOU, offsetMm: 0 }, 8.01 * INCH, true],
    [{ kind: 'grid', stepMm: 1, offsetMm: 0.4 }, 203.4, false],
    [{ kind: 'stock', lines: [{ lengthMm: 203.2, quantity: 1 }] }, 203.3, true],
  ] as const)('%o: whether %d is off what is on offer is %s', (offer, mm, off) => {
    expect(offGrid(offer, mm)).toBe(off);
  });
});

describe('what is of no use for choosing', () => {
  test('seated loose, or on a pushrod without a length', () => {
    const loose = given(counted(begun(v8), [exhaust(1), 4]), [repeat, seatedLoose]);
    expect(choosable(loose.state).leftOut).toEqual([{ valve: exhaust(1), why: 'loose' }]);
    const bare = counted(begun({ ...v8, testPushrod: null }), [exhaust(1), 4]);
    expect(choosable(bare.state).leftOut).toEqual([{ valve: exhaust(1), why: 'no length' }]);
  });

  test('a length stated the other way, until ball and hole are known', () => {
    const other = fitRod(8 * INCH, undefined, { convention: 'full ball' });
    const unknown = counted(given(begun({ ...v8, buying: buying({}) }), [other]), [intake(2), 4.5]);
    expect(choosable(unknown.state).leftOut).toEqual([
      { valve: intake(2), why: 'other convention' },
    ]);
    const end = { ballMm: (5 / 16) * INCH, holeMm: 0.1 * INCH };
    const known = buying({ ends: [end, end] });
    const told = counted(given(begun({ ...v8, buying: known }), [other]), [intake(2), 4.5]);
    // Two flats of 5/16 balls with holes of .100: .0164 shorter tip to tip.
    const [valve] = choosable(told.state).valves;
    expect((valve?.testLengthMm ?? 0) / INCH).toBeCloseTo(8 - 0.0164, 4);
  });

  test('without an engine nothing is chosen', () => {
    expect(pushrodAnswer(begun({ ...v8, engine: null, scope: [] }).state)).toBeNull();
  });
});

test('a checking pushrod: 6.800 closed and ten turns are 7.300 at zero lash, so 7.400 for 100', () => {
  const setUp: SetUp = {
    ...v8,
    testPushrod: null,
    adjuster: null,
    calling: { way: 'turns' },
    checking: { closedMm: 6.8 * INCH, perTurnMm: 50 * THOU, convention: 'tip to tip' },
  };
  const made = counted(begun(setUp), [exhaust(1), 40], [intake(1), 40]);
  const answer = pushrodAnswer(made.state);
  const [valve] = choosable(made.state).valves;
  expect(inches(valve?.testLengthMm)).toBe(7.3);
  expect(valve?.preload).toMatchObject({ preloadMm: 0, commonMm: 0 });
  // Target 90: 7.390; 7.400 is the nearest that proves both, 7.375 would stand on the limit of 75.
  expect(inches(answer?.taken.lengths[0]?.lengthMm)).toBe(7.4);
  expect((answer?.taken.valves[0]?.preload?.preloadMm ?? 0) / THOU).toBeCloseTo(100, 6);
});

test('adjustable rockers: where to stop for each group, and no order', () => {
  const groups: SetUp['groups'] = [
    { id: 'i', name: 'Intakes', window: longTravel, members: { kind: 'valve', valve: 'intake' } },
    {
      id: 'e',
      name: 'Exhausts',
      window: {
        ...longTravel,
        preferredMinMm: 60 * THOU,
        preferredMaxMm: 80 * THOU,
        usableMinMm: 50 * THOU,
      },
      members: { kind: 'valve', valve: 'exhaust' },
    },
  ];
  const made = counted(begun({ ...v8, rockers: 'adjustable', groups }), [exhaust(1), 4.5]);
  // 90 and 70 thou at 19.54: 4.61 and 3.58 quarters, to quarters of one.
  const stops = groupStops(made.state).map(({ group, stop }) => [group, stop.count48 / QUARTER]);
  expect(stops).toEqual([
    ['Intakes', 4.5],
    ['Exhausts', 3.5],
  ]);
  expect(pushrodAnswer(made.state)).toBeNull();
  expect(orderTold(made.state)).toMatchObject({ kind: 'stops' });
});
