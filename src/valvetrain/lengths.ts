/**
 * How a pushrod's length is stated. The oil hole cuts a flat off each ball: 'tip to tip' is measured
 * over those flats, 'full ball' is the theoretical length to the balls' uncut poles.
 */
export type LengthConvention = 'tip to tip' | 'full ball';

/** A pushrod's length, mm, with the convention it is stated in. */
export interface PushrodLength {
  readonly mm: number;
  readonly convention: LengthConvention;
}
