import { call, half, press, zero } from '../steps';
import type { Rule } from './row';

export const c01: Rule = {
  number: 'C1',
  sentence:
    'A spoken number is the count itself, not one more. A number that was not heard is put right by the next; the same number again changes nothing.',
  rows: [
    {
      title: 'a number is the count',
      given: [zero, call(1)],
      when: [call(2)],
      comes: [{ counted: 2, how: 'number' }],
      leaves: { counted: 2 },
    },
    {
      title: "if 'three' was not heard, 'four' puts it right",
      given: [zero, call(1), call(2)],
      when: [call(4)],
      comes: [{ counted: 4 }],
      leaves: { counted: 4 },
    },
    {
      title: "the same number again is answered 'still four'",
      given: [zero, call(2), call(4)],
      when: [call(4)],
      comes: [{ still: 4 }],
      leaves: { counted: 4 },
      tells: [{ fact: 'still', cue: 'soft' }],
    },
    {
      title: 'the same number again is not one more, however often',
      given: [zero, call(2)],
      when: [call(2), call(2), call(2)],
      comes: [{ still: 2 }, { still: 2 }, { still: 2 }],
      leaves: { counted: 2 },
    },
    {
      title: 'a number may stand between marks',
      given: [zero, call(2), call(4)],
      when: [call(4.5)],
      comes: [{ counted: 4.5 }],
      leaves: { counted: 4.5 },
    },
    {
      title: 'a number after presses is the count, not added to them',
      given: [zero, press, press, half],
      when: [call(3)],
      comes: [{ counted: 3 }],
      leaves: { counted: 3 },
    },
    {
      title: 'more than forty of the unit is refused',
      job: { text: 'only the last number is called', setUp: { callsLastOnly: true } },
      given: [zero, call(40)],
      when: [call(41)],
      comes: [{ refused: 'past the most' }],
      leaves: { counted: 40 },
    },
  ],
};
