import { describe, expect, test } from 'vitest';
import { openRig, rigAt, settled } from './rig';
import { ended, error, final, interim, type Line, speech } from './scriptedRecogniser';

describe('opening and shutting', () => {
  test('an ear is shut until the builder opens it, opening until sound is taken, then open', async () => {
    const { ear, recogniser, clock, notices } = rigAt('counting');
    clock.advance(60_000);
    expect(ear.view()).toMatchObject({ state: 'shut', why: 'asked' });
    expect(recogniser.sessions).toHaveLength(0);
    ear.start();
    expect(ear.view().state).toBe('opening');
    await settled();
    recogniser.now().tell({ type: 'started' });
    expect(ear.view().state).toBe('opening');
    recogniser.now().tell({ type: 'audio started' });
    expect(ear.view()).toMatchObject({ state: 'open', place: 'elsewhere' });
    expect(notices.map(({ state }) => state)).toEqual(['open']);
  });

  test('before speech leaves the device it must have been agreed to', async () => {
    const { ear, recogniser, notices } = rigAt('counting', { mayLeave: false });
    ear.start();
    await settled();
    expect(recogniser.sessions).toHaveLength(0);
    expect(ear.view()).toMatchObject({ state: 'shut', why: 'notice' });
    ear.start();
    expect(notices.map(({ why }) => why)).toEqual(['notice', 'notice']);
    ear.configure({ headset: false, mayLeave: true, listens: 'open' });
    expect(recogniser.sessions).toHaveLength(0);
    ear.start();
    expect(recogniser.sessions).toHaveLength(1);
    expect(recogniser.now().options).toMatchObject({ onDevice: false, hints: [] });
  });

  test('agreed to, the notice is over though nothing opens the ear yet; refused, it is over too', async () => {
    const agreed = rigAt('counting', { mayLeave: false, listens: 'while held' });
    agreed.ear.hold(true);
    await settled();
    expect(agreed.ear.view()).toMatchObject({ state: 'shut', why: 'notice' });
    agreed.ear.configure({ headset: false, mayLeave: true, listens: 'while held' });
    expect(agreed.ear.view()).toMatchObject({ state: 'shut', why: 'asked' });
    const refused = rigAt('counting', { mayLeave: false });
    refused.ear.start();
    await settled();
    refused.ear.stop();
    expect(refused.ear.view()).toMatchObject({ state: 'shut', why: 'asked' });
    expect(refused.notices.map(({ why }) => why)).toEqual(['notice']);
    expect(refused.recogniser.sessions).toHaveLength(0);
  });

  test('no longer agreed to, speech stops leaving the device at once', async () => {
    const { ear, recogniser, came, notices } = await openRig('counting');
    ear.configure({ headset: false, mayLeave: false, listens: 'open' });
    expect(recogniser.now().aborted).toBe(true);
    expect(ear.view()).toMatchObject({ state: 'shut', why: 'notice' });
    expect(notices.at(-1)).toMatchObject({ state: 'shut', why: 'notice' });
    recogniser.plays([100, final(0, 'five')]);
    expect(came()).toEqual([]);
    const local = await openRig('counting', { place: 'on device' });
    local.ear.configure({ headset: false, mayLeave: false, listens: 'open' });
    expect(local.ear.view().state).toBe('open');
  });

  test('on the device nothing needs to be agreed to, and phrases are hinted at', async () => {
    const { ear, recogniser } = rigAt('counting', { mayLeave: false, place: 'on device' });
    ear.start();
    await settled();
    const { onDevice, hints, language } = recogniser.now().options;
    expect({ onDevice, language }).toEqual({ onDevice: true, language: 'en-GB' });
    expect(hints).toEqual(expect.arrayContaining(['four', 'rocker seated', 'take it back']));
    expect(hints).not.toContain('hands clear');
  });

  test('where speech would be understood is not waited for for ever', async () => {
    const { ear, recogniser, clock } = rigAt('counting', { place: 'never' });
    ear.start();
    clock.advance(1499);
    expect(recogniser.sessions).toHaveLength(0);
    clock.advance(1);
    expect(recogniser.sessions).toHaveLength(1);
    expect(recogniser.now().options.onDevice).toBe(false);
  });

  test('a browser without recognition: dead, and said so', async () => {
    const { ear, notices } = rigAt('counting', { place: 'nowhere' });
    ear.start();
    await settled();
    expect(ear.view()).toMatchObject({ state: 'dead', why: 'not here' });
    expect(notices).toEqual([{ state: 'dead', why: 'not here', count48: 48 }]);
  });

  test('shut by the builder it is never restarted, and what comes late is not heard', async () => {
    const { ear, recogniser, clock, given, notices } = await openRig('counting');
    recogniser.plays([0, speech], [200, interim(0, 'five')]);
    ear.stop();
    expect(recogniser.now().aborted).toBe(true);
    recogniser.plays([300, final(0, 'five')], [100, error('aborted')], [10, ended]);
    clock.advance(600_000);
    expect(recogniser.sessions).toHaveLength(1);
    expect(given()).toEqual([]);
    expect(ear.view()).toMatchObject({ state: 'shut', why: 'asked', ghost: null });
    expect(notices.map(({ state }) => state)).toEqual(['open', 'shut']);
    ear.start();
    expect(recogniser.sessions).toHaveLength(2);
  });

  test('shut between two sessions it stays shut', async () => {
    const { ear, recogniser, clock } = await openRig('counting');
    recogniser.plays([5000, error('no-speech')], [10, ended]);
    ear.stop();
    clock.advance(60_000);
    expect(recogniser.sessions).toHaveLength(1);
  });

  test('‘ear shut’ shuts it; ‘start listening’ to an open ear changes nothing', async () => {
    const rig = await openRig('counting');
    rig.says('start listening');
    expect(rig.ear.view().state).toBe('open');
    rig.says('ear shut');
    expect(rig.ear.view().state).toBe('shut');
    rig.clock.advance(60_000);
    expect(rig.recogniser.sessions).toHaveLength(1);
    expect(rig.commands).toEqual([]);
  });
});

describe('a service that ends, fails or is dead', () => {
  test('a session that ends in silence is followed by another at once, any number of times', async () => {
    const { recogniser, clock, ear, notices } = await openRig('counting');
    for (let session = 1; session <= 40; session += 1) {
      expect(recogniser.sessions).toHaveLength(session);
      recogniser.plays([8000, error('no-speech')], [10, ended]);
      expect(ear.view().state).toBe('opening');
      clock.advance(150);
      recogniser.opens();
      expect(ear.view().state).toBe('open');
    }
    expect(notices).toHaveLength(1);
  });

  test('sessions that end before they hear anything are tried again ever later, then given up', async () => {
    const { recogniser, clock, ear, notices } = await openRig('counting');
    const pauses: number[] = [];
    while (ear.view().state !== 'dead') {
      recogniser.now().tell(ended);
      const since = clock.now();
      const before = recogniser.sessions.length;
      while (recogniser.sessions.length === before && ear.view().state !== 'dead') clock.advance(1);
      pauses.push(clock.now() - since);
    }
    expect(pauses).toEqual([150, 250, 500, 1000, 2000, 0]);
    expect(ear.view()).toMatchObject({ state: 'dead', why: 'keeps ending' });
    expect(notices.at(-1)).toEqual({ state: 'dead', why: 'keeps ending', count48: 48 });
    clock.advance(600_000);
    expect(recogniser.sessions).toHaveLength(6);
  });

  test('a service that is there and dead is noticed within 5 s', async () => {
    const { ear, recogniser, clock, notices } = rigAt('counting');
    ear.start();
    await settled();
    const since = clock.now();
    while (ear.view().state !== 'dead') clock.advance(10);
    expect(clock.now() - since).toBeLessThanOrEqual(5000);
    expect(recogniser.now().aborted).toBe(true);
    expect(notices).toEqual([{ state: 'dead', why: 'no answer', count48: 48 }]);
  });

  test('a start without sound is as dead; a question for the microphone is waited for longer', async () => {
    const silent = rigAt('counting');
    silent.ear.start();
    await settled();
    silent.recogniser.now().tell({ type: 'started' });
    silent.clock.advance(5000);
    expect(silent.ear.view()).toMatchObject({ state: 'dead', why: 'no answer' });
    const asking = rigAt('counting', { asksFirst: true });
    asking.ear.start();
    await settled();
    asking.clock.advance(30_000);
    expect(asking.ear.view().state).toBe('opening');
    asking.recogniser.opens();
    expect(asking.ear.view().state).toBe('open');
  });

  test('a service that hears speech and never says what is tried again, then given up', async () => {
    const { ear, recogniser, clock } = await openRig('counting');
    for (let i = 0; i < 5; i += 1) {
      recogniser.now().tell(speech);
      clock.advance(10_000);
      clock.advance(4000);
      if (ear.view().state !== 'dead') recogniser.opens();
    }
    expect(ear.view()).toMatchObject({ state: 'dead', why: 'no results' });
    expect(recogniser.sessions).toHaveLength(5);
  });

  test('an error whose end never comes is ended by the watch', async () => {
    const { recogniser, clock } = await openRig('counting');
    recogniser.now().tell(error('network'));
    clock.advance(1500);
    expect(recogniser.now().aborted).toBe(true);
    clock.advance(250);
    expect(recogniser.sessions).toHaveLength(2);
  });

  test.each([
    ['audio-capture', 'no microphone'],
    ['not-allowed', 'denied'],
    ['service-not-allowed', 'service refused'],
  ])('%s ends the ear at once', async (code, why) => {
    const { ear, recogniser, clock, notices, press, came } = await openRig('counting');
    const lines: readonly Line[] = [
      [100, error(code)],
      [10, ended],
    ];
    recogniser.plays(...lines);
    clock.advance(60_000);
    expect(ear.view()).toMatchObject({ state: 'dead', why });
    expect(recogniser.sessions).toHaveLength(1);
    expect(notices.at(-1)).toMatchObject({ state: 'dead', why });
    press({ type: 'step', size: 'step' });
    expect(came()).toEqual(['counted']);
  });

  test.each([
    ['network', 'network'],
    ['aborted', 'keeps ending'],
    ['something new', 'unknown'],
  ])('%s is tried again some times, then the ear is given up', async (code, why) => {
    const { ear, recogniser, clock } = await openRig('counting');
    for (let i = 0; i < 5 && ear.view().state !== 'dead'; i += 1) {
      recogniser.plays([100, error(code)], [10, ended]);
      clock.advance(8000 - 5000 + 500);
    }
    expect(ear.view()).toMatchObject({ state: 'dead', why });
    expect(recogniser.sessions).toHaveLength(5);
  });

  test('phrases it does not take are left out', async () => {
    const { ear, recogniser, clock } = await openRig('counting', { place: 'on device' });
    expect(recogniser.now().options.hints.length).toBeGreaterThan(10);
    recogniser.plays([10, error('phrases-not-supported')], [10, ended]);
    clock.advance(150);
    expect(recogniser.sessions).toHaveLength(2);
    expect(recogniser.now().options.hints).toEqual([]);
    recogniser.opens();
    expect(ear.view().state).toBe('open');
  });

  test('a language it does not know: the next, then elsewhere, then dead', async () => {
    const { ear, recogniser, clock } = await openRig('counting', { place: 'on device' });
    const tried: string[] = [];
    while (ear.view().state !== 'dead') {
      const { language, onDevice } = recogniser.now().options;
      tried.push(`${language} ${onDevice}`);
      recogniser.plays([10, error('language-not-supported')], [10, ended]);
      clock.advance(150);
    }
    expect(tried).toEqual([
      ...['en-GB', 'en-US', 'en'].map((language) => `${language} true`),
      ...['en-GB', 'en-US', 'en'].map((language) => `${language} false`),
    ]);
    expect(ear.view().why).toBe('language');
  });

  test('a device that refuses is left for elsewhere only where that was agreed to', async () => {
    const { ear, recogniser, clock } = await openRig('counting', {
      place: 'on device',
      mayLeave: false,
    });
    recogniser.plays([10, error('service-not-allowed')], [10, ended]);
    clock.advance(150);
    expect(ear.view()).toMatchObject({ state: 'shut', why: 'notice' });
    expect(recogniser.sessions).toHaveLength(1);
  });

  test('opened again, a dead ear is tried afresh', async () => {
    const { ear, recogniser } = await openRig('counting');
    recogniser.plays([10, error('audio-capture')]);
    ear.start();
    expect(ear.view().state).toBe('opening');
    recogniser.opens();
    expect(ear.view().state).toBe('open');
  });

  test('noise without gaps shuts the ear, with the count; a word does not', async () => {
    const { ear, clock, notices } = await openRig('counting');
    for (let i = 0; i < 100; i += 1) {
      clock.advance(250);
      ear.level(i % 4 === 0 ? -50 : -10);
    }
    expect(ear.view()).toMatchObject({ state: 'open', level: -10 });
    for (let i = 0; i < 26; i += 1) {
      clock.advance(250);
      ear.level(-10);
    }
    expect(ear.view()).toMatchObject({ state: 'shut', why: 'too loud' });
    expect(notices.at(-1)).toEqual({ state: 'shut', why: 'too loud', count48: 48 });
  });

  test('closed for good, it sets no more timers', async () => {
    const { ear, clock, recogniser } = await openRig('counting');
    recogniser.plays([0, speech], [100, interim(0, 'five')]);
    ear.close();
    expect(clock.waiting()).toBe(0);
    ear.start();
    expect(recogniser.sessions).toHaveLength(1);
  });
});
