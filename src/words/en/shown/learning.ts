const sentences: Readonly<Record<string, string>> = {
  'learn: press once': 'Press the pedal or key once.',
  'learn: press and hold': 'Now press it and hold it down until told to let go.',
  'learn: hold longer': 'Hold it down a little longer.',
  'learn: let go': 'Let go.',
  'learn: press once more': 'Press it once more.',
  'learn: different keys, press once': 'Those were two different keys. Press one of them once.',
  'learn: cannot be held, press once': 'That key can’t be held. Press it once more.',
  'learn: done': 'Learned: tap it for one more, hold it for the next stage.',
  'learn: done, a key': 'Learned.',
  'learn: done, listen': 'Learned: the ear is open while it is held down.',
  'learn: done, taps only':
    'Learned, for taps only: it does not tell when it is let go, so it can’t be held. Use another key, or your voice, for the next stage and to take back.',
};

/** What to press next while a key is being learned; the word is a key of pressing's own. */
export function learning(word: string): string {
  return sentences[word] ?? 'Press the pedal or key once.';
}
