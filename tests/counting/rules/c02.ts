import { call, callOf, half, oneMore, press, zero } from '../steps';
import type { Row, Rule } from './row';

const strokes = (degrees: 30 | 45 | 60 | 90, quarters: number): Row => ({
  title: `a press is one stroke of ${degrees}°`,
  job: { text: `strokes of ${degrees}°`, setUp: { calling: { way: 'strokes', degrees } } },
  given: [zero],
  when: [press, press],
  comes: [
    { counted: quarters, how: 'press' },
    { counted: 2 * quarters, how: 'press' },
  ],
  leaves: { counted: 2 * quarters },
});

export const c02: Rule = {
  number: 'C2',
  sentence:
    "A press is one more of the job's step: a quarter turn, or the stroke's angle. Spoken and pressed counts mix; 'one more' and 'another half' are spoken presses.",
  rows: [
    {
      title: 'a press is one more quarter',
      given: [zero],
      when: [press, press],
      comes: [
        { counted: 1, how: 'press' },
        { counted: 2, how: 'press' },
      ],
      leaves: { counted: 2 },
    },
    {
      title: 'spoken and pressed mix',
      given: [zero, press, call(2)],
      when: [press, call(4)],
      comes: [{ counted: 3 }, { counted: 4 }],
      leaves: { counted: 4 },
    },
    {
      title: "'one more' and 'another half' are spoken presses",
      given: [zero, call(2)],
      when: [oneMore, half],
      comes: [
        { counted: 3, how: 'press' },
        { counted: 3.5, how: 'press' },
      ],
      leaves: { counted: 3.5 },
    },
    {
      title: 'called by turns, a press is still a quarter',
      job: { text: 'called by turns', setUp: { calling: { way: 'turns' } } },
      given: [zero, callOf('one turn', 48)],
      when: [press],
      comes: [{ counted: 5 }],
      leaves: { counted: 5 },
    },
    strokes(30, 4 / 12),
    strokes(45, 6 / 12),
    strokes(60, 8 / 12),
    strokes(90, 1),
    {
      title: 'with strokes set, a spoken number is strokes, kept in quarters',
      job: { text: 'strokes of 60°', setUp: { calling: { way: 'strokes', degrees: 60 } } },
      given: [zero, callOf('two', 16), callOf('four', 32)],
      when: [callOf('six', 48)],
      comes: [{ counted: 4, how: 'number' }],
      leaves: { counted: 4 },
    },
    {
      title: 'a press beyond forty of the unit is refused',
      job: { text: 'only the last number is called', setUp: { callsLastOnly: true } },
      given: [zero, call(40)],
      when: [press],
      comes: [{ refused: 'past the most' }],
      leaves: { counted: 40 },
    },
  ],
};
