import { call, position, press, zero } from '../steps';
import type { Rule } from './row';

export const c03: Rule = {
  number: 'C3',
  sentence:
    'A position within a turn is a count: the nearest such position ahead within the present turn. One that falls on the present count or behind it is asked. With its turns named it is a plain count.',
  rows: [
    {
      title: "'half turn' after one is two",
      given: [zero, call(1)],
      when: [position('half turn')],
      comes: [{ counted: 2, how: 'position' }],
      leaves: { counted: 2 },
    },
    {
      title: "'half turn' after three is asked: two, or six?",
      given: [zero, call(1), call(3)],
      when: [position('half turn')],
      comes: [{ askedBack: [2, 6], why: 'position' }],
      leaves: { counted: 3, asking: true },
    },
    {
      title: 'the answer to it is taken',
      given: [zero, call(1), call(3), position('half turn')],
      when: [call(6)],
      comes: [{ counted: 6, how: 'position' }],
      leaves: { counted: 6, asking: false },
    },
    {
      title: "'quarter turn' at one is asked: one, or five?",
      given: [zero, call(1)],
      when: [position('quarter turn')],
      comes: [{ askedBack: [1, 5], why: 'position' }],
      leaves: { counted: 1, asking: true },
    },
    {
      title: 'answered with the present count, that is said in full and the question is closed',
      given: [zero, call(1), position('quarter turn')],
      when: [call(1)],
      comes: [{ counted: 1, how: 'position' }],
      leaves: { counted: 1, asking: false },
      tells: [{ fact: 'counted' }],
    },
    {
      title: "'three quarters of a turn' in the second turn is seven",
      given: [zero, call(2), call(4), call(5)],
      when: [position('three quarters of a turn')],
      comes: [{ counted: 7 }],
      leaves: { counted: 7 },
    },
    {
      title: "'full turn' at three is four",
      given: [zero, call(2), press],
      when: [position('full turn')],
      comes: [{ counted: 4 }],
      leaves: { counted: 4 },
    },
    {
      title: "'full turn' at four is asked: four, or eight?",
      given: [zero, call(2), call(4)],
      when: [position('full turn')],
      comes: [{ askedBack: [4, 8], why: 'position' }],
    },
    {
      title: "'one and a half turns' is a count: six",
      given: [zero, call(2), call(3)],
      when: [call(6, 'turns')],
      comes: [{ counted: 6, how: 'turns' }],
      leaves: { counted: 6 },
    },
  ],
};
