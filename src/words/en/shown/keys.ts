/** What a key does, on the strip of keys. */
export const keys = {
  pedal: 'Pedal: tap one more, hold for the next stage, longer to take back',
  'pedal, taps only': 'Pedal: tap one more',
  'one more': 'One more',
  half: 'Half a quarter',
  number: 'The count itself',
  'next stage': 'Next stage',
  zero: 'Zero lash',
  'seat and accept': 'Seat, accept',
  'take back': 'Take back',
  'say again': 'Say again',
  ear: 'Ear open or shut',
  listen: 'Listen while held',
} satisfies Readonly<Record<string, string>>;

/** What letting go of a held pedal would do now. */
export const letGo = {
  'take back': 'Let go: take back',
  nothing: 'Let go: nothing',
} satisfies Readonly<Record<string, string>>;
