import type { SoundVerdict } from '#counting';

/** Words of the sound check, English. */
export const soundCheckWords = {
  title: 'Sound check',
  lead: 'Under a minute, hands free, at the bench, with the noise you will work in. The app asks, you answer: a count from one to twelve, then six commands. It measures the room and your voice for the ear that needs no network.',
  keeps:
    'How your words sounded is kept on this device only, as a second opinion for the ear: no recording, and in no backup.',
  begin: 'Begin the sound check',
  again: 'Do it again',
  stop: 'Stop',
  fetching: (percent: number) => `Fetching the ear, ${percent} %`,
  opening: 'Opening the microphone',
  quiet: 'Quiet, please: the room is being measured',
  say: 'Say',
  progress: (done: number, of: number) => `${done} of ${of}`,
  verdicts: {
    good: 'Good',
    carrier: 'Usable: use the carrier word',
    pedal: 'Too noisy: use the pedal',
    'nothing heard': 'Nothing was heard',
  } satisfies Record<SoundVerdict, string>,
  meaning: {
    good: 'The ear hears you well here. Counts can be said bare.',
    carrier: 'Say ‘count’ before each number: ‘count five’. Noise is seldom taken for that.',
    pedal: 'Too little of what you said came through. The pedal and the keys need no quiet.',
    'nothing heard':
      'Look whether the microphone is switched on and near enough, then do it again.',
  } satisfies Record<SoundVerdict, string>,
  useCarrier: 'Use the carrier word',
  carrierUsed: 'The carrier word is in use.',
  failed: (why: string) => `The sound check could not be held. ${why}`,
  kept: 'Your words from a sound check are kept on this device.',
  forget: 'Delete them',
  forgotten: 'None of your words are kept.',
  unkept: 'This could not be kept on the device: it holds until this page is closed.',
  toSettings: 'Settings',
};
