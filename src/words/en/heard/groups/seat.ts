import { command, type PhraseGroup } from '../phrase';

export const seat: PhraseGroup = {
  name: 'seat',
  when: 'after zero; counting off, before the count',
  fixed: [
    command(
      'rocker seated',
      { type: 'seat', loose: false },
      'rocker seeded',
      'rockers seated',
      'rocker is seated',
      'rocca seated',
      'rocker ceded',
      'rocker seat it',
      'walker seated',
      'rock a seated',
    ),
    command(
      'valve seated',
      { type: 'seat', loose: false },
      'valve seeded',
      'valve is seated',
      'valve seat it',
      'valves seated',
      'valve ceded',
    ),
    command("it's down", { type: 'seat', loose: false }, 'it is down'),
    command(
      'seated loose',
      { type: 'seat', loose: true },
      'seeded loose',
      'seated lose',
      'ceded loose',
      'seated luce',
    ),
  ],
  numbers: [],
};
