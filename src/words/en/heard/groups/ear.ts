import type { PhraseGroup } from '../phrase';

export const ear: PhraseGroup = {
  name: 'ear',
  when: 'always',
  fixed: [
    {
      said: 'ear shut',
      written: [
        'ears shut',
        'year shut',
        'hear shut',
        'here shut',
        'air shut',
        'ear shot',
        'earshot',
      ],
      commands: [],
      means: () => ({ kind: 'ear', ear: 'shut' }),
    },
    {
      said: 'start listening',
      written: ['start listing', 'started listening'],
      commands: [],
      means: () => ({ kind: 'ear', ear: 'open' }),
    },
  ],
  numbers: [],
};
