import { describe, expect, test } from 'vitest';
import { type Announcement, announceReturn, type EventType, type SetUp, tellLog } from '#counting';
import type { Step } from '../given';
import { given, type Job, opened, ready, when } from '../given';
import { countNow, eightCylinders, engineOf, exhaust, intake } from '../samples';
import {
  call,
  carryOn,
  cautionsHeard,
  changeSetUp,
  crankThere,
  goTo,
  handsClear,
  hold,
  land,
  loosening,
  nameReading,
  next,
  overlap,
  press,
  pushrodsLoose,
  repeat,
  restart,
  say,
  seat,
  skip,
  takeBack,
  torqued,
  wait,
  wrongCylinder,
  zero,
} from '../steps';

const four: SetUp = {
  ...eightCylinders,
  engine: engineOf(1, 3, 4, 2),
  scope: [1, 2, 3, 4].flatMap((cylinder) => [intake(cylinder), exhaust(cylinder)]),
};
const helped: SetUp = { ...four, hands: 'with helper' };
const read = [zero, call(2), call(4), seat, land('nothing')];

const facts = (told: readonly Announcement[]) => told.map(({ fact }) => fact.kind);
const toldBy = (job: Job, ...steps: readonly Step[]) => when(job, ...steps).told;

interface Telling {
  readonly event: EventType;
  readonly from: Job;
  readonly step: Step;
  readonly tells: readonly string[];
  readonly cue?: Announcement['cue'];
}

const discard = say('discard', { type: 'discard' });
const lastRead = given(ready({ ...four, scope: [exhaust(1)] }), read);
const bothRead = given(ready(four), [...read, next, ...read]);

const tellings: readonly Telling[] = [
  {
    event: 'setupChanged',
    from: ready(four),
    step: changeSetUp('same', {}, 'all', four),
    tells: ['set-up changed'],
  },
  {
    event: 'roundStarted',
    from: bothRead,
    step: say('round', { type: 'startRound', purpose: 'measure' }),
    tells: ['round started', 'valve'],
  },
  {
    event: 'pushrodFitted',
    from: ready(four),
    step: say('none', { type: 'fitPushrod', length: null }),
    tells: ['pushrod fitted'],
  },
  { event: 'cautionsHeard', from: opened(four), step: cautionsHeard, tells: ['turn crank'] },
  { event: 'cautionsHeard', from: opened(helped), step: cautionsHeard, tells: ['hands clear?'] },
  {
    event: 'handsClear',
    from: given(opened(helped), [cautionsHeard]),
    step: handsClear,
    tells: ['turn crank'],
  },
  {
    event: 'positionReached',
    from: given(opened(four), [cautionsHeard]),
    step: crankThere,
    tells: ['valve'],
  },
  { event: 'valveChosen', from: ready(four), step: goTo(1, 'intake'), tells: ['valve'] },
  {
    event: 'valveChosen',
    from: bothRead,
    step: goTo(4),
    tells: ['cylinder done', 'pushrods loose?'],
  },
  { event: 'valveChosen', from: ready(helped), step: goTo(4), tells: ['hands clear?'] },
  {
    event: 'valveNamed',
    from: given(ready(countNow), read),
    step: nameReading(7, 2, 'intake'),
    tells: ['moved'],
    cue: 'soft',
  },
  { event: 'zeroTouched', from: ready(four), step: zero, tells: ['start'], cue: 'zero' },
  {
    event: 'counted',
    from: given(ready(four), [zero]),
    step: press,
    tells: ['counted'],
    cue: 'short',
  },
  { event: 'doubted', from: ready(four), step: overlap, tells: ['doubted'], cue: 'missed' },
  {
    event: 'askedBack',
    from: given(ready(four), [zero]),
    step: call(9),
    tells: ['asked back'],
    cue: 'missed',
  },
  {
    event: 'seated',
    from: given(ready(four), [zero, press]),
    step: seat,
    tells: ['how far?'],
    cue: 'seat',
  },
  {
    event: 'seated',
    from: given(ready(four), [loosening]),
    step: seat,
    tells: ['start'],
    cue: 'zero',
  },
  {
    event: 'landed',
    from: given(ready(four), [zero, press, seat]),
    step: land('half'),
    tells: ['read'],
    cue: 'landing',
  },
  {
    event: 'landed',
    from: given(ready(four), [zero, press, seat]),
    step: press,
    tells: ['tapped'],
    cue: 'landing',
  },
  {
    event: 'restarted',
    from: given(ready(four), [zero, press]),
    step: restart,
    tells: ['restarted'],
    cue: 'back',
  },
  { event: 'repeatStarted', from: given(ready(four), read), step: repeat, tells: ['valve'] },
  {
    event: 'readingMoved',
    from: given(ready(four), read),
    step: wrongCylinder(3),
    tells: ['moved'],
    cue: 'soft',
  },
  { event: 'valveLeft', from: given(ready(four), read), step: next, tells: ['valve'] },
  { event: 'valveLeft', from: bothRead, step: next, tells: ['cylinder done', 'pushrods loose?'] },
  { event: 'valveLeft', from: ready(four), step: skip, tells: ['skipped', 'valve'], cue: 'soft' },
  { event: 'valveLeft', from: lastRead, step: next, tells: ['cylinder done', 'all read'] },
  {
    event: 'torqued',
    from: given(ready(four), read),
    step: torqued,
    tells: ['torqued'],
    cue: 'soft',
  },
  {
    event: 'bledDown',
    from: given(bothRead, [next]),
    step: pushrodsLoose,
    tells: ['pushrods loose', 'turn crank'],
    cue: 'soft',
  },
  {
    event: 'bledDown',
    from: given(lastRead, [next]),
    step: pushrodsLoose,
    tells: ['pushrods loose'],
  },
  { event: 'held', from: ready(four), step: hold, tells: ['held'], cue: 'soft' },
  {
    event: 'resumed',
    from: given(ready(four), [hold]),
    step: carryOn,
    tells: ['back at'],
    cue: 'soft',
  },
  {
    event: 'takenBack',
    from: given(ready(four), [zero]),
    step: takeBack,
    tells: ['taken back'],
    cue: 'back',
  },
  { event: 'jobDiscarded', from: ready(four), step: discard, tells: ['job discarded'] },
  {
    event: 'jobRestored',
    from: given(ready(four), [discard]),
    step: say('restore', { type: 'restore' }),
    tells: ['job restored'],
  },
];

describe('what every event tells', () => {
  test.each(tellings.map((row) => [`${row.event}: ${row.tells.join(', ')}`, row] as const))(
    '%s',
    (_, { event, from, step, tells, cue }) => {
      const job = when(from, step);
      expect(job.events.slice(from.events.length).map(({ type }) => type)).toEqual([event]);
      expect(facts(job.told)).toEqual(tells);
      if (cue !== undefined) expect(job.told[0]?.cue).toBe(cue);
    },
  );

  test('jobOpened tells the job and its cautions', () => {
    expect(facts(tellLog(opened(four).events))).toEqual(['job opened', 'cautions']);
  });

  test('every word of an event waits for that event, a doubt for nothing', () => {
    for (const { from, step } of tellings) {
      const job = when(from, step);
      const { seq } = job.state;
      for (const { fact, keptThrough } of job.told) {
        expect(keptThrough).toBe(fact.kind === 'doubted' ? 0 : seq);
      }
    }
  });
});

describe('the crank', () => {
  const turning = given(opened(helped), [cautionsHeard, handsClear]);

  test('C9: an instruction to turn is perishable, and nothing else is', () => {
    const told = tellLog(given(turning, [crankThere, ...read, next]).events);
    expect(told.filter(({ perishable }) => perishable).map(({ fact }) => fact.kind)).toEqual([
      'turn crank',
    ]);
  });

  test('C13: it is never named after a pause, a take-back or a return', () => {
    expect(facts(toldBy(turning, hold, carryOn))).toEqual(['held', 'back at']);
    expect(facts(toldBy(given(turning, [crankThere]), takeBack))).toEqual(['taken back']);
    expect(facts(announceReturn(turning.state))).toEqual(['back at']);
  });

  test('it is named again on a fresh answer', () => {
    expect(facts(toldBy(turning, hold, carryOn, handsClear)).at(-1)).toBe('turn crank');
    expect(facts(toldBy(turning, handsClear))).toEqual(['turn crank']);
    expect(facts(toldBy(given(opened(four), [cautionsHeard, hold, carryOn]), handsClear))).toEqual([
      'turn crank',
    ]);
  });

  test('the turn, its place in the walk and its companion are told', () => {
    const [told] = toldBy(given(bothRead, [next]), pushrodsLoose).slice(-1);
    expect(told?.fact).toMatchObject({ index: 2, of: 4, turnDeg: 180, companion: 2 });
    const [first] = toldBy(opened(four), cautionsHeard);
    expect(first?.fact).toMatchObject({ index: 1, of: 4, turnDeg: null, companion: 4 });
  });

  test('C7: a take-back across a position says to check the crank, another does not', () => {
    expect(toldBy(ready(four), takeBack)[0]?.fact).toMatchObject({
      undone: 'positionReached',
      checkCrank: true,
    });
    expect(toldBy(given(ready(four), [zero, call(2)]), takeBack)[0]?.fact).toMatchObject({
      undone: 'counted',
      undoneCount48: 24,
      checkCrank: false,
      standing: { count48: 0, stage: 'counting' },
    });
  });
});

describe('results', () => {
  test('the verdict is told as changed only when it changed', () => {
    const told = toldBy(given(ready(four), [zero]), press, press, press, press, press);
    expect(told.map(({ fact }) => fact.kind === 'counted' && fact.verdictChanged)).toEqual([
      true,
      false,
      false,
      true,
      true,
    ]);
  });

  test('a result that waited for an answer is told before what comes next', () => {
    const waiting = given(ready(four), [zero, call(2), call(4), seat]);
    expect(facts(toldBy(waiting, next))).toEqual(['read', 'valve']);
    expect(facts(toldBy(waiting, goTo(1, 'intake')))).toEqual(['read', 'valve']);
    expect(
      facts(toldBy(waiting, say('round', { type: 'startRound', purpose: 'measure' }))),
    ).toEqual(['read', 'round started', 'valve']);
  });

  test('a cylinder is done once it is left, not when one of its valves is counted again', () => {
    expect(facts(toldBy(bothRead, repeat))).toEqual(['valve']);
    expect(facts(toldBy(bothRead, goTo(1, 'exhaust')))).toEqual(['valve']);
  });

  test('a repeat says which it is', () => {
    const told = toldBy(given(ready(four), [...read, repeat, zero, press, seat]), land('half'));
    expect(told[0]?.fact).toMatchObject({ kind: 'read', repeat: 2 });
  });

  test('C11: where an utterance replaces its own count the take-back waits, to be replaced', () => {
    const at = (quarters: number): Step => {
      const step = call(quarters);
      return step.kind === 'command' ? { ...step, utterance: { id: 'a', agoMs: 500 } } : step;
    };
    const told = toldBy(given(ready(four), [zero, call(1), at(2)]), at(2.5));
    expect(told.map(({ fact, timing }) => [fact.kind, timing])).toEqual([
      ['taken back', 'at a pause'],
      ['counted', 'at a pause'],
    ]);
    expect(toldBy(given(ready(four), [zero, call(1)]), takeBack)[0]?.timing).toBe('at once');
  });
});

describe('answers', () => {
  const ask = (about: 'again' | 'where' | 'how sure' | 'left' | 'summary') =>
    say(about, { type: 'ask', about });

  test('asking changes nothing and is answered', () => {
    const job = when(
      given(ready(four), read),
      ask('where'),
      ask('again'),
      ask('how sure'),
      ask('left'),
      ask('summary'),
    );
    expect(facts(job.told)).toEqual(['where', 'where', 'how sure', 'left', 'summary']);
    expect(job.events).toHaveLength(given(ready(four), read).events.length);
    expect(job.told[3]?.fact).toMatchObject({ skipped: [] });
  });

  test('C13, C5: on return a question still open is asked again, a lapsed one is not', () => {
    const asked = given(ready(four), [zero, call(9)]);
    expect(facts(announceReturn(asked.state))).toEqual(['back at', 'asked back']);
    expect(facts(announceReturn(asked.state, asked.at + 10_000))).toEqual([
      'back at',
      'asked back',
    ]);
    expect(facts(announceReturn(asked.state, given(asked, [wait(11)]).at))).toEqual(['back at']);
  });
});
