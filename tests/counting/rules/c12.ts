import { call, half, press, seat, takeBack, zero } from '../steps';
import type { Rule } from './row';

const last = { text: 'only the last number is called', setUp: { callsLastOnly: true } };

export const c12: Rule = {
  number: 'C12',
  sentence:
    'Whatever a tick or a colour tells, a word tells too: every count carries its verdict beside its tick, and every tick has a fact to caption.',
  rows: [
    {
      title: 'short of the window',
      given: [zero],
      when: [press],
      comes: [{ counted: 1 }],
      tells: [{ fact: 'counted', cue: 'short', verdict: 'light', timing: 'at a pause' }],
    },
    {
      title: 'entering the window',
      given: [zero, call(2), press],
      when: [press],
      comes: [{ counted: 4 }],
      tells: [{ fact: 'counted', cue: 'enter', verdict: 'fits, light side' }],
    },
    {
      title: 'inside the window',
      given: [zero, call(2), press, press],
      when: [half],
      comes: [{ counted: 4.5 }],
      tells: [{ fact: 'counted', cue: 'in', verdict: 'fits' }],
    },
    {
      title: 'the heavy side is inside',
      given: [zero, call(2), call(4), call(5)],
      when: [call(5.5)],
      comes: [{ counted: 5.5 }],
      tells: [{ fact: 'counted', cue: 'in', verdict: 'fits, heavy side' }],
    },
    {
      title: 'leaving the window',
      given: [zero, call(2), call(4), call(5)],
      when: [press],
      comes: [{ counted: 6 }],
      tells: [{ fact: 'counted', cue: 'leave', verdict: 'heavy' }],
    },
    {
      title: 'past the window',
      given: [zero, call(2), call(4), call(6)],
      when: [press],
      comes: [{ counted: 7 }],
      tells: [{ fact: 'counted', cue: 'past', verdict: 'heavy' }],
    },
    {
      title: 'near bottom',
      job: last,
      given: [zero, call(9)],
      when: [press],
      comes: [{ counted: 10 }],
      tells: [{ fact: 'counted', cue: 'past', verdict: 'near bottom' }],
    },
    {
      title: 'a jump clean over the window',
      job: last,
      given: [zero, call(2)],
      when: [call(8)],
      comes: [{ counted: 8 }],
      tells: [{ fact: 'counted', cue: 'past', verdict: 'heavy' }],
    },
    {
      title: 'back into the window by take-back',
      given: [zero, call(2), call(4), call(5), call(6)],
      when: [takeBack],
      comes: [{ event: 'takenBack' }],
      leaves: { counted: 5 },
      tells: [{ fact: 'taken back', cue: 'back' }],
    },
    {
      title: 'with no window there is a plain tick and no verdict',
      job: { text: 'no lifter chosen', setUp: { groups: [] } },
      given: [zero],
      when: [press],
      comes: [{ counted: 1 }],
      tells: [{ fact: 'counted', cue: 'plain' }],
    },
    {
      title: 'zero and the seat have their own',
      given: [],
      when: [zero, press, seat],
      comes: [{ event: 'zeroTouched' }, { counted: 1 }, { event: 'seated' }],
      tells: [
        { fact: 'start', cue: 'zero' },
        { fact: 'counted' },
        { fact: 'how far?', cue: 'seat' },
      ],
    },
    {
      title: 'a refusal has its tick and its words',
      given: [],
      when: [press],
      comes: [{ refused: 'not now' }],
      tells: [{ fact: 'refused', cue: 'refused' }],
    },
    {
      title: 'a question has its tick and its words',
      given: [zero],
      when: [call(9)],
      comes: [{ askedBack: [9], why: 'jumps' }],
      tells: [{ fact: 'asked back', cue: 'missed' }],
    },
  ],
};
