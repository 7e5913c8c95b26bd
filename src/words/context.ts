import type { Calling } from '#counting';
import type { LengthStyle, NumberStyle } from './en/numbers';

/** How much is said: figures only, whole sentences, or sentences that teach as well. */
export type TalkLevel = 'terse' | 'plain' | 'teaching';

/** Units that figures are said and shown in: thou and inches, or millimetres. */
export type Units = 'inch' | 'mm';

/** What a line depends on besides what happened. */
export interface SayingContext {
  readonly level: TalkLevel;
  readonly units: Units;
  readonly numbers: NumberStyle;
  readonly lengths: LengthStyle;
  readonly hands: 'alone' | 'with helper';
  /** A storage alarm stands: result lines end 'not kept'. */
  readonly unkept: boolean;
  /** Counts are spoken back in quarters, or in turns where the job calls turns. Quarters if absent. */
  readonly calling?: Calling['way'];
}
