import { describe, expect, test } from 'vitest';
import { type EarEffect, type EarLog, replayEar } from '#hearing';
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

  test('a long log forgets its oldest part, and what is left still replays', async () => {
    const rig = await openRig('counting');
    for (let i = 0; i < 4500; i += 1) rig.ear.level(-i / 100);
    rig.says('five');
    const { inputs, from } = rig.ear.log();
    expect(inputs.length).toBeGreaterThanOrEqual(2000);
    expect(inputs.length).toBeLessThanOrEqual(4000);
    expect(from.level).not.toBeNull();
    const { state, effects } = replayEar(rig.ear.log());
    expect(state.level).toBe(-44.99);
    expect(submitted(effects)).toEqual(rig.commands.map(({ body }) => body));
  });
});
