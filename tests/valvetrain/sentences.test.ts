import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { adjusterProblems, engineProblems, makeEngine, windowProblems } from '#valvetrain';
import { checkProperty } from './checkProperty';

/** Typed figures at their worst: blank fields, slips and nonsense beside plausible ones. */
const figure = fc.oneof(
  fc.double({ min: -10, max: 300 }),
  fc.double(),
  fc.constantFrom(0, -0, Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY),
);

describe('sentences', () => {
  test('whatever is typed, each is a whole sentence without NaN, Infinity or undefined', () => {
    const met = { adjuster: 0, window: 0, engine: 0 };
    const typed = fc.record({
      figures: fc.array(figure, { minLength: 11, maxLength: 11 }),
      order: fc.array(fc.oneof(fc.integer({ min: 0, max: 13 }), figure), { maxLength: 13 }),
      cylinders: fc.oneof(fc.integer({ min: 1, max: 12 }), figure),
    });
    checkProperty(
      'sentences',
      fc.property(typed, ({ figures, order, cylinders }) => {
        const at = (place: number) => figures[place]!;
        const kind = 'pivot' as const;
        const ofAdjuster = adjusterProblems({
          kind,
          pitchMm: at(0),
          rockerRatio: at(1),
          leanDeg: at(2),
          measuredTravelPerQuarterMm: at(3),
        });
        const ofWindow = windowProblems({
          lifter: 'hydraulic flat tappet',
          plungerTravelMm: at(4),
          keepOutTopMm: at(5),
          keepOutBottomMm: at(6),
          usableMinMm: at(7),
          usableMaxMm: at(8),
          preferredMinMm: at(9),
          preferredMaxMm: at(10),
        });
        const ofEngine = engineProblems(
          makeEngine({
            layout: 'V',
            cylinders,
            numbering: 'by bank',
            firingOrder: order,
            runningDirection: 'clockwise',
            seenFrom: 'front',
          }),
        );
        met.adjuster += ofAdjuster.length;
        met.window += ofWindow.length;
        met.engine += ofEngine.length;
        for (const { sentence } of [...ofAdjuster, ...ofWindow, ...ofEngine]) {
          expect(sentence).toMatch(/^[A-Z0-9-].*\.$/);
          expect(sentence).not.toMatch(/NaN|Infinity|undefined|null|-0\.0+ /);
        }
      }),
      met,
    );
  });
});
