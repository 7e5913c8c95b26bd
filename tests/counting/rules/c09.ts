import {
  advance,
  call,
  land,
  overlap,
  press,
  restart,
  say,
  seat,
  seatKey,
  takeBack,
  wait,
  zero,
} from '../steps';
import type { Rule } from './row';

const doubtfulFour = [zero, call(2), call(4), overlap];

export const c09: Rule = {
  number: 'C9',
  sentence:
    "Speech that overlaps the app's own voice never counts and is never silent: the count is doubtful from then on, and while it is, a spoken seat is asked back with its number.",
  rows: [
    {
      title: 'overlapping speech counts nothing and is told',
      given: [zero, call(2)],
      when: [overlap],
      comes: [{ event: 'doubted' }],
      leaves: { counted: 2 },
      tells: [{ fact: 'doubted', cue: 'missed' }],
    },
    {
      title: 'a spoken seat is then asked back',
      given: doubtfulFour,
      when: [seat],
      comes: [{ asked: 'seat' }],
      leaves: { counted: 4, readings: 0, asking: true },
    },
    {
      title: 'said again it is seated',
      given: [...doubtfulFour, seat],
      when: [seat, land('nothing')],
      comes: [{ event: 'seated' }, { landed: 'nothing', past: 0 }],
      leaves: { read: 4 },
    },
    {
      title: 'said again too late it is asked anew',
      given: [...doubtfulFour, seat, wait(10)],
      when: [seat],
      comes: [{ asked: 'seat' }],
      leaves: { readings: 0 },
    },
    {
      title: 'take-back says no and undoes nothing else',
      given: [...doubtfulFour, seat],
      when: [takeBack],
      comes: [{ event: 'takenBack' }],
      leaves: { counted: 4, readings: 0, asking: false },
    },
    {
      title: 'the right number ends the doubt',
      given: [...doubtfulFour, seat],
      when: [call(5), seat],
      comes: [{ counted: 5 }, { event: 'seated' }],
      leaves: { readings: 1 },
    },
    {
      title: 'a press ends the doubt',
      given: doubtfulFour,
      when: [press, seat],
      comes: [{ counted: 5 }, { event: 'seated' }],
    },
    {
      title: 'a seat by key is not asked',
      given: doubtfulFour,
      when: [seatKey],
      comes: [{ event: 'seated' }],
      leaves: { readings: 1 },
    },
    {
      title: 'a seat by the held pedal is not asked',
      given: doubtfulFour,
      when: [advance],
      comes: [{ event: 'seated' }],
      leaves: { readings: 1 },
    },
    {
      title: 'a restart ends the doubt',
      given: doubtfulFour,
      when: [restart, zero, press, seat],
      comes: [
        { event: 'restarted' },
        { event: 'zeroTouched' },
        { counted: 1 },
        { event: 'seated' },
      ],
    },
    {
      title: 'counting off, first play is asked back the same way',
      given: [say("'loosening'", { type: 'loosening' }), seat, press, overlap],
      when: [zero],
      comes: [{ asked: 'seat' }],
      leaves: { readings: 0 },
    },
    {
      title: 'a doubt while nothing is counted changes nothing',
      given: [overlap],
      when: [zero, press, seat],
      comes: [{ event: 'zeroTouched' }, { counted: 1 }, { event: 'seated' }],
      leaves: { readings: 1 },
    },
  ],
};
