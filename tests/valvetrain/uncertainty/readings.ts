import { type CountTerms, countedPreload, type Travel, type UncertainPreload } from '#valvetrain';
import { THOU } from '../samples';

/** 20 thou a quarter, ± 7 %: round figures for tests of rules, not of values. */
export const travel: Travel = {
  perQuarterMm: 20 * THOU,
  uMm: (20 * THOU * 0.07) / Math.sqrt(3),
  basis: 'geometry',
};

export const asked: CountTerms = { resolution48: 6, zeroFeelQuarters: 0.15 };
export const unasked: CountTerms = { resolution48: 12, zeroFeelQuarters: 0.15 };
export const byHour: CountTerms = { resolution48: 4, zeroFeelQuarters: 0.15 };

/** A reading so many times counted, the usual way. */
export function counted(quarters: number, times = 1): UncertainPreload {
  return countedPreload(
    quarters,
    Array.from({ length: times }, () => asked),
    travel,
  );
}
