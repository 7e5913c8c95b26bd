import { command, type PhraseGroup } from '../phrase';

export const again: PhraseGroup = {
  name: 'again',
  when: 'after seating',
  fixed: [
    command(
      'count it again',
      { type: 'repeat' },
      'counted again',
      'count at again',
      'counter again',
    ),
  ],
  numbers: [],
};
