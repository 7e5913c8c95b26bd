import { describe, expect, test } from 'vitest';
import { type CommandBody, type Stage, stageOf } from '#counting';
import { turn48 } from '#valvetrain';
import { grammarFor, type Hearing, hear, type Meaning } from '#words';
import { v8SetUp } from '../../fakes/setUps';
import { benchAt, inShort, START_AT } from '../../hearing/bench';

type Row = readonly [stage: Stage, said: string, body: CommandBody, came: string, then: Stage];

const call = (to48: number, form: 'bare' | 'turns' = 'bare'): CommandBody => ({
  type: 'call',
  to48: turn48(to48),
  form,
});
const land = (word: 'half' | 'nothing' | 'a bit past' | 'just shy', of48?: number): CommandBody =>
  of48 === undefined ? { type: 'land', word } : { type: 'land', word, of48: turn48(of48) };
const position = (within48: number): CommandBody => ({
  type: 'positionInTurn',
  within48: turn48(within48),
});
const clock = (mark48: number): CommandBody => ({ type: 'clock', mark48: turn48(mark48) });

/** Given a job at this stage (counting, it stands at four), when this is said, then this comes of it. */
const ROWS: Readonly<Record<string, readonly Row[]>> = {
  zero: [
    ['to start', 'zero lash', { type: 'zero' }, 'zeroTouched', 'counting'],
    ['to start', 'zero lash now', { type: 'zero' }, 'zeroTouched', 'counting'],
    ['counting', 'zero lash', { type: 'zero' }, 'askedBack', 'counting'],
    ['turning', 'zero lash', { type: 'zero' }, 'refused: not now', 'turning'],
  ],
  count: [
    ['counting', 'five', call(60), 'counted', 'counting'],
    ['counting', 'five quarters', call(60), 'counted', 'counting'],
    ['counting', 'five and a quarter', call(63), 'counted', 'counting'],
    ['counting', 'five and a half', call(66), 'counted', 'counting'],
    ['counting', 'four', call(48), 'unchanged', 'counting'],
    ['counting', 'two', call(24), 'askedBack', 'counting'],
    ['counting', 'nine', call(108), 'askedBack', 'counting'],
    ['counting', 'forty-one', call(492), 'refused: past the most', 'counting'],
    ['to start', 'one', call(12), 'refused: not now', 'to start'],
    ['turning', 'five', call(60), 'refused: not now', 'turning'],
  ],
  landing: [
    ['landing', 'half', land('half'), 'landed', 'read'],
    ['landing', 'half a quarter', land('half'), 'landed', 'read'],
    ['landing', 'a quarter of a quarter', land('a bit past'), 'landed', 'read'],
    ['landing', 'nothing', land('nothing'), 'landed', 'read'],
    ['landing', 'a hair past', land('a bit past'), 'landed', 'read'],
    ['landing', 'four and a bit', land('a bit past', 48), 'landed', 'read'],
    ['landing', 'a hair past four', land('a bit past', 48), 'landed', 'read'],
    ['landing', 'just shy', land('just shy'), 'landed', 'read'],
    ['landing', 'just shy of five', land('just shy', 60), 'landed', 'read'],
    [
      'landing',
      'just shy of four',
      land('just shy', 48),
      'refused: landing outside the mark',
      'landing',
    ],
    ['landing', 'four and a half', call(54), 'landed', 'read'],
    ['counting', 'four and a bit', call(51), 'counted', 'counting'],
    ['counting', 'just shy of five', call(57), 'counted', 'counting'],
    ['counting', 'half', land('half'), 'refused: not now', 'counting'],
  ],
  more: [
    ['counting', 'one more', { type: 'step', size: 'step' }, 'counted', 'counting'],
    ['counting', 'another half', { type: 'step', size: 'half quarter' }, 'counted', 'counting'],
  ],
  position: [
    ['counting', 'quarter turn', position(12), 'counted', 'counting'],
    ['counting', 'half turn', position(24), 'counted', 'counting'],
    ['counting', 'half a turn', position(24), 'counted', 'counting'],
    ['counting', 'three quarters of a turn', position(36), 'counted', 'counting'],
    ['counting', 'full turn', position(48), 'askedBack', 'counting'],
    ['counting', 'two turns', call(96, 'turns'), 'counted', 'counting'],
    ['counting', 'one and a half turns', call(72, 'turns'), 'counted', 'counting'],
    ['counting', 'five turns', call(240, 'turns'), 'askedBack', 'counting'],
  ],
  clock: [
    ['counting', "one o'clock", clock(4), 'counted', 'counting'],
    ['counting', 'half past one', clock(6), 'counted', 'counting'],
    ['counting', 'quarter past twelve', clock(1), 'counted', 'counting'],
    ['counting', "eleven o'clock", clock(44), 'counted', 'counting'],
    ['counting', "ten o'clock", clock(40), 'askedBack', 'counting'],
    ['landing', 'half past one', clock(6), 'landed', 'read'],
    ['landing', "five o'clock", clock(20), 'refused: landing outside the mark', 'landing'],
  ],
  seat: [
    ['counting', 'rocker seated', { type: 'seat', loose: false }, 'seated', 'landing'],
    ['counting', 'valve seated', { type: 'seat', loose: false }, 'seated', 'landing'],
    ['counting', "it's down", { type: 'seat', loose: false }, 'seated', 'landing'],
    [
      'counting',
      'seated loose',
      { type: 'seat', loose: true },
      'refused: loose after counting',
      'counting',
    ],
    ['to start', 'seated loose', { type: 'seat', loose: true }, 'seated', 'read'],
    ['to start', 'rocker seated', { type: 'seat', loose: false }, 'refused: not now', 'to start'],
  ],
  later: [
    ['read', 'torqued down', { type: 'torqued' }, 'torqued', 'read'],
    ['read', 'bled down', { type: 'pushrodsLoose' }, 'bledDown', 'read'],
    ['pushrods loose', 'pushrods loose', { type: 'pushrodsLoose' }, 'bledDown', 'turning'],
    ['counting', 'torqued down', { type: 'torqued' }, 'refused: not now', 'counting'],
  ],
  undo: [
    ['counting', 'take it back', { type: 'takeBack' }, 'takenBack', 'counting'],
    ['landing', 'scratch that', { type: 'takeBack' }, 'takenBack', 'counting'],
    ['cautions', 'scratch that', { type: 'takeBack' }, 'refused: nothing to take back', 'cautions'],
  ],
  restart: [
    ['counting', 'start this valve over', { type: 'restart' }, 'restarted', 'to start'],
    ['counting', 'lost zero', { type: 'restart' }, 'restarted', 'to start'],
  ],
  mend: [
    [
      'counting',
      "wrong cylinder, it's five",
      { type: 'moveReading', cylinder: 5 },
      'readingMoved',
      'counting',
    ],
    ['read', 'wrong valve', { type: 'moveReading', valve: 'other' }, 'readingMoved', 'read'],
    [
      'read',
      "wrong cylinder, it's nine",
      { type: 'moveReading', cylinder: 9 },
      'refused: no such cylinder',
      'read',
    ],
  ],
  again: [['read', 'count it again', { type: 'repeat' }, 'repeatStarted', 'to start']],
  move: [
    ['read', 'next valve', { type: 'next', cylinder: false }, 'valveLeft', 'to start'],
    ['choose valve', 'next valve', { type: 'next', cylinder: false }, 'valveChosen', 'to start'],
    ['read', 'next cylinder', { type: 'next', cylinder: true }, 'valveChosen', 'pushrods loose'],
    ['counting', 'skip this valve', { type: 'skip' }, 'valveLeft', 'to start'],
    [
      'read',
      'go to cylinder five',
      { type: 'chooseValve', cylinder: 5 },
      'valveChosen',
      'pushrods loose',
    ],
    [
      'read',
      'go to cylinder one, intake',
      { type: 'chooseValve', cylinder: 1, valve: 'intake' },
      'valveChosen',
      'to start',
    ],
    ['read', 'intake', { type: 'chooseValve', valve: 'intake' }, 'valveChosen', 'to start'],
    ['to start', 'exhaust', { type: 'chooseValve', valve: 'exhaust' }, 'valveChosen', 'to start'],
    ['counting', 'next valve', { type: 'next', cylinder: false }, 'refused: not now', 'counting'],
  ],
  crank: [
    ['cautions', 'cautions heard', { type: 'cautionsHeard' }, 'cautionsHeard', 'turning'],
    ['turning', "crank's there", { type: 'crankThere' }, 'positionReached', 'to start'],
    ['hands clear', 'hands clear', { type: 'handsClear' }, 'handsClear', 'turning'],
    ['turning', 'overshot', { type: 'overshot' }, 'overshot', 'turning'],
    ['turning', 'gone past', { type: 'overshot' }, 'overshot', 'turning'],
    ['to start', 'gone past', { type: 'overshot' }, 'overshot', 'turning'],
    ['counting', 'overshot', { type: 'overshot' }, 'refused: not now', 'counting'],
    ['read', 'next position', { type: 'next', cylinder: true }, 'valveChosen', 'pushrods loose'],
    ['turning', 'next position', { type: 'next', cylinder: true }, 'refused: not now', 'turning'],
  ],
  rod: [
    [
      'read',
      'test rod eight one seventy-five',
      { type: 'fitPushrod', length: { mm: 207.645, convention: 'tip to tip' } },
      'pushrodFitted',
      'read',
    ],
  ],
  off: [['to start', 'loosening', { type: 'loosening' }, 'valveChosen', 'to start']],
  ask: [
    ['counting', 'say again', { type: 'ask', about: 'again' }, 'answer', 'counting'],
    ['counting', 'where am I', { type: 'ask', about: 'where' }, 'answer', 'counting'],
    ['read', 'how sure', { type: 'ask', about: 'how sure' }, 'answer', 'read'],
    ['turning', "what's left", { type: 'ask', about: 'left' }, 'answer', 'turning'],
    ['turning', 'read the summary', { type: 'ask', about: 'summary' }, 'answer', 'turning'],
  ],
  hold: [
    ['counting', 'hold on', { type: 'hold' }, 'held', 'held'],
    ['held', 'carry on', { type: 'carryOn' }, 'resumed', 'turning'],
  ],
};

function meanings(hearing: Hearing): readonly Meaning[] {
  return hearing.kind === 'meaning' ? hearing.meanings : [];
}

describe.each(Object.entries(ROWS))('%s', (_, rows) => {
  test.each(rows)('given %s, when ‘%s’ is said', (stage, said, body, came, then) => {
    const bench = benchAt(stage);
    expect(stageOf(bench.state())).toBe(stage);
    const hearing = hear(said, grammarFor(bench.state(), { carrier: null }));
    expect(meanings(hearing)).toEqual([{ kind: 'command', command: body }]);
    expect(inShort(bench.submit(body, START_AT + 60_000))).toBe(came);
    expect(stageOf(bench.state())).toBe(then);
  });
});

test('talk and the ear, at every stage', () => {
  for (const stage of ['cautions', 'turning', 'to start', 'counting', 'landing', 'read'] as const) {
    const grammar = grammarFor(benchAt(stage).state(), { carrier: null });
    expect(meanings(hear('stop', grammar))).toEqual([{ kind: 'talk', talk: 'stop' }]);
    expect(meanings(hear('ear shut', grammar))).toEqual([{ kind: 'ear', ear: 'shut' }]);
    expect(meanings(hear('start listening', grammar))).toEqual([{ kind: 'ear', ear: 'open' }]);
  }
});

test('with strokes set, a number is so many strokes', () => {
  const setUp = v8SetUp({ calling: { way: 'strokes', degrees: 60 } });
  const bench = benchAt('to start', setUp);
  bench.submit({ type: 'zero' }, START_AT);
  const grammar = grammarFor(bench.state(), { carrier: null });
  for (const said of ['two', 'two strokes']) {
    expect(meanings(hear(said, grammar))).toEqual([{ kind: 'command', command: call(16) }]);
  }
  expect(inShort(bench.submit(call(16), START_AT))).toBe('counted');
});
