import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  type Engine,
  fewestStops,
  type StopFinding,
  seatTiming,
  type ValveEvents,
} from '#valvetrain';
import { shareOfRuns } from '../../shareOfRuns';
import { checkProperty } from '../checkProperty';
import { engine } from '../samples';
import {
  fewestByBruteForce,
  fewestBySolver,
  marginOf,
  openSpans,
  servedByBruteForce,
} from './referees';
import { events } from './samples';

const ENGINES = shareOfRuns(300);

const whole = (min: number, max: number) => fc.integer({ min, max });

/** Any order of 4 to 12 cylinders, evenly fired or at angles in whole degrees; events in whole degrees. */
const drawn = whole(4, 12).chain((cylinders) =>
  fc.record({
    order: fc.shuffledSubarray(
      Array.from({ length: cylinders }, (_, place) => place + 1),
      { minLength: cylinders },
    ),
    typed: fc.option(
      fc.uniqueArray(whole(1, 719), { minLength: cylinders - 1, maxLength: cylinders - 1 }),
      { nil: undefined, freq: 2 },
    ),
    intake: whole(180, 400),
    exhaust: whole(180, 400),
    intakeCentre: whole(95, 125),
    exhaustCentre: whole(95, 125),
    marginDeg: fc.oneof(whole(0, 70), whole(0, 200)),
  }),
);

/** The stops a finding needs, undefined when no position gives the margin. */
function stopsIn(finding: StopFinding): number | undefined {
  return finding.found ? finding.plan.stops.length : undefined;
}

function anglesIn(finding: StopFinding): readonly number[] {
  return finding.found ? finding.plan.stops.map(({ angleDeg }) => angleDeg) : [];
}

type Spans = ReturnType<typeof openSpans>;

/** Each valve's margin at whichever of the angles gives it most. */
function marginsAt(angles: readonly number[], spans: Spans): readonly number[] {
  return spans.map((span) => Math.max(...angles.map((angle) => marginOf(span, angle))));
}

function leastMargin(finding: StopFinding, spans: Spans): number {
  return Math.min(...marginsAt(anglesIn(finding), spans));
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}

function tdcsOf(e: Engine): readonly number[] {
  return e.firingOrder.flatMap((_, place) => {
    const tdc = e.firingAnglesDeg?.[place] ?? (place * 720) / e.cylinders;
    return [tdc, (tdc + 360) % 720];
  });
}

const everyDegree = Array.from({ length: 720 }, (_, degree) => degree);
const everyHalfDegree = Array.from({ length: 1440 }, (_, half) => half / 2);

test('as few stops, and as much margin, as a general solver and as trying every degree', () => {
  const met = {
    'odd-fire': 0,
    'whole degrees': 0,
    'between two grids': 0,
    'no position': 0,
    'two stops': 0,
    'three stops': 0,
    'four stops and more': 0,
    'TDCs need more': 0,
  };
  checkProperty(
    'fewest stops',
    fc.property(drawn, (one) => {
      const typed = one.typed && [0, ...one.typed.toSorted((a, b) => a - b)];
      const e = engine(one.order, {
        layout: 'other',
        numbering: 'in line',
        ...(typed ? { firingAnglesDeg: typed } : {}),
      });
      const io = Math.round(one.intake / 2) - one.intakeCentre;
      const ec = Math.round(one.exhaust / 2) - one.exhaustCentre;
      const card: ValveEvents = events(io, one.intake - 180 - io, one.exhaust - 180 - ec, ec);
      const cam = seatTiming({ form: 'events', events: card, statedAt: 'seat' });
      const spans = openSpans(e, card);
      const { marginDeg } = one;

      const anywhere = fewestStops(e, cam, { marginDeg, at: 'any angle' });
      const stops = stopsIn(anywhere);
      const ends = spans.flatMap(({ opensDeg, closesDeg }) => [
        opensDeg - marginDeg,
        closesDeg + marginDeg,
      ]);
      expect(stops).toBe(fewestBySolver(spans, ends, marginDeg));

      const inWholeDegrees = typed !== undefined || 720 % e.cylinders === 0;
      if (inWholeDegrees) {
        expect(stops).toBe(fewestByBruteForce(spans, everyDegree, marginDeg));
      } else {
        const strict = fewestByBruteForce(spans, everyDegree, marginDeg);
        const slack = fewestByBruteForce(spans, everyDegree, marginDeg - 0.5);
        if (strict !== undefined) expect(stops).toBeLessThanOrEqual(strict);
        if (stops !== undefined) expect(slack).toBeLessThanOrEqual(stops);
      }

      const atTdcs = fewestStops(e, cam, { marginDeg, at: 'TDCs' });
      const tdcStops = stopsIn(atTdcs);
      expect(tdcStops).toBe(fewestBySolver(spans, tdcsOf(e), marginDeg));

      if (stops !== undefined) {
        const least = leastMargin(anywhere, spans);
        expect(least).toBeGreaterThanOrEqual(marginDeg - 1e-5);
        expect(anywhere.found && anywhere.plan.shortfalls).toEqual([]);
        // In whole degrees the most margin is whole or a half, at whole or half degrees.
        if (inWholeDegrees) {
          expect(2 * least).toBeCloseTo(Math.round(2 * least), 4);
          expect(servedByBruteForce(spans, everyHalfDegree, least + 0.5, stops)).toBe(false);
        }
        const away = fewestStops(e, cam, {
          marginDeg,
          at: 'any angle',
          prefer: 'pistons away from TDC',
        });
        expect(stopsIn(away)).toBe(stops);
        expect(leastMargin(away, spans)).toBeGreaterThanOrEqual(marginDeg - 1e-5);
        expect(nearestTdc(away, e)).toBeGreaterThanOrEqual(nearestTdc(anywhere, e) - 1e-5);
        if (inWholeDegrees) {
          // As for the margin: the most clearance is whole or a half.
          const clearer = nearestTdc(away, e) + 0.5;
          const clear = everyHalfDegree.filter((angle) => fromTdcs(angle, e) >= clearer - 1e-5);
          expect(servedByBruteForce(spans, clear, marginDeg, stops)).toBe(false);
        }
      }
      if (tdcStops !== undefined) {
        const least = leastMargin(atTdcs, spans);
        expect(least).toBeGreaterThanOrEqual(marginDeg - 1e-5);
        expect(servedByBruteForce(spans, tdcsOf(e), least + 1e-3, tdcStops)).toBe(false);
        const angles = anglesIn(atTdcs);
        for (const moved of angles.flatMap((_, i) => tdcsOf(e).map((tdc) => angles.with(i, tdc)))) {
          const better = marginsAt(moved, spans);
          if (Math.min(...better) < least - 1e-5) continue;
          expect(sum(better)).toBeLessThanOrEqual(sum(marginsAt(angles, spans)) + 1e-3);
        }
      }

      if (typed) met['odd-fire'] += 1;
      met[inWholeDegrees ? 'whole degrees' : 'between two grids'] += 1;
      if (stops === undefined) met['no position'] += 1;
      else if (stops === 2) met['two stops'] += 1;
      else if (stops === 3) met['three stops'] += 1;
      else if (stops > 3) met['four stops and more'] += 1;
      if (stops !== undefined && (tdcStops ?? 99) > stops) met['TDCs need more'] += 1;
    }),
    met,
    ENGINES,
  );
});

function fromTdcs(angle: number, e: Engine): number {
  return Math.min(
    ...tdcsOf(e).map((tdc) => {
      const apart = Math.abs(angle - tdc) % 360;
      return Math.min(apart, 360 - apart);
    }),
  );
}

function nearestTdc(finding: StopFinding, e: Engine): number {
  if (!finding.found) return Number.NaN;
  return Math.min(...finding.plan.stops.map(({ angleDeg }) => fromTdcs(angleDeg, e)));
}
