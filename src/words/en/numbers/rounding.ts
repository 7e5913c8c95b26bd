/** Units a length is said or written in. */
export type LengthUnit = 'thou' | 'mm';

/** Whole numbers in one millimetre's worth of each unit, kept as a fraction so that 25.4 is exact. */
const PER_MM: Record<LengthUnit, { readonly num: number; readonly den: number }> = {
  thou: { num: 10_000, den: 254 },
  mm: { num: 1, den: 1 },
};

/** A figure that reads as a half only because of binary rounding still rounds as a half. */
const TIE_SLACK = 1e-9;

/**
 * A length as a whole number of steps of 10^-decimals of the unit, halves away from zero.
 * Never -0, so nothing is said or written as 'minus zero'.
 */
export function toSteps(mm: number, unit: LengthUnit, decimals: number): number {
  const { num, den } = PER_MM[unit];
  const steps = Math.floor((Math.abs(mm) * num * 10 ** decimals) / den + 0.5 + TIE_SLACK);
  return mm < 0 && steps !== 0 ? -steps : steps;
}

/** The length in millimetres that a whole number of steps of 10^-decimals of the unit stands for. */
export function fromSteps(steps: number, unit: LengthUnit, decimals: number): number {
  const { num, den } = PER_MM[unit];
  return (steps * den) / (num * 10 ** decimals);
}
