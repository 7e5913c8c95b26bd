import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type CamCard,
  camProblems,
  type LobeFigures,
  statedLifts,
  type ValveEvents,
} from '#valvetrain';
import { checkProperty } from '../checkProperty';
import { events } from './samples';

const lobes: LobeFigures = {
  intakeDurationDeg: 280,
  exhaustDurationDeg: 280,
  lobeSeparationDeg: 110,
  intakeCentrelineDeg: 106,
};

function byEvents(card: ValveEvents, changes: Partial<CamCard & { form: 'events' }> = {}): CamCard {
  return { form: 'events', events: card, statedAt: 'seat', ...changes };
}

function byLobes(changes: Partial<LobeFigures>, statedAt: 'seat' | '0.050 in' = 'seat'): CamCard {
  return { form: 'durations', lobes: { ...lobes, ...changes }, statedAt };
}

describe('a cam card', () => {
  test('that is sound has no problem, nor has one that is not known', () => {
    expect(camProblems(byEvents(events(34, 66, 74, 26), { alsoPrinted: lobes }))).toEqual([]);
    expect(camProblems(byLobes({}))).toEqual([]);
    expect(camProblems({ form: 'not known' })).toEqual([]);
  });

  test.each<[string, CamCard, string]>([
    [
      'events that cannot be: past the next dead centre',
      byEvents(events(34, 195, 74, 26)),
      '195° can’t be the intake closing, after BDC: it would lie past the next dead centre, 180° away.',
    ],
    [
      'events that cannot be: shut before it opens',
      byEvents(events(-110, -80, 74, 26)),
      'These figures have the intake open for -10°: it would shut before it opens.',
    ],
    [
      'events too far apart',
      byEvents(events(34, 66, 120, 110)),
      'The exhaust would be open for 410°: no cam is over 400°.',
    ],
    [
      'a duration over 400',
      byLobes({ intakeDurationDeg: 420, intakeCentrelineDeg: 110 }),
      'The intake would be open for 420°: no cam is over 400°.',
    ],
    [
      'a duration at 0.050 in that is over 400 at the seat',
      byLobes({ exhaustDurationDeg: 350 }, '0.050 in'),
      'The exhaust would be open for 350°, which is about 410° at the seat: no cam is over 400°.',
    ],
    [
      'a separation that contradicts the events',
      byEvents(events(34, 66, 74, 26), { alsoPrinted: { lobeSeparationDeg: 112 } }),
      'The card’s lobe separation is 112°, but its events give 110°: they are 2° apart. One of them is misread.',
    ],
    [
      'a duration that contradicts the events',
      byEvents(events(34, 66, 74, 26), { alsoPrinted: { exhaustDurationDeg: 288 } }),
      'The card’s exhaust duration is 288°, but its events give 280°: they are 8° apart. One of them is misread.',
    ],
    [
      'a centreline that cannot be',
      byLobes({ intakeCentrelineDeg: 190 }),
      '190° can’t be the intake centreline: it lies between 0 and 180° after TDC.',
    ],
    [
      'a separation that cannot be',
      byLobes({ lobeSeparationDeg: 220 }),
      '220° can’t be the lobe separation: it lies between 0 and 180°.',
    ],
    [
      'a separation that puts the exhaust where it cannot be',
      byLobes({ lobeSeparationDeg: 150, intakeCentrelineDeg: 100 }),
      'A lobe separation of 150° with an intake centreline of 100° puts the exhaust’s at 200°: it lies between 0 and 180° before TDC.',
    ],
    [
      'a figure missing',
      byEvents(events(34, Number.NaN, 74, 26)),
      'The cam card lacks the intake closing, after BDC: give crank degrees.',
    ],
    [
      'a printed figure missing',
      byEvents(events(34, 66, 74, 26), { alsoPrinted: { lobeSeparationDeg: Number.NaN } }),
      'The cam card lacks the lobe separation: give crank degrees.',
    ],
  ])('%s is refused', (_, card, sentence) => {
    const [found, ...more] = camProblems(card);
    expect(found).toMatchObject({ severity: 'refused', sentence });
    expect(more).toEqual([]);
  });

  test('a difference of a whole degree is a card’s rounding', () => {
    const printed = (lobeSeparationDeg: number) =>
      camProblems(byEvents(events(34, 66, 74, 26), { alsoPrinted: { lobeSeparationDeg } }));
    expect(printed(111)).toEqual([]);
    expect(printed(109)).toEqual([]);
    expect(printed(111.1)).toHaveLength(1);
  });

  test.each<[string, CamCard, string, string]>([
    [
      'a short duration',
      byLobes({ intakeDurationDeg: 170 }),
      'short',
      'The intake would be open for only 170°, under 180°. Confirm it if it is right.',
    ],
    [
      'an intake that would open after TDC by a slip of sign',
      byEvents(events(-34, 66, 74, 26)),
      'unusual',
      'These figures put the intake centreline at 140°; most lie from 100 to 120°. Check the signs, and confirm it if it is right.',
    ],
    [
      'a lift that is not known',
      { form: 'events', events: events(6, 38, 46, -2), statedAt: 'not known' },
      'lift not known',
      'At what lift are the durations stated? Until that is known 30° is added on each side, as for figures at 0.050 in.',
    ],
  ])('%s is asked about', (_, card, code, sentence) => {
    expect(camProblems(card)).toEqual([
      expect.objectContaining({ code, severity: 'odd', sentence }),
    ]);
  });

  test('whatever is typed, each problem is a whole sentence without NaN, Infinity or undefined', () => {
    const met = { refused: 0, odd: 0, none: 0 };
    const figure = fc.oneof(
      fc.integer({ min: -200, max: 450 }),
      fc.double(),
      fc.constantFrom(Number.NaN, Number.POSITIVE_INFINITY, -0),
    );
    const likely = fc.integer({ min: 95, max: 115 });
    const typed = fc.record({
      figures: fc.oneof(
        fc.tuple(figure, figure, figure, figure),
        fc.tuple(likely, likely, likely, likely),
      ),
      printed: figure,
      statedAt: fc.constantFrom(...statedLifts),
      form: fc.constantFrom('events' as const, 'durations' as const),
    });
    checkProperty(
      'cam problems',
      fc.property(typed, ({ figures: [a, b, c, d], printed, statedAt, form }) => {
        const card: CamCard =
          form === 'events'
            ? {
                form,
                events: events(a - 70, b - 30, c - 30, d - 70),
                statedAt,
                alsoPrinted: { lobeSeparationDeg: printed },
              }
            : {
                form,
                statedAt,
                lobes: {
                  intakeDurationDeg: 2 * a,
                  exhaustDurationDeg: 2 * b,
                  lobeSeparationDeg: c,
                  intakeCentrelineDeg: d,
                },
              };
        const found = camProblems(card);
        if (found.length === 0) met.none += 1;
        for (const { sentence, severity } of found) {
          met[severity] += 1;
          expect(sentence).toMatch(/^[A-Z0-9-].*[.?]$/);
          expect(sentence).not.toMatch(/NaN|Infinity|undefined|null/);
        }
      }),
      met,
    );
  });
});
