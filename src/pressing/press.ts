/** What a key or pedal asked for. */
export type Press =
  | { readonly kind: 'step'; readonly times: 1 }
  | { readonly kind: 'half' }
  | { readonly kind: 'number'; readonly value: number }
  | { readonly kind: 'take back' }
  | { readonly kind: 'next stage' }
  | { readonly kind: 'zero' }
  | { readonly kind: 'seat and accept' }
  | { readonly kind: 'say again' }
  | { readonly kind: 'ear' }
  | { readonly kind: 'listen'; readonly on: boolean };

/** What letting go of the pedal would do now, once a hold is more than a tap. */
export type HoldReached = 'next stage' | 'take back' | 'nothing';

/** For tones and the screen while the pedal is held; changes nothing on the bench. */
export type PressCue =
  | { readonly kind: 'hold'; readonly reached: HoldReached }
  | { readonly kind: 'hold ended' };
