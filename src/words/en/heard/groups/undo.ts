import { command, type PhraseGroup } from '../phrase';

export const undo: PhraseGroup = {
  name: 'undo',
  when: 'always',
  fixed: [
    command('take it back', { type: 'takeBack' }, 'take that back', 'takeit back', 'take it bag'),
    command('scratch that', { type: 'takeBack' }, 'scratched that', 'scratch dat'),
  ],
  numbers: [],
};
