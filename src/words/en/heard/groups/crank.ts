import { command, type PhraseGroup } from '../phrase';

export const crank: PhraseGroup = {
  name: 'crank',
  when: 'positioning the crank',
  fixed: [
    command(
      'cautions heard',
      { type: 'cautionsHeard' },
      'caution heard',
      'cautions herd',
      'cautions are heard',
    ),
    command(
      'hands clear',
      { type: 'handsClear' },
      'hands are clear',
      'hand clear',
      "hand's clear",
      'hands claire',
      'hand sclear',
    ),
    command(
      "crank's there",
      { type: 'crankThere' },
      'crank is there',
      'cranks their',
      "cranks they're",
      'crank there',
      'crank there now',
    ),
    command('overshot', { type: 'overshot' }, 'over shot', 'overshoot', 'over shoot'),
    command('gone past', { type: 'overshot' }, 'gone passed', 'gone past it'),
    command('next position', { type: 'next', cylinder: true }, 'next positions'),
  ],
  numbers: [],
};
