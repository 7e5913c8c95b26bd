import { QUARTER, TURN, type Turn48 } from '#valvetrain';

/** A count as it is drawn: the whole units and a fraction in lowest terms; `num` 0 has no fraction. */
export interface CountParts {
  readonly whole: number;
  readonly num: number;
  readonly den: number;
}

/** What a count is told in on the dial. */
export type CountUnit = 'quarters' | 'turns';

/** Splits a count (48ths of a turn) into whole units and the rest. */
export function countParts(count48: Turn48, unit: CountUnit): CountParts {
  const size = unit === 'turns' ? TURN : QUARTER;
  const rest = count48 % size;
  const divisor = greatestDivisor(rest, size);
  return { whole: Math.floor(count48 / size), num: rest / divisor, den: size / divisor };
}

/** The same in a line of text: '4', '4 1/2', '1/2'. */
export function countText({ whole, num, den }: CountParts): string {
  if (num === 0) return String(whole);
  return whole === 0 ? `${num}/${den}` : `${whole} ${num}/${den}`;
}

function greatestDivisor(a: number, b: number): number {
  return a === 0 ? b : greatestDivisor(b % a, a);
}
