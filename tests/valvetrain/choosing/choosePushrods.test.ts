import { describe, expect, test } from 'vitest';
import { choosePushrods, orderList, valveKey } from '#valvetrain';
import { THOU, windowInThou } from '../samples';
import { answer, chosen, engine, every, lengthsOf, sixteen, stock, suggested } from './bench';

/** Counting noise that means nothing: the same for intakes and exhausts, and on both banks. */
const noise = (cylinder: number) => [0, 4, -4, 2][Math.floor((cylinder - 1) / 2)] ?? 0;

describe('one length', () => {
  test('for valves that differ only by noise, though each by itself may be can’t tell', () => {
    const choice = chosen(
      sixteen(({ cylinder }) => 115 + noise(cylinder)),
      every(25),
    );
    expect(choice.suggestion).toMatchObject({ scheme: 'one for all' });
    expect(lengthsOf(suggested(choice))).toEqual([[-25, 16]]);
    expect(suggested(choice)).toMatchObject({ usable: 16, of: 16, fits: true });
  });

  test('a difference of two thou between intakes and exhausts is named as noise', () => {
    const choice = chosen(
      sixteen(({ valve }) => (valve === 'intake' ? 91 : 89)),
      every(25),
    );
    expect(choice.suggestion).toMatchObject({
      scheme: 'one for all',
      reasons: ['one length serves as many', 'difference is noise'],
      differences: [{ by: 'valve', isReal: false }],
    });
  });

  test('a real difference that one length serves buys no second', () => {
    const choice = chosen(
      sixteen(({ valve }) => (valve === 'intake' ? 94 : 88)),
      every(25),
    );
    expect(choice.suggestion).toMatchObject({
      scheme: 'one for all',
      reasons: ['one length serves as many', 'difference is real but one length serves'],
      differences: [{ by: 'valve', isReal: true }],
    });
  });

  test('the nearest to target among those that prove as many; of two alike the shorter', () => {
    expect(
      lengthsOf(
        answer(
          chosen(
            sixteen(() => 88),
            every(5),
          ),
          'one for all',
        ),
      ),
    ).toEqual([[0, 16]]);
    expect(
      lengthsOf(
        answer(
          chosen(
            sixteen(() => 85),
            every(10),
          ),
          'one for all',
        ),
      ),
    ).toEqual([[0, 16]]);
  });
});

describe('more lengths', () => {
  test('intakes and exhausts that really differ, when it makes more of them usable', () => {
    const choice = chosen(
      sixteen(({ valve }) => (valve === 'intake' ? 115 : 65)),
      every(25),
    );
    expect(choice.suggestion).toMatchObject({ scheme: 'by valve' });
    expect(choice.suggestion.reasons).toContain('difference is real');
    expect(lengthsOf(suggested(choice))).toEqual([
      [-25, 8],
      [25, 8],
    ]);
    expect(suggested(choice).groups.map(({ label }) => label)).toEqual([
      { valve: 'intake' },
      { valve: 'exhaust' },
    ]);
  });

  test('banks that really differ', () => {
    const choice = chosen(
      sixteen(({ cylinder }) => (cylinder % 2 === 1 ? 115 : 65)),
      every(25),
    );
    expect(choice.suggestion.scheme).toBe('by bank');
    expect(lengthsOf(suggested(choice))).toEqual([
      [-25, 8],
      [25, 8],
    ]);
  });

  test('one kind of one bank: the two factors together', () => {
    const choice = chosen(
      sixteen(({ cylinder, valve }) => (cylinder % 2 === 1 && valve === 'intake' ? 160 : 90)),
      every(25),
    );
    expect(choice.suggestion.scheme).toBe('by bank and valve');
    expect(choice.differences.find(({ by }) => by === 'together')?.isReal).toBe(true);
    expect(lengthsOf(suggested(choice))).toEqual([
      [-75, 4],
      [0, 12],
    ]);
  });

  test('a single valve that one length would prove out gets its own', () => {
    const choice = chosen(
      sixteen(({ cylinder, valve }) => (cylinder === 3 && valve === 'exhaust' ? 165 : 90)),
      every(25),
    );
    expect(choice.suggestion.scheme).toBe('fewest lengths');
    expect(choice.suggestion.reasons).toContain('a valve would be proven out');
    expect(lengthsOf(suggested(choice))).toEqual([
      [-75, 1],
      [0, 15],
    ]);
  });

  test('a mean may be proven usable and one of its readings proven not to be', () => {
    const choice = chosen(
      sixteen(({ cylinder, valve }) => (cylinder === 3 && valve === 'exhaust' ? 128 : 90)),
      every(25),
    );
    const spoilt = answer(choice, 'one for all').valves.filter(({ usable }) => !usable);
    expect(spoilt).toMatchObject([
      { id: { cylinder: 3, valve: 'exhaust' }, whyNot: 'own reading proven out' },
    ]);
    expect(choice.suggestion.scheme).toBe('fewest lengths');
  });

  test('readings 25 apart share a length two by two: six readings, three lengths', () => {
    const read = [50, 75, 100, 125, 150, 175, 50, 75];
    const choice = chosen(
      sixteen(({ cylinder }) => read[cylinder - 1] ?? 0, { ownThou: 1, commonThou: 0 }),
      every(5),
    );
    const fewest = answer(choice, 'fewest lengths');
    expect(fewest).toMatchObject({ usable: 16 });
    expect(fewest.lengths).toHaveLength(3);
  });
});

describe('what can’t be had', () => {
  test('a window narrower than the uncertainty: nothing could be proven, and it says so', () => {
    const choice = chosen(
      sixteen(() => 90, { ownThou: 12, commonThou: 8 }),
      every(25),
    );
    const fewest = answer(choice, 'fewest lengths');
    expect(fewest.usable).toBe(0);
    expect(new Set(fewest.valves.map(({ whyNot }) => whyNot))).toEqual(
      new Set(['uncertainty wider than the window']),
    );
    expect(lengthsOf(fewest)).toEqual([[0, 16]]);
  });

  test('lengths too far apart: none on offer reaches them', () => {
    const choice = chosen(
      sixteen(() => 90),
      stock([60, 20], [-60, 20]),
    );
    expect(choice.suggestion.reasons).toContain('nothing fits all');
    expect(suggested(choice).valves[0]?.whyNot).toBe('no length on offer');
    expect(suggested(choice).fits).toBe(false);
  });

  test('groups that want different lengths, and have to share one', () => {
    const choice = chosen(
      sixteen(({ valve }) => (valve === 'intake' ? 115 : 65)),
      every(25),
    );
    const shared = answer(choice, 'one for all').valves.filter(({ usable }) => !usable);
    expect(shared.length).toBeGreaterThan(0);
    expect(new Set(shared.map(({ whyNot }) => whyNot))).toEqual(new Set(['shared length']));
  });

  test('stock that runs out: as many as it goes round for, the rest without, said so', () => {
    const choice = chosen(
      sixteen(() => 115),
      stock([-25, 12], [50, 20]),
    );
    const fewest = answer(choice, 'fewest lengths');
    expect(fewest.usable).toBe(12);
    const without = fewest.valves.filter(({ lengthMm }) => lengthMm === null);
    expect(without).toHaveLength(4);
    for (const valve of without) {
      expect(valve).toMatchObject({ whyNot: 'stock runs out', preload: null, zone: null });
    }
    expect(suggested(choice).usable).toBe(12);
    expect(lengthsOf(suggested(choice))).toEqual([[-25, 12]]);
    expect(choice.suggestion.reasons).toContain('stock runs out');
  });

  test('a group goes without as a whole rather than be split', () => {
    const one = answer(
      chosen(
        sixteen(() => 90),
        stock([0, 15]),
      ),
      'one for all',
    );
    expect(one.lengths).toEqual([]);
    expect(new Set(one.valves.map(({ whyNot }) => whyNot))).toEqual(new Set(['stock runs out']));
  });

  test('no valves are no question; a bad offer is none either', () => {
    expect(choosePushrods([], every(25), engine)).toBeNull();
    expect(() =>
      chosen(
        sixteen(() => 90),
        every(0),
      ),
    ).toThrow(/step between lengths/);
    expect(() =>
      chosen(
        sixteen(() => 90),
        stock(),
      ),
    ).toThrow(/no pushrod in the stock/);
  });
});

describe('predictions', () => {
  test('every valve by its own reading, with both shares as they were', () => {
    const valves = sixteen(({ cylinder }) => 110 + cylinder);
    const choice = chosen(valves, every(25));
    for (const each of choice.answers) {
      expect(each.valves.map(({ id }) => valveKey(id)).toSorted()).toEqual(
        valves.map(({ id }) => valveKey(id)).toSorted(),
      );
      for (const { id, lengthMm, preload, verdict, zone } of each.valves) {
        const valve = valves.find((one) => valveKey(one.id) === valveKey(id))!;
        const moved = valve.preload.preloadMm + lengthMm! - valve.testLengthMm;
        expect(preload?.preloadMm).toBeCloseTo(moved, 9);
        expect(preload).toMatchObject({
          ownMm: valve.preload.ownMm,
          commonMm: valve.preload.commonMm,
        });
        expect(verdict?.cantTell).toBe(zone === "can't tell");
      }
    }
  });

  test('cylinders with other lifters are judged by their own window', () => {
    const short = windowInThou({ min: 20, max: 60, preferredMin: 30, preferredMax: 50 });
    const isOther = (cylinder: number) => cylinder === 1 || cylinder === 4;
    const choice = chosen(
      sixteen(({ cylinder }) => (isOther(cylinder) ? 40 : 90), {
        window: ({ cylinder }) => (isOther(cylinder) ? short : windowInThou()),
      }),
      every(25),
    );
    expect(lengthsOf(answer(choice, 'one for all'))).toEqual([[0, 16]]);
    expect(answer(choice, 'one for all').groups[0]?.pools).toHaveLength(2);
    expect(suggested(choice).fits).toBe(true);
  });

  test('an engine in one row has no answers by bank', () => {
    const row = choosePushrods(
      sixteen(() => 90),
      every(25),
      { banks: [[1, 2, 3, 4, 5, 6, 7, 8]] },
    );
    expect(row?.answers.map(({ scheme }) => scheme)).toEqual([
      'one for all',
      'by valve',
      'fewest lengths',
    ]);
  });

  test('test lengths may differ from valve to valve', () => {
    const valves = sixteen(({ cylinder }) => (cylinder === 5 ? 140 : 90)).map((valve) =>
      valve.id.cylinder === 5 ? { ...valve, testLengthMm: valve.testLengthMm + 50 * THOU } : valve,
    );
    expect(lengthsOf(answer(chosen(valves, every(25)), 'fewest lengths'))).toEqual([[0, 16]]);
  });
});

describe('the order', () => {
  const valves = sixteen(({ valve }) => (valve === 'intake' ? 115 : 65));

  test('a line a length, with spares', () => {
    const lines = orderList(suggested(chosen(valves, every(25))), every(25), 1);
    expect(lines).toMatchObject([
      { quantity: 8, spares: 1, sparesShort: 0, left: null },
      { quantity: 8, spares: 1, sparesShort: 0, left: null },
    ]);
  });

  test('from stock no more spares than there are', () => {
    const offer = stock([-25, 9], [25, 20]);
    const lines = orderList(suggested(chosen(valves, offer)), offer, 2);
    expect(lines).toMatchObject([
      { quantity: 8, spares: 1, sparesShort: 1, left: 0 },
      { quantity: 8, spares: 2, sparesShort: 0, left: 10 },
    ]);
  });

  test.each([[-1], [0.5]])('not %d spares', (spares) => {
    expect(() => orderList(suggested(chosen(valves, every(25))), every(25), spares)).toThrow(
      RangeError,
    );
  });
});
