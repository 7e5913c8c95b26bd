import { describe, expect, test } from 'vitest';
import type { SetUp } from '#counting';
import { engineFromPreset, engines, makeEngine, startingSets, withBanksSwapped } from '#valvetrain';
import { type Draft, emptyDraft } from '../../../src/screens/set-up/draft';
import { inUnits, withCounts } from '../../../src/screens/set-up/draftChanges';
import { draftFrom } from '../../../src/screens/set-up/draftFrom';
import {
  groupedBy,
  showsWindow,
  withGroup,
  withLifter,
  withNamedGroup,
  withoutGroup,
  withStartingFigures,
  withWindow,
} from '../../../src/screens/set-up/groupChanges';
import { readDraft } from '../../../src/screens/set-up/readDraft';
import { oneCylinder, v8SetUp } from '../../fakes/setUps';

const V8 = 'v-alternating-1-8-4-3-6-5-7-2';

/** The shortest road: engine, thread and ratio, lifter, test pushrod. */
function filled(units: 'inch' | 'mm', changes: Partial<Draft> = {}): Draft {
  const draft: Draft = {
    ...emptyDraft(units),
    engine: V8,
    direction: 'clockwise',
    thread: 'M8x1.25',
    ratio: '1.7',
    pushrod: units === 'inch' ? '8.150' : '207.01',
    ...changes,
  };
  return withLifter(draft, 0, 'long-travel-roller');
}

function sentenceAt(draft: Draft, field: string): string | undefined {
  return readDraft(draft).problems.find((problem) => problem.field === field)?.sentence;
}

describe('an empty form', () => {
  test('has no engine, thread, lifter or window, and says so field by field', () => {
    const { setUp, problems } = readDraft(emptyDraft('inch'));
    expect(setUp).toBeNull();
    expect(problems.map(({ field }) => field)).toEqual([
      'engine',
      'thread',
      'ratio',
      'groups.0.lifter',
      'pushrod',
    ]);
    expect(emptyDraft('mm').groups.flatMap(({ window }) => Object.values(window))).toEqual(
      Array(7).fill(''),
    );
  });
});

describe('the shortest road', () => {
  test('in inches: 8.150 in is 207.01 mm, and the starting window is in mm inside', () => {
    const { setUp, problems } = readDraft(filled('inch'));
    expect(problems).toEqual([]);
    expect(setUp?.testPushrod?.mm).toBeCloseTo(207.01, 9);
    expect(setUp?.adjuster).toEqual({
      kind: 'pivot',
      pitchMm: 1.25,
      rockerRatio: 1.7,
      leanDeg: 0,
    });
    expect(setUp?.scope).toHaveLength(16);
    expect(setUp?.name).toBe('V8, 1-8-4-3-6-5-7-2');
    expect(setUp?.groups[0]?.window.usableMinMm).toBeCloseTo(1.905, 9);
    expect(setUp?.groups[0]?.window.usableMaxMm).toBeCloseTo(2.794, 9);
  });

  test('in millimetres comes to the same set-up', () => {
    expect(readDraft(filled('mm')).setUp?.testPushrod?.mm).toBeCloseTo(207.01, 9);
    expect(readDraft(filled('mm')).setUp?.groups).toEqual(readDraft(filled('inch')).setUp?.groups);
  });

  test.each([
    ['207.01 mm', 'inch', 207.01],
    ['8.15 in', 'mm', 207.01],
    ['8.15"', 'mm', 207.01],
    ['207,01', 'mm', 207.01],
    ['8,150', 'inch', 207.01],
  ] as const)('a pushrod typed %s with the form in %s is %d mm', (pushrod, units, mm) => {
    expect(readDraft(filled(units, { pushrod })).setUp?.testPushrod?.mm).toBeCloseTo(mm, 9);
  });
});

describe('refused by name', () => {
  test.each([
    [{ ratio: '0' }, 'ratio', /rocker ratio of 0 is out of range/],
    [{ ratio: 'one six' }, 'ratio', /‘one six’ is no figure/],
    [{ thread: '' }, 'thread', /Choose the thread/],
    [{ thread: 'pitch', pitch: '' }, 'pitch', /pitch is missing/],
    [{ thread: 'pitch', pitch: '24' }, 'pitch', /threads per inch/],
    [{ thread: 'tpi', tpi: '0' }, 'tpi', /above 0/],
    [{ lean: '60' }, 'lean', /0° to 45°/],
    [{ measured: '-3' }, 'measured', /above 0/],
    [{ pushrod: '0.4' }, 'pushrod', /not a pushrod’s length/],
    [{ direction: '' as const }, 'direction', /which way the crank runs/],
    [{ engine: 'overhead cam' }, 'engine', /no pushrod/],
    [{ turns: 'shared rocker shaft or bridge' as const }, 'turns', /checking pushrod/],
    [{ which: 'one cylinder' as const, oneCylinder: '9' }, 'oneCylinder', /1 to 8/],
    [{ which: 'picked' as const }, 'picked', /No valve is ticked/],
  ])('%o', (changes, field, sentence) => {
    expect(sentenceAt(filled('inch', changes), field)).toMatch(sentence);
    expect(readDraft(filled('inch', changes)).setUp).toBeNull();
  });

  test.each([
    ['1-5-3-6-2', /Cylinder 4 is missing/],
    ['1-5-3-6-2-4-4', /Cylinder 4 is in the firing order more than once/],
    ['1-5-3-6-2-9', /has 9 in it/],
    ['', /firing order is missing/],
  ])('a typed order %s', (order, sentence) => {
    const typed = { engine: 'typed', cylinders: '6', order, layout: 'inline' } as const;
    const { problems } = readDraft(filled('inch', typed));
    expect(problems.some((one) => one.field === 'order' && sentence.test(one.sentence))).toBe(true);
  });

  test.each(['solid lifters', 'converted-solid test lifters'])('%s', (lifter) => {
    expect(sentenceAt(withLifter(filled('inch'), 0, lifter), 'groups.0.lifter')).toMatch(/plunger/);
  });

  test('a window upside down, or outside the travel, beside its own figure', () => {
    const figures = filled('inch').groups[0]!.window;
    const upside = withGroup(filled('inch'), 0, { window: { ...figures, usableMin: '120' } });
    expect(sentenceAt(upside, 'groups.0.usableMin')).toMatch(/upside down/);
    const outside = withGroup(filled('inch'), 0, { window: { ...figures, usableMax: '190' } });
    expect(sentenceAt(outside, 'groups.0.usableMax')).toMatch(/too near the bottom/);
  });
});

describe('odd figures', () => {
  test('are asked back once, and again when the figure changes', () => {
    const odd = filled('inch', { ratio: '2.1' });
    const sentence = sentenceAt(odd, 'ratio')!;
    expect(sentence).toMatch(/2\.1 is unusual/);
    const kept = { ...odd, kept: [sentence] };
    expect(readDraft(kept).setUp?.adjuster?.rockerRatio).toBe(2.1);
    expect(sentenceAt({ ...kept, ratio: '2.2' }, 'ratio')).toMatch(/2\.2 is unusual/);
  });

  test('no test pushrod is asked back for bolt-down rockers, not for adjustable ones', () => {
    expect(sentenceAt(filled('inch', { pushrod: '' }), 'pushrod')).toMatch(/no pushrod length/);
    const adjustable = filled('inch', { pushrod: '', rockers: 'adjustable' });
    expect(readDraft(adjustable).setUp?.testPushrod).toBeNull();
  });
});

describe('a set-up shown and read back', () => {
  const mm2: SetUp = v8SetUp({
    groups: [
      {
        id: 'named',
        name: 'Cylinders 1, 4',
        members: { kind: 'cylinders', cylinders: [1, 4] },
        window: { ...startingSets[0]!.window, usableMinMm: 2, usableMaxMm: 3 },
      },
      { id: 'rest', name: 'The rest', members: { kind: 'all' }, window: startingSets[1]!.window },
    ],
    testPushrod: { mm: 207.4567, convention: 'full ball' },
  });
  const running = { runningDirection: 'anticlockwise', seenFrom: 'rear' } as const;
  const typed = makeEngine({
    layout: 'V',
    cylinders: 4,
    firingOrder: [1, 3, 4, 2],
    numbering: 'typed',
    banks: [
      [1, 2],
      [3, 4],
    ],
    ...running,
  });
  const everyEngine = engines.map((preset) => engineFromPreset(preset, running));

  test.each([
    ['one cylinder', v8SetUp({ scope: oneCylinder().scope.toReversed() })],
    ['awkward figures', mm2],
    ['strokes', v8SetUp({ calling: { way: 'strokes', degrees: 45 }, hands: 'with helper' })],
    [
      'threads per inch',
      v8SetUp({
        adjuster: {
          kind: 'valve-end screw',
          pitchMm: 25.4 / 24,
          rockerRatio: 1.6,
          leanDeg: 4,
          measuredTravelPerQuarterMm: 0.171717,
        },
      }),
    ],
    [
      'a checking pushrod',
      v8SetUp({
        testPushrod: null,
        calling: { way: 'turns' },
        checking: { closedMm: 172.7201, perTurnMm: 1.2700001, convention: 'full ball' },
        zeroFeel: 'spinning',
      }),
    ],
    [
      'what the form does not ask',
      v8SetUp({
        adjuster: {
          kind: 'pivot',
          pitchMm: 1.25,
          rockerRatio: 1.7,
          leanDeg: 0,
          measuredTravelPerQuarterMm: 0.4876543,
        },
        measuredTravel: { perQuarterMm: 0.4876543, uMm: 0.0112, basis: 'two test lengths' },
        buying: {
          offer: { kind: 'stock', lines: [{ lengthMm: 207.01, quantity: 6 }] },
          convention: 'full ball',
          spares: 2,
          ends: [
            { ballMm: 7.9375, holeMm: 2.54 },
            { ballMm: 7.9375, holeMm: 3.556 },
          ],
        },
      }),
    ],
    ['picked valves', v8SetUp({ scope: [{ cylinder: 3, valve: 'intake' }] })],
    ['nothing known', v8SetUp({ engine: null, scope: [], adjuster: null, groups: [] })],
  ])('%s: the same, figure for figure, in inches, mm and back', (_, setUp) => {
    const inch = draftFrom(setUp, 'inch');
    for (const draft of [
      inch,
      draftFrom(setUp, 'mm'),
      inUnits(inch, 'mm'),
      inUnits(inUnits(inch, 'mm'), 'inch'),
    ]) {
      const read = readDraft({ ...draft, kept: readDraft(draft).problems.map((p) => p.sentence) });
      expect(read.problems).toEqual([]);
      expect(read.setUp).toEqual(setUp);
    }
  });

  test.each([...everyEngine, typed, ...everyEngine.map(withBanksSwapped)])(
    'engine $layout $cylinders $numbering $firingOrder',
    (engine) => {
      const scope = v8SetUp().scope.filter(({ cylinder }) => cylinder <= engine.cylinders);
      const setUp = v8SetUp({ engine, scope });
      const draft = draftFrom(setUp, 'inch');
      const read = readDraft({ ...draft, kept: readDraft(draft).problems.map((p) => p.sentence) });
      expect(read.setUp?.engine?.banks).toEqual(engine.banks);
      expect(read.setUp?.engine?.firingOrder).toEqual(engine.firingOrder);
      expect(read.setUp?.engine?.runningDirection).toBe('anticlockwise');
    },
  );
});

describe('pushrods', () => {
  const checking = (changes: Partial<Draft> = {}) => ({
    ...withCounts(filled('inch', { thread: '', ratio: '' }), 'checking pushrod'),
    closed: '6.800',
    ...changes,
  });

  test('a checking pushrod: 6.800 closed and 50 thou a turn, called in turns, no thread asked', () => {
    const { setUp, problems } = readDraft(checking());
    expect(problems).toEqual([]);
    expect(setUp?.checking?.closedMm).toBeCloseTo(172.72, 9);
    expect(setUp?.checking?.perTurnMm).toBeCloseTo(1.27, 9);
    expect(setUp).toMatchObject({ calling: { way: 'turns' }, testPushrod: null, adjuster: null });
    expect(withCounts(checking(), 'fastener').calling).toBe('quarters');
  });

  test.each([
    [{ closed: '' }, 'closed', /closed length/],
    [{ closed: '0.8' }, 'closed', /closed length/],
    [{ perTurn: '0' }, 'perTurn', /open it by something/],
    [{ perTurn: 'fifty' }, 'perTurn', /‘fifty’ is no figure/],
    [{ calling: 'quarters' as const }, 'calling', /call turns/],
    [{ ends: ['0.3125', '0.100', '', ''] as const }, 'ends.0', /both ends/],
  ])('%o is refused by name', (changes, field, sentence) => {
    expect(sentenceAt(checking(changes), field)).toMatch(sentence);
  });

  test('balls and holes go to what can be bought, the rest of which stays usual', () => {
    const ends = ['0.3125', '0.100', '0.3125', '0.140'] as const;
    const { setUp } = readDraft(filled('inch', { ends, convention: 'full ball' }));
    expect(setUp?.buying).toMatchObject({ convention: 'full ball', spares: 0 });
    expect(setUp?.buying?.ends?.[1].holeMm).toBeCloseTo(3.556, 9);
    const impossible = filled('inch', { ends: ['0.1', '0.3', '0.1', '0.05'] });
    expect(readDraft(impossible).problems.map((one) => one.sentence)).toEqual([
      expect.stringMatching(/wider than the oil hole/),
    ]);
  });

  test('a travel typed over the measured one is no longer as sure as that was', () => {
    const before = v8SetUp({
      adjuster: { ...v8SetUp().adjuster!, measuredTravelPerQuarterMm: 0.48 },
      measuredTravel: { perQuarterMm: 0.48, uMm: 0.01, basis: 'dial readings' },
    });
    const draft = draftFrom(before, 'mm');
    expect(readDraft(draft).setUp?.measuredTravel).toEqual(before.measuredTravel);
    expect(readDraft({ ...draft, measured: '0.49' }).setUp?.measuredTravel).toBeUndefined();
  });
});

describe('lifters', () => {
  test('figures of the builder’s own stay when another kind is chosen', () => {
    const figures = filled('inch').groups[0]!.window;
    const own = withGroup(filled('inch'), 0, { window: { ...figures, usableMin: '70' } });
    const other = withLifter(own, 0, 'short-travel-roller');
    expect(other.groups[0]!.window.usableMin).toBe('70');
    expect(withStartingFigures(other, 0).groups[0]!.window.usableMin).toBe('25');
  });

  test('starting figures give way to those of the kind chosen next', () => {
    expect(withLifter(filled('inch'), 0, 'short-travel-roller').groups[0]!.window.travel).toBe(
      '70',
    );
  });

  test.each([
    ['valve', ['intakes', 'exhausts']],
    ['bank', ['bank-1', 'bank-2']],
  ] as const)('parted by %s, each group keeps the figures there were', (by, ids) => {
    const { setUp } = readDraft(groupedBy(filled('inch'), by));
    expect(setUp?.groups.map(({ id }) => id)).toEqual(ids);
    expect(setUp?.groups[1]?.window).toEqual(setUp?.groups[0]?.window);
  });

  test('named cylinders ask for their numbers', () => {
    const named = groupedBy(filled('inch'), 'cylinders');
    expect(sentenceAt(named, 'groups.0.cylinders')).toMatch(/Name the cylinders/);
    const done = withGroup(named, 0, { members: { kind: 'cylinders', text: '1, 4 6-7' } });
    expect(readDraft(done).setUp?.groups[0]?.members).toEqual({
      kind: 'cylinders',
      cylinders: [1, 4, 6, 7],
    });
  });

  test('several groups of cylinders, each with its own lifter, and the rest', () => {
    const two = withNamedGroup(groupedBy(filled('inch'), 'cylinders'));
    const named = [
      { kind: 'cylinders', text: '1, 4' },
      { kind: 'cylinders', text: '6, 7' },
    ] as const;
    const done = withLifter(
      withGroup(withGroup(two, 0, { members: named[0] }), 1, { members: named[1] }),
      1,
      'short-travel-roller',
    );
    const { setUp, problems } = readDraft(done);
    expect(problems).toEqual([]);
    expect(setUp?.groups.map(({ name }) => name)).toEqual([
      'Cylinders 1, 4',
      'Cylinders 6, 7',
      'The rest',
    ]);
    expect(setUp?.groups[1]?.window.lifter).toBe('short-travel hydraulic roller');
    expect(draftFrom(setUp!, 'inch').groupsBy).toBe('cylinders');
    expect(readDraft(withoutGroup(done, 1)).setUp?.groups).toHaveLength(2);
    const twice = withGroup(done, 1, { members: named[0] });
    expect(sentenceAt(twice, 'groups')).toMatch(/in Cylinders 1, 4 and Cylinders 1, 4 alike/);
  });

  test.each(['inch', 'mm'] as const)(
    'a window of the builder’s own goes in whole, in %s',
    (units) => {
      const own = { ...startingSets[2]!.window, usableMinMm: 0.612345 };
      const draft = withWindow(filled(units), 0, own);
      expect(showsWindow(draft, draft.groups[0]!, own)).toBe(true);
      expect(showsWindow(draft, draft.groups[0]!, startingSets[2]!.window)).toBe(false);
      expect(readDraft(draft).setUp?.groups[0]?.window).toEqual(own);
    },
  );
});
