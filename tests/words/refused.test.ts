import { expect, test } from 'vitest';
import { type Refusal, stageOf } from '#counting';
import { refusalSentence } from '#words';
import { commandTypes, notNow, reasons, refusedAt, stages } from './refusals';
import { stateAt } from './stages';

const whole = /^[A-Z].*[.?]$/;

test('every reason has a sentence, and says more than no', () => {
  const codes: Record<Refusal['code'], true> = {
    'not now': true,
    'nothing to take back': true,
    'past the most': true,
    'clock is off': true,
    'not in this job': true,
    'no such cylinder': true,
    'say which valve': true,
    'already that valve': true,
    'already counted': true,
    'loose after counting': true,
    'landing outside the mark': true,
    'no reading': true,
    'unknown reading': true,
    'already torqued': true,
    'nothing left here': true,
    'bad set-up': true,
    'bad length': true,
    'bad dial reading': true,
  };
  expect(['not now', ...reasons.map(({ code }) => code)].sort()).toEqual(Object.keys(codes).sort());
  const sentences = reasons.map(refusalSentence);
  for (const sentence of sentences) expect(sentence).toMatch(whole);
  expect(new Set(sentences).size).toBe(sentences.length);
});

test.each(stages)('%s: every refused command is answered with what to do next', (stage) => {
  expect(stageOf(stateAt[stage])).toBe(stage);
  const refused = refusedAt(stage);
  expect(refused.length).toBeGreaterThan(0);
  for (const command of refused) {
    for (const off of [false, true]) {
      const sentence = refusalSentence(notNow(command, stage, off));
      expect(sentence).toMatch(whole);
      expect(sentence).not.toMatch(/NaN|undefined|null|\bturn\b/);
      expect(sentence.split(' ').length).toBeLessThanOrEqual(16);
    }
  }
});

test('no command is without a sentence, whatever is allowed', () => {
  for (const command of commandTypes) {
    for (const stage of stages) expect(refusalSentence(notNow(command, stage))).toMatch(whole);
  }
});

test('counting before zero says how to begin', () => {
  expect(refusalSentence(notNow('call', 'to start'))).toBe(
    'Not at zero yet. Run the rocker down and say zero lash.',
  );
});

test('a problem’s own sentence is said; one that is missing is no blank', () => {
  expect(refusalSentence({ code: 'bad set-up', problems: [] })).toBe(
    'Set-up not taken. Look it over again.',
  );
  expect(refusalSentence({ code: 'no such cylinder', cylinder: 2.5, cylinders: 8 })).toMatch(whole);
});
