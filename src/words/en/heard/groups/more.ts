import { command, type PhraseGroup } from '../phrase';

export const more: PhraseGroup = {
  name: 'more',
  when: 'counting',
  fixed: [
    command(
      'one more',
      { type: 'step', size: 'step' },
      '1 more',
      'won more',
      'one moor',
      'one mor',
    ),
    command(
      'another half',
      { type: 'step', size: 'half quarter' },
      'another haf',
      'another 1/2',
      'another halve',
    ),
  ],
  numbers: [],
};
