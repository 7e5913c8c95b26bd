import { describe, expect, test } from 'vitest';
import { type SetUp, setUpProblems, usualWalk, type WalkChoice } from '#counting';
import { type CamCard, makeEngine } from '#valvetrain';
import { type Draft, emptyDraft } from '../../../src/screens/set-up/draft';
import { draftFrom } from '../../../src/screens/set-up/draftFrom';
import { withLifter } from '../../../src/screens/set-up/groupChanges';
import { readDraft } from '../../../src/screens/set-up/readDraft';
import { v8SetUp } from '../../fakes/setUps';

/** A whole set-up but for cam and walk. */
function filled(changes: Partial<Draft> = {}): Draft {
  const draft: Draft = {
    ...emptyDraft('inch'),
    engine: 'v-alternating-1-8-4-3-6-5-7-2',
    direction: 'clockwise',
    thread: 'M8x1.25',
    ratio: '1.7',
    pushrod: '8.150',
    ...changes,
  };
  return withLifter(draft, 0, 'long-travel-roller');
}

const empty = emptyDraft('inch');

/** Durations as typed: intake and exhaust, separation, intake centreline. */
function durations(
  intake: string,
  exhaust: string,
  separation: string,
  centreline: string,
  changes: Partial<Draft['cam']> = {},
): Draft['cam'] {
  return {
    ...empty.cam,
    form: 'durations',
    statedAt: 'seat',
    lobes: {
      intakeDurationDeg: intake,
      exhaustDurationDeg: exhaust,
      lobeSeparationDeg: separation,
      intakeCentrelineDeg: centreline,
    },
    ...changes,
  };
}

/** Events as typed: IO, IC, EO, EC. */
function events(io: string, ic: string, eo: string, ec: string, printed = {}): Draft['cam'] {
  return {
    ...empty.cam,
    form: 'events',
    statedAt: 'seat',
    events: {
      intakeOpensBeforeTdcDeg: io,
      intakeClosesAfterBdcDeg: ic,
      exhaustOpensBeforeBdcDeg: eo,
      exhaustClosesAfterTdcDeg: ec,
    },
    lobes: { ...empty.cam.lobes, ...printed },
  };
}

const fewest = { ...empty.walk, method: 'fewest stops' as const };

function found(draft: Draft) {
  return readDraft(draft).problems.map(({ field, sentence }) => [field, sentence]);
}

describe('what is taken', () => {
  test('nothing said: no cam and no walk, and a stop for each cylinder', () => {
    const { setUp, plan } = readDraft(filled());
    expect(setUp).not.toHaveProperty('cam');
    expect(setUp).not.toHaveProperty('walk');
    expect(plan?.positions.map(({ position }) => position.cylinder)).toEqual([
      1, 8, 4, 3, 6, 5, 7, 2,
    ]);
    expect(plan?.timing.basis).toBe('cautious default');
  });

  test('four events', () => {
    const cam = events('20', '60', '60', '20');
    expect(readDraft(filled({ cam })).setUp?.cam).toEqual({
      form: 'events',
      statedAt: 'seat',
      events: {
        intakeOpensBeforeTdcDeg: 20,
        intakeClosesAfterBdcDeg: 60,
        exhaustOpensBeforeBdcDeg: 60,
        exhaustClosesAfterTdcDeg: 20,
      },
    });
  });

  test('durations and separation with an advance of 4: the intake centreline is 110 less 4', () => {
    const cam = durations('224', '224°', '110', '', { placedBy: 'advance', advance: '4' });
    expect(readDraft(filled({ cam })).setUp?.cam).toEqual({
      form: 'durations',
      statedAt: 'seat',
      lobes: {
        intakeDurationDeg: 224,
        exhaustDurationDeg: 224,
        lobeSeparationDeg: 110,
        intakeCentrelineDeg: 106,
      },
    });
  });

  test('fewest stops at TDCs: number one’s firing TDC and one turn on, by the published list', () => {
    const { plan, setUp } = readDraft(filled({ walk: fewest }));
    expect(setUp?.walk).toEqual({ ...usualWalk, method: 'fewest stops' });
    const at = (place: number, kind: string) =>
      plan?.positions[place]?.position.valves
        .filter(({ valve }) => valve === kind)
        .map(({ cylinder }) => cylinder);
    expect(plan?.positions).toHaveLength(2);
    expect([at(0, 'exhaust'), at(0, 'intake')]).toEqual([
      [1, 3, 4, 8],
      [1, 2, 5, 7],
    ]);
    // Taken open for 320° about 110°, so shut for 400°: of cylinders 90° apart the worst stands 160°
    // from the middle of that, and 200 − 160 is left.
    expect(Math.min(...(plan?.positions ?? []).map((one) => one.leastMarginDeg))).toBeCloseTo(40);
  });

  test('an odd-fire engine’s angles', () => {
    const oddFire = {
      ...{ engine: 'typed', cylinders: '6', order: '1-6-5-4-3-2', layout: 'V' as const },
      ...{ numbering: 'alternating' as const, firing: 'typed' as const },
      firingAngles: '0 90, 240; 330 480 570°',
    };
    expect(readDraft(filled(oddFire)).setUp?.engine?.firingAnglesDeg).toEqual([
      0, 90, 240, 330, 480, 570,
    ]);
    expect(found(filled({ ...oddFire, firingAngles: '0 90 240 330 480' }))).toEqual([
      ['firingAngles', '5 firing angles for 6 cylinders: give one for each, in firing order.'],
    ]);
  });
});

describe('shown and read back', () => {
  const cards: readonly CamCard[] = [
    {
      form: 'events',
      statedAt: '0.050 in',
      events: {
        intakeOpensBeforeTdcDeg: -2.5,
        intakeClosesAfterBdcDeg: 41,
        exhaustOpensBeforeBdcDeg: 46,
        exhaustClosesAfterTdcDeg: -6,
      },
      alsoPrinted: { intakeDurationDeg: 218.5 },
    },
    {
      form: 'durations',
      statedAt: 'seat',
      lobes: {
        intakeDurationDeg: 279.3,
        exhaustDurationDeg: 288,
        lobeSeparationDeg: 112,
        intakeCentrelineDeg: 107.5,
      },
    },
  ];
  const walks: readonly WalkChoice[] = [
    { method: 'companion', marginDeg: 20, at: 'TDCs', prefer: 'most margin' },
    { method: 'fewest stops', marginDeg: 15, at: [0, 82.5, 400], prefer: 'most margin' },
    { method: 'fewest stops', marginDeg: 7.5, at: 'any angle', prefer: 'pistons away from TDC' },
  ];

  test.each(cards)('a cam card by $form', (cam) => {
    const setUp = v8SetUp({ cam });
    expect(setUpProblems(setUp)).toEqual([]);
    expect(readDraft(draftFrom(setUp, 'mm')).setUp).toEqual(setUp);
  });

  test.each(walks)('$method at $at', (walk) => {
    const cam = cards[1];
    const setUp: SetUp = v8SetUp(cam === undefined ? { walk } : { walk, cam });
    const { kept, ...draft } = draftFrom(setUp, 'inch');
    const odd = setUpProblems(setUp).map(({ sentence }) => sentence);
    expect(readDraft({ ...draft, kept: [...kept, ...odd] }).setUp).toEqual(setUp);
  });

  test('an odd-fire engine is shown as typed, its angles with it', () => {
    const engine = makeEngine({
      layout: 'V',
      cylinders: 6,
      firingOrder: [1, 6, 5, 4, 3, 2],
      firingAnglesDeg: [0, 90, 240, 330, 480, 570],
      numbering: 'alternating',
      runningDirection: 'clockwise',
      seenFrom: 'front',
    });
    const draft = draftFrom(v8SetUp({ engine, scope: v8SetUp().scope.slice(0, 12) }), 'inch');
    expect(draft).toMatchObject({ engine: 'typed', firingAngles: '0 90 240 330 480 570' });
    expect(readDraft(draft).setUp?.engine).toEqual(engine);
  });
});

describe('what can’t be is said beside its field, with the figures', () => {
  test.each<readonly [string, Partial<Draft>, string, string]>([
    [
      'an event past its dead centre',
      { cam: events('20', '60', '190', '20') },
      'cam.exhaustOpensBeforeBdcDeg',
      '190° can’t be the exhaust opening, before BDC: it would lie past the next dead centre, 180° away.',
    ],
    [
      'a valve that shuts before it opens',
      { cam: events('-100', '-90', '60', '20') },
      'cam.intakeOpensBeforeTdcDeg',
      'These figures have the intake open for -10°: it would shut before it opens.',
    ],
    [
      'a duration over 400',
      { cam: durations('280', '401', '110', '108') },
      'cam.exhaustDurationDeg',
      'The exhaust would be open for 401°: no cam is over 400°.',
    ],
    [
      'a duration over 400 once widened',
      { cam: durations('345', '280', '110', '108', { statedAt: '0.050 in' }) },
      'cam.intakeDurationDeg',
      'The intake would be open for 345°, which is about 405° at the seat: no cam is over 400°.',
    ],
    [
      'a separation that contradicts the events by two degrees',
      { cam: events('20', '60', '60', '20', { lobeSeparationDeg: '112' }) },
      'cam.lobeSeparationDeg',
      'The card’s lobe separation is 112°, but its events give 110°: they are 2° apart. One of them is misread.',
    ],
    [
      'a margin no position can give',
      {
        cam: durations('300', '300', '110', '108'),
        walk: { ...fewest, at: 'any angle', margin: '211' },
      },
      'walk.margin',
      'No crank position keeps cylinder 1’s intake 211° off its ramps: it is open for 300° of 720°, so 210° is the most.',
    ],
    [
      'a margin below nought',
      { walk: { ...fewest, margin: '-5' } },
      'walk.margin',
      'A margin of -5° can’t be used: give crank degrees, 0 or more.',
    ],
    [
      'a figure missing',
      { cam: events('20', '', '60', '20') },
      'cam.intakeClosesAfterBdcDeg',
      'The cam card lacks the intake closing, after BDC: give crank degrees.',
    ],
    [
      'no figure at all',
      { cam: durations('about 280', '280', '110', '108') },
      'cam.intakeDurationDeg',
      '‘about 280’ is no figure. Type digits, as 1.6 or 75.',
    ],
    [
      'no advance',
      { cam: durations('280', '280', '110', '', { placedBy: 'advance' }) },
      'cam.advance',
      'Give how many degrees the cam is advanced: 0 where it is set straight up.',
    ],
    [
      'no marked angles',
      { walk: { ...fewest, at: 'marked' } },
      'walk.marks',
      'Give the marked angles, each from 0 up to 720, as 0 90 450.',
    ],
    [
      'an order that leaves a cylinder out',
      { engine: 'typed', cylinders: '4', order: '1-2-2-4' },
      'order',
      'Cylinder 2 is in the firing order more than once: each cylinder belongs there once.',
    ],
    [
      'no order',
      { engine: 'typed', cylinders: '4' },
      'order',
      'The firing order is missing: 0 of 4 cylinders are given. Type each once, as 1-3-4-2.',
    ],
  ])('%s', (_, changes, field, sentence) => {
    const read = readDraft(filled(changes));
    expect(read.setUp).toBeNull();
    expect(read.problems.find((problem) => problem.field === field)?.sentence).toBe(sentence);
  });

  test('companions asked of five cylinders', () => {
    const five = { engine: 'typed', cylinders: '5', order: '1-2-4-5-3' };
    expect(found(filled({ ...five, walk: { ...empty.walk, method: 'companion' } }))).toEqual([
      [
        'walk.method',
        'Cylinder 1 of 5 has no companion 360° away whose valves would cross at its firing TDC. Watch its own valves instead.',
      ],
    ]);
  });
});

describe('a plan that is not safe for this cam', () => {
  // Open for 400° about 110° either side of TDC: shut 320°, so at its firing TDC 50° clear each way.
  const long = durations('400', '400', '110', '110');

  test('names each valve and by how many degrees it falls short, and is asked about', () => {
    const draft = filled({ cam: long, walk: { ...empty.walk, margin: '60' } });
    const [problem, ...others] = readDraft(draft).problems;
    expect(others).toEqual([]);
    expect(problem).toMatchObject({ field: 'walk.method', severity: 'odd' });
    expect(problem?.sentence).toMatch(
      /^Cylinder 1’s exhaust is only 50° off its ramp where this plan counts it, 10° short of the 60° wanted\. Short too: 1 intake by 10°,/,
    );
    const kept = { ...draft, kept: [problem?.sentence ?? ''] };
    expect(readDraft(kept).setUp?.walk?.marginDeg).toBe(60);
  });

  test('two stops would not do for it at 15: the fewest are three', () => {
    // (360 − 400)/2 is below nought.
    const { plan } = readDraft(filled({ cam: long, walk: { ...fewest, at: 'any angle' } }));
    expect(plan?.positions).toHaveLength(3);
    expect(plan?.positions.every(({ leastMarginDeg }) => leastMarginDeg >= 15)).toBe(true);
  });

  test('a card that does not say at what lift is widened by 30°, and asked about', () => {
    const cam = durations('224', '224', '110', '106', { statedAt: 'not known' });
    const { problems, plan } = readDraft(filled({ cam }));
    expect(problems.map(({ field, severity }) => [field, severity])).toEqual([
      ['cam.statedAt', 'odd'],
    ]);
    expect(plan?.timing).toMatchObject({ basis: 'widened', widenedByDeg: 30 });
  });
});
