import { describe, expect, test } from 'vitest';
import { engineSummary, readingCount48, stageOf } from '#counting';
import { replayEar } from '#hearing';
import { openRig, type Rig } from './rig';
import { ended, error, final, interim, speech } from './scriptedRecogniser';

/** How each valve is called from its zero on, and the count it comes to, 48ths of a turn. */
const VALVES: readonly (readonly [said: readonly string[], count48: number])[] = [
  [['one', 'two', 'three', 'four', 'rocker seated', 'half'], 54],
  [['1', '2', '3', '4', 'valve seated', 'nothing'], 48],
  [['quarter turn', 'half turn', 'three quarters of a turn', 'full turn', "it's down", 'half'], 54],
  [["3 o'clock", "6 o'clock", "9 o'clock", '12:00', 'half past 1', 'rocker seated'], 54],
  [['one more', 'one more', 'won', 'three', 'for', 'rocker seeded', 'just shy'], 57],
  [['two', 'four', 'four and a half', 'rocker seated'], 54],
  [['one', 'to', 'tree', 'for', '5 1/2', 'valve seated'], 66],
  [['half a turn', 'one turn', 'rocker seated', 'a hair past'], 51],
  [['two quarters', 'four quarters', 'rocker seated', 'four and a bit'], 51],
  [['two', 'three', 'four, rocker seated', "1 o'clock"], 52],
  [['one', 'two', 'scratch that', 'two', 'four', 'five, rocker seated', 'just shy of six'], 69],
  [['two', 'nine', 'four', 'rocker seated', 'half'], 54],
  [
    ['one more', 'another half', 'two', 'another half', 'four', 'four and a quarter', "it's down"],
    51,
  ],
  [
    [
      'two',
      'four',
      'rocker seated',
      'count it again',
      'zero lash',
      'two',
      'four',
      '4½',
      'valve seated',
    ],
    54,
  ],
  [['1.5', '3', 'four and three quarters', 'rocker seated'], 57],
  [['two', 'hold on', 'carry on', 'four', 'where am I', 'rocker seated', 'half past one'], 54],
];

function callValve(rig: Rig, said: readonly string[]): void {
  rig.says('zero lash');
  for (const text of said) rig.says(text);
  expect([...said, stageOf(rig.bench.state())]).toEqual([...said, 'read']);
}

describe('an engine by voice alone', () => {
  test('sixteen valves from the cautions to the last, by numbers, fractions, turns and the clock', async () => {
    const rig = await openRig('cautions');
    rig.says('cautions heard');
    for (const [i, [said]] of VALVES.entries()) {
      if (i % 2 === 0) rig.says("crank's there");
      callValve(rig, said);
      rig.says('next valve');
      if (i % 2 === 1 && i < VALVES.length - 1) rig.says('pushrods loose');
      if (i % 5 === 4) {
        rig.recogniser.plays([200, error('no-speech')], [10, ended]);
        rig.clock.advance(150);
        rig.recogniser.opens();
        rig.clock.advance(1000);
      }
    }
    const state = rig.bench.state();
    expect(stageOf(state)).toBe('all read');
    const readings = state.readings.filter(
      ({ id, repeatOf }) => repeatOf !== null || !state.readings.some((r) => r.repeatOf === id),
    );
    expect(readings.map((r) => (r.kind === 'counted' ? readingCount48(r) : null))).toEqual(
      VALVES.map(([, count48]) => count48),
    );
    expect(readings.map(({ valve }) => `${valve?.cylinder} ${valve?.valve}`)).toEqual(
      [1, 8, 4, 3, 6, 5, 7, 2].flatMap((cylinder) => [`${cylinder} exhaust`, `${cylinder} intake`]),
    );
    expect(engineSummary(state)).toBeTruthy();
    const byVoice = rig.bench.log.filter(({ by }) => by === 'voice').length;
    expect(byVoice).toBe(rig.bench.log.length);
    const refused = rig.bench.decisions.filter((decision) => decision.startsWith('refused'));
    expect(refused).toEqual([]);
    const replayed = replayEar(rig.ear.log()).effects.filter((effect) => effect.do === 'submit');
    expect(replayed.length).toBe(rig.commands.length);
    console.info(
      `by voice alone: ${VALVES.length} valves, ${rig.commands.length} commands, ` +
        `${rig.bench.log.length} events, ${rig.recogniser.sessions.length} sessions`,
    );
  });

  test('voice and pedal together, with a mistake, a question, a take-back and a wrong cylinder', async () => {
    const rig = await openRig('to start');
    rig.says('zero lash');
    rig.says('one');
    rig.press({ type: 'step', size: 'step' });
    rig.recogniser.plays([500, speech], [300, interim(0, 'five')], [500, final(0, 'five')]);
    rig.says('nine');
    rig.press({ type: 'takeBack' });
    rig.press({ type: 'takeBack' });
    rig.says('three');
    rig.press({ type: 'step', size: 'half quarter' });
    rig.says('rocker seated');
    rig.says("wrong cylinder, it's eight");
    rig.says('next valve');
    expect(rig.bench.decisions.slice(-12)).toEqual([
      'zeroTouched',
      'counted',
      'counted',
      'askedBack',
      'askedBack',
      'takenBack',
      'takenBack',
      'counted',
      'counted',
      'seated',
      'readingMoved',
      'valveLeft',
    ]);
    const [reading] = rig.bench.state().readings;
    expect(reading?.valve).toEqual({ cylinder: 8, valve: 'exhaust' });
    expect(reading?.kind === 'counted' ? readingCount48(reading) : null).toBe(42);
  });
});
