import { command, type PhraseGroup } from '../phrase';

export const hold: PhraseGroup = {
  name: 'hold',
  when: 'always',
  fixed: [
    command('hold on', { type: 'hold' }, 'hold it on', 'old on'),
    command('carry on', { type: 'carryOn' }, 'carrie on', 'carrion', 'kerry on'),
    {
      said: 'stop',
      written: ['stop it', 'stopp', 'stop talking'],
      commands: [],
      means: () => ({ kind: 'talk', talk: 'stop' }),
    },
  ],
  numbers: [],
};
