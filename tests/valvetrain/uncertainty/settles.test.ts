import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type CountedValve,
  countedPreload,
  type Remedy,
  settles,
  uncertaintyMm,
  usableZone,
} from '#valvetrain';
import { checkProperty } from '../checkProperty';
import { windowInThou } from '../samples';
import { asked, byHour, travel, unasked } from './readings';

const w = windowInThou();
const exact = { ...travel, uMm: 0, basis: 'dial readings' } as const;

function remedy<K extends Remedy['kind']>(valve: CountedValve, kind: K) {
  return settles(valve, w)?.remedies.find(
    (one): one is Extract<Remedy, { kind: K }> => one.kind === kind,
  );
}

describe('what would settle a reading', () => {
  test('nothing, when it is settled', () => {
    expect(settles({ quarters: 4.5, counts: [asked], travel }, w)).toBeNull();
    expect(settles({ quarters: 1.5, counts: [asked], travel }, w)).toBeNull();
  });

  test('remedies come in order of trouble', () => {
    const found = settles({ quarters: 4, counts: [unasked], travel }, w);
    expect(found?.remedies.map(({ kind }) => kind)).toEqual([
      'measure the travel',
      'recount',
      'read by the hour',
      'dial indicator',
    ]);
    expect(found?.first?.kind).toBe('measure the travel');
  });

  test('measuring the travel is left out when it is known better already', () => {
    const found = settles({ quarters: 4, counts: [unasked], travel: exact }, w);
    expect(found?.remedies.map(({ kind }) => kind)).not.toContain('measure the travel');
  });

  test('reading by the hour is left out when it was', () => {
    const counts = [byHour];
    expect(remedy({ quarters: 4, counts, travel }, 'read by the hour')).toBeUndefined();
  });

  test('where the number stands on the limit nothing will do, and it says so', () => {
    const found = settles({ quarters: 3.75, counts: [asked], travel }, w);
    expect(found?.marginMm).toBeCloseTo(0, 9);
    expect(found?.first).toBeNull();
    for (const one of found?.remedies ?? []) expect(one.settles).toBe(false);
  });

  test('the number of counts is the least that does, what was counted already taken in', () => {
    const met = { 'a count will': 0, 'no count will': 0 };
    const terms = fc.constantFrom(asked, unasked, byHour);
    const quarters = fc.integer({ min: 30, max: 66 }).map((n) => n / 10);
    const share = fc.constantFrom(0, 0.005, 0.02, 0.07);
    checkProperty(
      'recounts',
      fc.property(
        quarters,
        fc.array(terms, { minLength: 1, maxLength: 3 }),
        share,
        (q, counts, part) => {
          const k = { ...travel, uMm: (travel.perQuarterMm * part) / Math.sqrt(3) };
          const found = settles({ quarters: q, counts, travel: k }, w);
          const recount = found?.remedies.find(({ kind }) => kind === 'recount');
          if (!found || recount?.kind !== 'recount') return;
          const last = counts[counts.length - 1]!;
          const zoneWith = (inAll: number) => {
            const more = Array.from({ length: inAll - counts.length }, () => last);
            const p = countedPreload(q, [...counts, ...more], k);
            return 1.65 * uncertaintyMm(p) <= found.marginMm * (1 + 1e-9);
          };
          if (recount.counts.enough) {
            met['a count will'] += 1;
            const { inAll, more } = recount.counts;
            expect(inAll - counts.length).toBe(more);
            expect(zoneWith(inAll)).toBe(true);
            if (more > 1) expect(zoneWith(inAll - 1)).toBe(false);
          } else {
            met['no count will'] += 1;
            expect(recount.counts.floorMm).toBeGreaterThanOrEqual(found.marginMm);
          }
        },
      ),
      met,
    );
  });

  test('a remedy that settles leaves the reading proven one way or the other', () => {
    const valve = { quarters: 4, counts: [unasked], travel: exact };
    expect(remedy(valve, 'read by the hour')?.settles).toBe(true);
    const p = countedPreload(4, [byHour], exact);
    expect(usableZone(p.preloadMm, uncertaintyMm(p), w)).toBe('proven in');
  });
});
