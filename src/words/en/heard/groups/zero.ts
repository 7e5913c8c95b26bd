import { command, type PhraseGroup } from '../phrase';

export const zero: PhraseGroup = {
  name: 'zero',
  when: 'in position, valve chosen',
  fixed: [
    command(
      'zero lash',
      { type: 'zero' },
      '0 lash',
      'zero lashed',
      'zero last',
      'zero latch',
      'xero lash',
    ),
    command('zero lash now', { type: 'zero' }, '0 lash now', 'zero last now', 'zero latch now'),
  ],
  numbers: [],
};
