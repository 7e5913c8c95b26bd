import fc from 'fast-check';
import { expect, test } from 'vitest';
import { eventsFromLobes, lobesFromEvents, seatTiming } from '#valvetrain';
import { checkProperty } from '../checkProperty';
import { events } from './samples';

const figure = fc.double({ min: -180, max: 400, noNaN: true });

test('either form of a card leads back to itself by way of the other', () => {
  checkProperty(
    'cam cards',
    fc.property(fc.tuple(figure, figure, figure, figure), ([a, b, c, d]) => {
      const card = events(a, b, c, d);
      const back = eventsFromLobes(lobesFromEvents(card));
      expect(Object.values(back)).toHaveLength(4);
      for (const [name, value] of Object.entries(card)) {
        expect(back[name as keyof typeof back]).toBeCloseTo(value, 9);
      }
      const lobes = {
        intakeDurationDeg: a,
        exhaustDurationDeg: b,
        lobeSeparationDeg: c,
        intakeCentrelineDeg: d,
      };
      const again = lobesFromEvents(eventsFromLobes(lobes));
      for (const [name, value] of Object.entries(lobes)) {
        expect(again[name as keyof typeof again]).toBeCloseTo(value, 9);
      }
    }),
  );
});

test('seat figures are used as they are, with nothing to say', () => {
  const card = events(30, 70, 70, 30);
  expect(seatTiming({ form: 'events', events: card, statedAt: 'seat' })).toEqual({
    events: card,
    basis: 'seat',
    widenedByDeg: 0,
    note: null,
  });
});

test('figures at 0.050 in, or at a lift nobody knows, are widened by 30° a side and say so', () => {
  for (const statedAt of ['0.050 in', 'not known'] as const) {
    const timing = seatTiming({ form: 'events', events: events(6, 38, 46, -2), statedAt });
    expect(timing.events).toEqual(events(36, 68, 76, 28));
    expect(timing.basis).toBe('widened');
    expect(timing.widenedByDeg).toBe(30);
    expect(timing.note).toMatch(/30° is added/);
    expect(timing.note).toMatch(/from memory/);
  }
});

test('a cam that is not known is 320° about 110°, and takes in every cam it says it does', () => {
  const unknown = seatTiming({ form: 'not known' });
  expect(unknown.events).toEqual(events(50, 90, 90, 50));
  expect(unknown.basis).toBe('cautious default');
  expect(unknown.note).toMatch(/not known.*320°.*110°/);
  for (let centre = 100; centre <= 120; centre += 1) {
    for (const durationDeg of [180, 260, 300]) {
      const narrower = eventsFromLobes({
        intakeDurationDeg: durationDeg,
        exhaustDurationDeg: durationDeg,
        lobeSeparationDeg: centre,
        intakeCentrelineDeg: centre,
      });
      for (const [name, value] of Object.entries(narrower)) {
        expect(value).toBeLessThanOrEqual(unknown.events[name as keyof typeof narrower]);
      }
    }
  }
});
