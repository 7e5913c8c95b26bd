import { inConvention, type LengthConvention, type PushrodLength } from '#valvetrain';
import { lengthConvention, type SetUp } from '../setUp';

/**
 * A length by the convention pushrods are chosen in, mm. Null where it is stated the other way and
 * the balls and oil holes are not known.
 */
export function lengthIn(setUp: SetUp, length: PushrodLength): number | null {
  return lengthAs(setUp, length, lengthConvention(setUp));
}

/** A length by either convention, mm; null where that can't be told. */
export function lengthAs(
  { buying }: SetUp,
  length: PushrodLength,
  convention: LengthConvention,
): number | null {
  if (length.convention === convention) return length.mm;
  return buying?.ends == null ? null : inConvention(length, convention, buying.ends).mm;
}
