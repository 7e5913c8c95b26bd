/** A lean all to one side that no repeat removes and the uncertainty does not hold. */
export interface OneSidedBias {
  readonly code: 'drag felt at zero';
  /** What the truth is, beside the number counted. */
  readonly truePreloadIs: 'a little more';
  /** How often it is to be told. */
  readonly say: 'once a job';
}

/**
 * Zero is called at the first drag felt, and to be felt the drag must already have begun: the true
 * preload is a little more than counted, on every valve alike. Said, never corrected.
 */
export const zeroBias: OneSidedBias = {
  code: 'drag felt at zero',
  truePreloadIs: 'a little more',
  say: 'once a job',
};
