/** A proper fraction in lowest terms; nothing over is 0/1. */
export interface Fraction {
  readonly num: number;
  readonly den: number;
}

/** The fraction num/den in lowest terms. Both whole, den at least 1. */
export function reduced(num: number, den: number): Fraction {
  const divisor = greatestCommonDivisor(num, den);
  return { num: num / divisor, den: den / divisor };
}

function greatestCommonDivisor(a: number, b: number): number {
  return b === 0 ? a : greatestCommonDivisor(b, a % b);
}
