import { command, type PhraseGroup } from '../phrase';

export const restart: PhraseGroup = {
  name: 'restart',
  when: 'counting',
  fixed: [
    command(
      'start this valve over',
      { type: 'restart' },
      'start this valve over again',
      'start this vow over',
    ),
    command('lost zero', { type: 'restart' }, 'lost 0', 'last zero', 'lost xero'),
  ],
  numbers: [],
};
