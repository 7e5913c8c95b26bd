import { describe, expect, test } from 'vitest';
import { type EarEffect, type EarLog, logged, noLog, replayEar } from '#hearing';
import { openRig } from './rig';
import { ended, error, final, interim, speech } from './scriptedRecogniser';

const submitted = (effects: readonly EarEffect[]) =>
  effects.flatMap((effect) => (effect.do === 'submit' ? [effect.body] : []));

describe('the ear’s own log', () => {
  test('replayed, also out of a file, it gives the same commands, captions and notices', async () => {
    const rig = await openRig('counting');
    rig.says('five');
    rig.recogniser.plays([300, speech], [300, interim(0, 'six')], [900, final(0, "six o'clock")]);
    rig.ear.mouth('Six, one seventeen, heavy.');
    rig.says('seven');
    rig.ear.mouth(null);
    rig.press({ type: 'step', size: 'step' });
    rig.recogniser.plays([300, error('no-speech')], [10, ended]);
    rig.clock.advance(150);
    rig.recogniser.opens();
    rig.clock.advance(1000);
    rig.says('rocker seated');
    rig.says('what a day');
    rig.ear.stop();
    const log: EarLog = JSON.parse(JSON.stringify(rig.ear.log()));
    const { effects, state } = replayEar(log);
    expect(submitted(effects)).toEqual(rig.commands.map(({ body }) => body));
    expect(submitted(effects).length).toBeGreaterThan(4);
    expect(effects.flatMap((e) => (e.do === 'caption' ? [e.caption] : []))).toEqual(rig.captions);
    expect(effects.flatMap((e) => (e.do === 'notice' ? [e.notice] : []))).toEqual(rig.notices);
    expect(state.phase).toBe('shut');
  });

  test('a long log keeps its newest inputs, and starts from what the older ones came to', () => {
    let log = noLog;
    for (let i = 0; i < 4100; i += 1) log = logged(log, { type: 'level', db: -i / 100, at: i });
    expect(log.inputs).toHaveLength(4000);
    expect(log.from.level).toBe(-0.99);
    expect(replayEar(log).state.level).toBe(-40.99);
  });
});
