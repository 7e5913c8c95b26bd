import { type Turn48, turn48 } from '#valvetrain';
import { CLOCK_RESOLUTION } from './setUp';

/**
 * Where the fastener stood past the last mark when the rocker seated.
 * `past48` is what the answer adds, in 48ths of a turn; `told` says how it was given.
 */
export interface LandingAnswer {
  readonly told:
    | 'nothing'
    | 'a bit past'
    | 'half'
    | 'just shy'
    | 'clock'
    | 'tapped'
    | 'in the count';
  readonly past48: Turn48;
}

/** The words that answer 'how far?'. */
export type LandingWord = 'nothing' | 'a bit past' | 'half' | 'just shy';

/** What a word adds past the last mark, for marks this far apart (48ths of a turn). */
export function landingOf(word: LandingWord, mark48: Turn48): LandingAnswer {
  const bit = tapOf(mark48);
  switch (word) {
    case 'nothing':
      return { told: word, past48: turn48(0) };
    case 'a bit past':
      return { told: word, past48: bit };
    case 'half':
      return { told: word, past48: turn48(Math.round(mark48 / 2)) };
    case 'just shy':
      return { told: word, past48: turn48(mark48 - bit) };
    default: {
      const never: never = word;
      return never;
    }
  }
}

/** One tap at 'how far?': a quarter of the spacing of the marks, in 48ths. */
export function tapOf(mark48: Turn48): Turn48 {
  return turn48(Math.max(1, Math.round(mark48 / 4)));
}

/** The landing after one more tap; past the last quarter it comes round to 'on the mark'. */
export function tapped(before: LandingAnswer | null, mark48: Turn48): LandingAnswer {
  const next = (before?.told === 'tapped' ? before.past48 : 0) + tapOf(mark48);
  return { told: 'tapped', past48: turn48(next >= mark48 ? 0 : next) };
}

/**
 * What a reading resolves, in 48ths: the full width it may lie in. Unasked, a whole mark; told or
 * tapped in, half a mark; by the clock, an hour. Full width r of the rectangular term (JCGM 100).
 */
export function resolutionOf(landing: LandingAnswer | null, mark48: Turn48): Turn48 {
  if (landing === null) return mark48;
  if (landing.told === 'clock') return CLOCK_RESOLUTION;
  return turn48(Math.max(1, Math.round(mark48 / 2)));
}
