import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  fewestStops,
  planAtAngles,
  type ValveId,
  valveAt,
  valveKinds,
  valvesOf,
} from '#valvetrain';
import { checkProperty } from '../valvetrain/checkProperty';
import { cam, camOf, counted, orderOf } from '../valvetrain/crank/samples';
import { engine } from '../valvetrain/samples';

function engineOf(order: string) {
  return engine(orderOf(order), { layout: 'other', numbering: 'in line' });
}

/** Every cam of 255 to 320°, both valves alike or 10° apart, separations and advances in common use. */
function* cams() {
  for (let durationDeg = 255; durationDeg <= 320; durationDeg += 1) {
    for (const apart of [-10, 0, 10]) {
      const exhaustDurationDeg = durationDeg + apart;
      if (exhaustDurationDeg < 255 || exhaustDurationDeg > 320) continue;
      for (let lobeSeparationDeg = 104; lobeSeparationDeg <= 116; lobeSeparationDeg += 2) {
        for (const advance of [-4, 0, 4]) {
          yield camOf({
            intakeDurationDeg: durationDeg,
            exhaustDurationDeg,
            lobeSeparationDeg,
            intakeCentrelineDeg: lobeSeparationDeg - advance,
          });
        }
      }
    }
  }
}

describe('two stops: number one at firing TDC, and one turn on', () => {
  test.each([
    // Service manual, maker withheld: valve clearance.
    ['1-8-4-3-6-5-7-2', '1 3 4 8', '1 2 5 7'],
    // A second service manual, maker withheld.
    ['1-8-7-2-6-5-4-3', '1 2 7 8', '1 3 4 5'],
    // Service manual, maker withheld; the firing order from memory.
    ['1-6-5-4-3-2', '1 5 6', '1 2 3'],
    // The same manual and three others, makers withheld.
    ['1-5-3-6-2-4', '1 3 5', '1 2 4'],
    // TM 5-3895-383-24 p. 6-60; TM 5-3805-258-24-1 p. 4-28.
    ['1-3-4-2', '1 3', '1 2'],
    // From memory; derived.
    ['1-2-3-4-5-6', '1 2 3', '1 5 6'],
  ])('%s: exhausts %s, intakes %s, then the rest', (order, exhausts, intakes) => {
    const e = engineOf(order);
    const rest = (list: string) =>
      valvesOf(e)
        .map(({ cylinder }) => String(cylinder))
        .filter((cylinder, place, all) => all.indexOf(cylinder) === place)
        .filter((cylinder) => !list.split(' ').includes(cylinder))
        .join(' ');
    let tried = 0;
    for (const timing of cams()) {
      const found = fewestStops(e, timing);
      if (!found.found) throw new Error(found.problem.sentence);
      const lists = found.plan.stops.map((stop) => [
        stop.angleDeg,
        counted(stop, 'exhaust'),
        counted(stop, 'intake'),
      ]);
      expect(lists).toEqual([
        [0, exhausts, intakes],
        [360, rest(exhausts), rest(intakes)],
      ]);
      tried += 1;
    }
    expect(tried).toBeGreaterThan(1000);
  });

  // Derived: a base circle of 720 - D holds, of any two places 360° apart, one that is at least half
  // of what is over 360 from its ends.
  test('any two stops 360° apart give every valve at least (360 − D)/2', () => {
    const met = { 'even-fire': 0, 'odd-fire': 0, 'below nought': 0 };
    const drawn = fc.record({
      n: fc.integer({ min: 1, max: 12 }),
      oddFire: fc.boolean(),
      gaps: fc.array(fc.integer({ min: 1, max: 20 }), { minLength: 12, maxLength: 12 }),
      intake: fc.double({ min: 150, max: 400, noNaN: true }),
      exhaust: fc.double({ min: 150, max: 400, noNaN: true }),
      separation: fc.double({ min: 95, max: 125, noNaN: true }),
      advance: fc.double({ min: -10, max: 10, noNaN: true }),
      at: fc.double({ min: 0, max: 720, noNaN: true }),
    });
    checkProperty(
      'two stops 360° apart',
      fc.property(drawn, ({ n, oddFire, gaps, intake, exhaust, separation, advance, at }) => {
        const order = Array.from({ length: n }, (_, place) => place + 1);
        const total = gaps.slice(0, n).reduce((sum, gap) => sum + gap, 0);
        const angles = order.map(
          (_, place) => (720 * gaps.slice(0, place).reduce((sum, gap) => sum + gap, 0)) / total,
        );
        met[oddFire ? 'odd-fire' : 'even-fire'] += 1;
        const e = engine(order, {
          layout: 'other',
          numbering: 'in line',
          ...(oddFire ? { firingAnglesDeg: angles } : {}),
        });
        const timing = camOf({
          intakeDurationDeg: intake,
          exhaustDurationDeg: exhaust,
          lobeSeparationDeg: separation,
          intakeCentrelineDeg: separation - advance,
        });
        const plan = planAtAngles(e, timing.events, [at, at + 360]);
        const margins = plan.stops.flatMap((stop) => stop.margins);
        expect(margins).toHaveLength(2 * n);
        for (const { valve, marginDeg } of margins) {
          const duration = valve.valve === 'intake' ? intake : exhaust;
          if (duration > 360) met['below nought'] += 1;
          expect(marginDeg).toBeGreaterThanOrEqual((360 - duration) / 2 - 1e-9);
        }
      }),
      met,
    );
  });
});

// The list: service manual, maker withheld; its firing order from memory. That all of it is shut up to
// 260°, with a separation of 112° and the intake about 108°: derived.
describe('three stops, V8 1-3-7-2-6-5-4-8: number one at firing TDC, one turn on, a quarter turn more', () => {
  const e = engineOf('1-3-7-2-6-5-4-8');
  const list = [
    { at: 0, intake: '1 4 8', exhaust: '1 3 7' },
    { at: 360, intake: '3 7', exhaust: '2 6' },
    { at: 450, intake: '2 5 6', exhaust: '4 5 8' },
  ];
  const listed = list.flatMap((stop) =>
    valveKinds.flatMap((valve) =>
      stop[valve].split(' ').map((text): { at: number; valve: ValveId } => ({
        at: stop.at,
        valve: { cylinder: Number(text), valve },
      })),
    ),
  );

  test('names each valve once', () => {
    const keys = listed.map(({ valve }) => `${valve.cylinder} ${valve.valve}`);
    expect(new Set(keys).size).toBe(16);
    expect(keys).toHaveLength(16);
  });

  test('finds every valve shut at 260° and less, the nearest to a ramp by 24°', () => {
    for (let durationDeg = 180; durationDeg <= 260; durationDeg += 1) {
      const { events } = cam(durationDeg, 112, 108);
      const margins = listed.map(({ at, valve }) => valveAt(e, events, valve, at).marginDeg);
      expect(Math.min(...margins)).toBe(24 + (260 - durationDeg) / 2);
    }
  });

  // Derived: the exhaust of 2 is a quarter turn past its firing TDC there, and opens at 360 − D/2 − 116.
  test('its nearest valve is the exhaust of 2, which meets its ramp at 308°', () => {
    const marginAt = (durationDeg: number) =>
      valveAt(e, cam(durationDeg, 112, 108).events, { cylinder: 2, valve: 'exhaust' }, 360)
        .marginDeg;
    expect(marginAt(260)).toBe(24);
    expect(marginAt(308)).toBeCloseTo(0, 9);
  });

  test('the same cam needs two stops only', () => {
    const found = fewestStops(e, cam(260, 112, 108));
    expect(found.found && found.plan.stops.map(({ angleDeg }) => angleDeg)).toEqual([0, 360]);
  });
});

// Rule of nine for inline fours, published, title not noted: valves counted 1 to 8 from the front,
// with n full open set 9 − n. It needs valves laid out alike from both ends. Margin derived.
describe('rule of nine', () => {
  test.each(['1-3-4-2', '1-2-4-3'])('inline four %s', (order) => {
    const e = engineOf(order);
    for (const layout of ['E I I E E I I E', 'I E E I I E E I']) {
      const valves = layout.split(' ').map(
        (kind, place): ValveId => ({
          cylinder: Math.floor(place / 2) + 1,
          valve: kind === 'I' ? 'intake' : 'exhaust',
        }),
      );
      for (let n = 1; n <= 8; n += 1) {
        const open = valves[n - 1]!;
        const set = valves[9 - n - 1]!;
        for (const durationDeg of [220, 260, 320]) {
          const { events } = cam(durationDeg, 110, 106);
          const centre = open.valve === 'intake' ? 360 + 106 : 360 - 114;
          const peak = e.firingOrder.indexOf(open.cylinder) * 180 + centre;
          const full = valveAt(e, events, open, peak);
          expect(full.motion).toBe('open');
          expect(full.liftShare).toBeCloseTo(1, 9);
          const shut = valveAt(e, events, set, peak);
          expect(shut.motion).toBe('shut');
          expect(shut.marginDeg).toBeCloseTo((720 - durationDeg) / 2, 9);
        }
      }
    }
  });
});

// Derived: at a firing TDC the ramps are 360 − D/2 − centreline away: 120° for 260° about 110°, 86° for
// 320° about 114°.
test('at its firing TDC both valves of a cylinder are 86 to 120° from their ramps', () => {
  const e = engineOf('1-3-4-2');
  const margins = [260, 320].flatMap((durationDeg) =>
    [110, 112, 114].flatMap((centre) =>
      valveKinds.map(
        (valve) => valveAt(e, cam(durationDeg, centre).events, { cylinder: 1, valve }, 0).marginDeg,
      ),
    ),
  );
  expect(Math.min(...margins)).toBe(86);
  expect(Math.max(...margins)).toBe(120);
});
