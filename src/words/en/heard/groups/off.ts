import { command, type PhraseGroup } from '../phrase';

export const off: PhraseGroup = {
  name: 'off',
  when: 'before counting',
  fixed: [command('loosening', { type: 'loosening' }, 'loosenin', 'loose ning')],
  numbers: [],
};
