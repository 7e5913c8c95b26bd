import { describe, expect, test } from 'vitest';
import {
  eventsFromLobes,
  exhaustCentrelineDeg,
  exhaustLobe,
  intakeClosingDeg,
  intakeLobe,
  lobesFromEvents,
  overlapDeg,
} from '#valvetrain';
import { events } from '../valvetrain/crank/samples';

describe('cam cards', () => {
  // Published worked example, title not noted: one cam straight up, advanced and retarded by 5°.
  test.each([
    ['straight up', events(20, 60, 60, 20), 110, 110],
    ['5° advanced', events(25, 55, 65, 15), 105, 115],
    ['5° retarded', events(15, 65, 55, 25), 115, 105],
  ])('260° a valve, %s', (_, card, intakeCentreline, exhaustCentreline) => {
    const lobes = lobesFromEvents(card);
    expect(lobes).toEqual({
      intakeDurationDeg: 260,
      exhaustDurationDeg: 260,
      lobeSeparationDeg: 110,
      intakeCentrelineDeg: intakeCentreline,
    });
    expect(exhaustCentrelineDeg(lobes)).toBe(exhaustCentreline);
    expect(eventsFromLobes(lobes)).toEqual(card);
  });

  // Published example, title not noted.
  test('IO 6, IC 42, EC 12: 228° about 108°, overlap 18°', () => {
    expect(intakeLobe(6, 42)).toEqual({ durationDeg: 228, centrelineDeg: 108 });
    expect(overlapDeg({ intakeOpensBeforeTdcDeg: 6, exhaustClosesAfterTdcDeg: 12 })).toBe(18);
  });

  // TM 9-8000 p. 2-36: IO 28, EC 45, intake open 279°, overlap 73°. Closing and centreline derived.
  test('IO 28, EC 45, 279°: overlap 73°, IC 71°, about 111.5°', () => {
    expect(overlapDeg({ intakeOpensBeforeTdcDeg: 28, exhaustClosesAfterTdcDeg: 45 })).toBe(73);
    expect(intakeClosingDeg(28, 279)).toBe(71);
    expect(intakeLobe(28, 71)).toEqual({ durationDeg: 279, centrelineDeg: 111.5 });
  });

  // Derived.
  test('224°/224°, separation 110°, about 106°: 6-38/46-(-2)', () => {
    const card = eventsFromLobes({
      intakeDurationDeg: 224,
      exhaustDurationDeg: 224,
      lobeSeparationDeg: 110,
      intakeCentrelineDeg: 106,
    });
    expect(card).toEqual(events(6, 38, 46, -2));
    expect(exhaustLobe(46, -2)).toEqual({ durationDeg: 224, centrelineDeg: 114 });
  });
});
