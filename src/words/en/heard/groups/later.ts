import { command, type PhraseGroup } from '../phrase';

export const later: PhraseGroup = {
  name: 'later',
  when: 'after seating',
  fixed: [
    command(
      'torqued down',
      { type: 'torqued' },
      'talked down',
      'torque down',
      'torked down',
      'torched down',
      'torqued it down',
    ),
    command('bled down', { type: 'pushrodsLoose' }, 'bled it down', 'bled town'),
    command(
      'pushrods loose',
      { type: 'pushrodsLoose' },
      'push rods loose',
      'push rods lose',
      'pushrods are loose',
      'push rods are loose',
      'pushrod loose',
      'push rod loose',
    ),
  ],
  numbers: [],
};
