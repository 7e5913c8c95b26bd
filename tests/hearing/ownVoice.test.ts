import { describe, expect, test } from 'vitest';
import { openRig, type Rig } from './rig';
import { final, interim, speech } from './scriptedRecogniser';

function kinds({ captions }: Rig): string[] {
  return captions.map(({ kind }) => kind);
}

describe('speech over the app’s own voice', () => {
  test('C9: never counts, and is never silent: a caption and a doubt', async () => {
    const rig = await openRig('counting');
    rig.ear.mouth('Four, seventy-eight.');
    rig.recogniser.plays([200, speech], [300, interim(0, 'five')], [900, final(0, 'five')]);
    expect(rig.given()).toEqual(['doubt']);
    expect(rig.came()).toEqual(['doubted']);
    expect(kinds(rig)).toEqual(['doubt']);
    expect(rig.count48()).toBe(48);
    rig.ear.mouth(null);
    rig.says('rocker seated');
    expect(rig.came()).toEqual(['askedBack']);
    rig.says('rocker seated');
    expect(rig.came()).toEqual(['seated']);
  });

  test('C9: the tail after a line still covers speech; after the tail it counts', async () => {
    const inTail = await openRig('counting');
    inTail.ear.mouth('Four, seventy-eight.');
    inTail.clock.advance(1500);
    inTail.ear.mouth(null);
    inTail.recogniser.plays([340, speech], [300, interim(0, 'five')], [600, final(0, 'five')]);
    expect(inTail.given()).toEqual(['doubt']);
    const after = await openRig('counting');
    after.ear.mouth('Four, seventy-eight.');
    after.clock.advance(1500);
    after.ear.mouth(null);
    after.recogniser.plays([360, speech], [300, interim(0, 'five')], [600, final(0, 'five')]);
    expect(after.given()).toEqual(['call']);
  });

  test('C9: a speaker that was measured to lag covers speech for as long', async () => {
    const rig = await openRig('counting');
    rig.ear.configure({ headset: false, mayLeave: true, listens: 'open', tailMs: 780 });
    rig.ear.mouth('Four, seventy-eight.');
    rig.clock.advance(1500);
    rig.ear.mouth(null);
    rig.recogniser.plays([860, speech], [300, interim(0, 'five')], [600, final(0, 'five')]);
    expect(rig.given()).toEqual(['doubt']);
    rig.recogniser.plays([900, speech], [300, interim(1, 'five')], [600, final(1, 'five')]);
    expect(rig.given()).toEqual(['doubt', 'call']);
  });

  test('C9: the app’s own words coming back, late too, are no speech of the builder’s', async () => {
    const rig = await openRig('counting');
    rig.ear.mouth('Four, seventy-eight.');
    rig.recogniser.plays([400, interim(0, 'for')], [500, interim(0, '4 78')]);
    rig.ear.mouth(null);
    rig.recogniser.plays([900, final(0, '478')]);
    expect(rig.given()).toEqual([]);
    expect(kinds(rig)).toEqual(['own voice']);
    expect(rig.bench.state().open?.doubtful).toBe(false);
  });

  test('C9: a line that comes back only after it has ended is known by its length', async () => {
    const rig = await openRig('counting');
    rig.ear.mouth('Had two, heard nine?');
    rig.clock.advance(1800);
    rig.ear.mouth(null);
    rig.recogniser.plays([700, final(0, 'had two heard nine')]);
    expect(rig.given()).toEqual([]);
    expect(kinds(rig)).toEqual(['own voice']);
  });

  test('C9: the answer to a question, after its end, counts though the question held it', async () => {
    const rig = await openRig('counting');
    rig.says('nine');
    expect(rig.came()).toEqual(['askedBack']);
    rig.ear.mouth('Had four, heard nine?');
    rig.clock.advance(1500);
    rig.ear.mouth(null);
    rig.says('nine');
    expect(rig.came()).toEqual(['counted']);
  });

  test('C9: with a headset the builder may speak over the app', async () => {
    const rig = await openRig('counting', { headset: true });
    rig.ear.mouth('Four, seventy-eight.');
    rig.recogniser.plays([200, speech], [300, interim(0, 'five')], [900, final(0, 'five')]);
    expect(rig.came()).toEqual(['counted']);
  });

  test('‘stop’, ‘ear shut’ and ‘hold on’ are said because the app talks, and are obeyed', async () => {
    const stop = await openRig('counting');
    stop.ear.mouth('Sixteen read. One length fits all.');
    stop.recogniser.plays([200, speech], [300, interim(0, 'stop')]);
    stop.clock.advance(300);
    expect(stop.hushes).toHaveLength(1);
    expect(stop.given()).toEqual([]);
    const mixed = await openRig('counting');
    mixed.ear.mouth('Sixteen read. One length fits all.');
    mixed.recogniser.plays([200, speech], [1300, final(0, 'sixteen read one stop')]);
    expect(mixed.hushes).toHaveLength(1);
    const shut = await openRig('counting');
    shut.ear.mouth('Sixteen read. One length fits all.');
    shut.recogniser.plays([200, speech], [900, final(0, 'ear shut')]);
    expect(shut.ear.view().state).toBe('shut');
    const hold = await openRig('counting');
    hold.ear.mouth('Sixteen read. One length fits all.');
    hold.recogniser.plays([200, speech], [900, final(0, 'hold on')]);
    expect(hold.came()).toEqual(['held']);
  });

  test('C9: a command over the voice is doubted too, but only counting has a count to doubt', async () => {
    const rig = await openRig('to start');
    rig.ear.mouth('One exhaust.');
    rig.recogniser.plays([200, speech], [900, final(0, 'zero lash')]);
    expect(rig.given()).toEqual([]);
    expect(kinds(rig)).toEqual(['doubt']);
  });

  test('C9: clicks and noise, which are no text, never make a count doubtful', async () => {
    const rig = await openRig('counting');
    rig.ear.mouth('Four, seventy-eight.');
    rig.recogniser.plays([100, speech], [200, { type: 'speech ended' }], [300, final(0, '')]);
    rig.ear.level(-5);
    expect(rig.given()).toEqual([]);
  });

  test('C9: a count said before the app speaks stands, whatever its own voice adds to the text', async () => {
    const rig = await openRig('counting');
    rig.recogniser.plays([0, speech], [300, interim(0, 'five')], [400, interim(0, 'five')]);
    expect(rig.came()).toEqual(['counted']);
    rig.ear.mouth('Five, ninety-eight.');
    rig.recogniser.plays([900, interim(0, 'five five')], [600, final(0, 'five five 98')]);
    expect(rig.came()).toEqual([]);
    expect(rig.count48()).toBe(60);
    expect(kinds(rig)).toEqual(['taken', 'own voice']);
  });
});
