import { call, loosening, oclock, press, seat, zero } from '../steps';
import type { Rule } from './row';

export const c04: Rule = {
  number: 'C4',
  sentence:
    "A clock hour reads the mark on the socket: the nearest such place from half a quarter behind to three quarters ahead; any other is asked. 'Twelve' at zero is asked. Counting off, the mark runs the other way.",
  rows: [
    {
      title: "'three o'clock' after zero is one quarter",
      given: [zero],
      when: [oclock('three')],
      comes: [{ counted: 1, how: 'clock' }],
      leaves: { counted: 1 },
    },
    {
      title: "'one o'clock' at 4½ is a little behind: 4⅓",
      given: [zero, call(2), call(4), call(4.5)],
      when: [oclock('one')],
      comes: [{ counted: 4 + 1 / 3, how: 'clock' }],
      leaves: { counted: 4 + 1 / 3 },
    },
    {
      title: "'nine o'clock' at zero is three quarters ahead and taken",
      given: [zero],
      when: [oclock('nine')],
      comes: [{ counted: 3 }],
    },
    {
      title: "'ten o'clock' at zero is further, and asked",
      given: [zero],
      when: [oclock('ten')],
      comes: [{ askedBack: [3 + 1 / 3], why: 'clock' }],
      leaves: { counted: 0, asking: true },
    },
    {
      title: 'further behind than half a quarter it may be either, and is asked',
      given: [zero, call(2), call(4)],
      when: [oclock('ten')],
      comes: [{ askedBack: [3 + 1 / 3, 7 + 1 / 3], why: 'clock' }],
    },
    {
      title: "'twelve o'clock' at zero is asked: four quarters?",
      given: [zero],
      when: [oclock('twelve')],
      comes: [{ askedBack: [4], why: 'clock' }],
      leaves: { counted: 0, asking: true },
    },
    {
      title: "'twelve o'clock' again takes it",
      given: [zero, oclock('twelve')],
      when: [oclock('twelve')],
      comes: [{ counted: 4, how: 'clock' }],
      leaves: { counted: 4, asking: false },
    },
    {
      title: 'the hour the mark already stands at changes nothing',
      given: [zero, call(1)],
      when: [oclock('three')],
      comes: [{ still: 1 }],
    },
    {
      title: 'counting off, the hours run the other way',
      given: [loosening, seat, press],
      when: [oclock('six')],
      comes: [{ counted: 2 }],
    },
    {
      title: "counting off, 'nine o'clock' is the first quarter",
      given: [loosening, seat],
      when: [oclock('nine')],
      comes: [{ counted: 1, how: 'clock' }],
    },
    {
      title: 'with the clock off an hour is refused',
      job: { text: 'the clock is off', setUp: { clock: 'off' } },
      given: [zero],
      when: [oclock('three')],
      comes: [{ refused: 'clock is off' }],
    },
    {
      title: 'with the clock off an hour is refused at ‘how far?’ too',
      job: { text: 'the clock is off', setUp: { clock: 'off' } },
      given: [zero, press, seat],
      when: [oclock('four')],
      comes: [{ refused: 'clock is off' }],
    },
  ],
};
