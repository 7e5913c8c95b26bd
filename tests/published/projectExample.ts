import { startingSets, type Travel } from '#valvetrain';

/** Millimetres in one thou, worked out here and not taken from the code under test. */
export const THOU = 25.4 / 1000;

const perQuarterMm = 19.54 * THOU;
const travel = (halfWidth: number, basis: Travel['basis']): Travel => ({
  perQuarterMm,
  uMm: (perQuarterMm * halfWidth) / Math.sqrt(3),
  basis,
});

/** 19.54 thou a quarter; usable 75 to 110 thou. */
export const SET_UP = {
  byGeometry: travel(0.07, 'geometry'),
  measured: travel(0.02, 'measured'),
  window: startingSets.find(({ id }) => id === 'long-travel-roller')!.window,
};

/** The usual terms of a count: so finely read, zero felt for by up-and-down play. */
export function terms(resolution48: number) {
  return { resolution48, zeroFeelQuarters: 0.15 };
}

/** step, 2·step, … up to and including `to`. */
export function quartersBy(step: number, to: number): readonly number[] {
  return Array.from({ length: Math.round(to / step) }, (_, place) => (place + 1) * step);
}
