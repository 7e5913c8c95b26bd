import fc from 'fast-check';
import { expect, test } from 'vitest';
import { uncertaintyMm, usableZone } from '#valvetrain';
import { checkProperty } from '../checkProperty';
import { THOU, windowInThou } from '../samples';
import { answer, chosen, sixteen, stock } from './bench';

test('an answer proves a valve usable exactly when its zone says so', () => {
  const met = { proven: 0, 'can’t tell': 0, out: 0 };
  const thou = fc.integer({ min: 0, max: 220 });
  const own = fc.integer({ min: 0, max: 12 });
  const windows = fc.constantFrom(
    windowInThou(),
    windowInThou({ travel: 130 }),
    windowInThou({ top: 0, min: 0 }),
  );
  checkProperty(
    'reach and zone',
    fc.property(
      thou,
      own,
      windows,
      fc.integer({ min: -60, max: 60 }),
      (read, u, window, length) => {
        const valves = sixteen(() => read, { ownThou: u, commonThou: 0, window: () => window });
        const [valve] = answer(chosen(valves, stock([length, 16])), 'fewest lengths').valves;
        const { preload, zone, usable } = valve!;
        expect(usable).toBe(zone === 'proven in');
        expect(zone).toBe(usableZone(preload!.preloadMm, uncertaintyMm(preload!), window));
        expect(preload!.preloadMm).toBeCloseTo((read + length) * THOU, 9);
        if (usable) met.proven += 1;
        else if (zone === 'proven out') met.out += 1;
        else met['can’t tell'] += 1;
      },
    ),
    met,
  );
});
