import type { CrankStop } from '#counting';
import { describeProof, type Proof } from '#valvetrain';

/** Where the crank should be, where its turn may not be told. */
export function crankLine(place: string | null) {
  return place === null ? 'Is the crank there?' : `Is the crank at ${place}?`;
}

/** The only line of the screen that turns the crank. */
export function turnLine(
  place: string,
  { turnDeg, companion, proof, again, first }: Omit<CrankStop, 'position'>,
  count: string,
) {
  const watch = companion === null ? shownBy(proof) : ` Watch ${companion} cross.`;
  const there = count === '' ? '' : ` ${count}`;
  if (again) return `Gone past: round again, two turns in its running direction.${watch}${there}`;
  if (first !== null) {
    const mark = describeProof(first.proof);
    return `${mark} From there turn the crank ${degrees(first.turnDeg)} to ${place}.${watch}${there}`;
  }
  const how =
    turnDeg === null ? 'in its running direction' : `${degrees(turnDeg)} in its running direction`;
  return `Turn the crank ${how} to ${place}.${watch}${there}`;
}

function shownBy(proof: Proof | null): string {
  return proof === null ? '' : ` ${describeProof(proof)}`;
}

/** An angle as shown: whole, or to a tenth where an engine's are not. */
export function degrees(deg: number): string {
  return `${Math.round(deg * 10) / 10}°`;
}
