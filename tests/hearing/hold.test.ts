import { describe, expect, test } from 'vitest';
import { openRig, rigAt, settled } from './rig';
import { ended, final, interim, speech } from './scriptedRecogniser';

describe('listening while a key is held', () => {
  async function held() {
    const rig = rigAt('counting', { listens: 'while held' });
    rig.ear.start();
    await settled();
    expect(rig.recogniser.sessions).toHaveLength(0);
    rig.ear.hold(true);
    await settled();
    rig.recogniser.opens();
    return rig;
  }

  test('the ear is open while the key is down and 600 ms longer', async () => {
    const { ear, recogniser, clock, notices } = await held();
    expect(ear.view()).toMatchObject({ state: 'open', byKey: true });
    clock.advance(2000);
    ear.hold(false);
    clock.advance(599);
    expect(recogniser.now().finished).toBe(false);
    clock.advance(1);
    expect(recogniser.now().finished).toBe(true);
    expect(ear.view().state).toBe('shut');
    expect(notices).toEqual([]);
  });

  test('what was said while it was down still counts when its text comes after', async () => {
    const { ear, recogniser, clock, came } = await held();
    recogniser.plays([200, speech], [200, interim(0, 'five and')]);
    ear.hold(false);
    clock.advance(600);
    recogniser.plays([500, final(0, 'five and a half')], [50, ended]);
    expect(came()).toEqual(['counted']);
    clock.advance(60_000);
    expect(recogniser.sessions).toHaveLength(1);
  });

  test('a service that never ends after it is ended by the watch', async () => {
    const { ear, recogniser, clock, came } = await held();
    recogniser.plays([200, speech], [200, interim(0, 'five')]);
    ear.hold(false);
    clock.advance(600);
    expect(came()).toEqual(['counted']);
    clock.advance(2000);
    expect(recogniser.now().aborted).toBe(true);
    recogniser.plays([100, final(0, 'six')]);
    expect(came()).toEqual([]);
  });

  test('pressed again in the tail it simply goes on; after it, a new session starts', async () => {
    const { ear, recogniser, clock } = await held();
    ear.hold(false);
    clock.advance(300);
    ear.hold(true);
    clock.advance(5000);
    expect(recogniser.sessions).toHaveLength(1);
    ear.hold(false);
    clock.advance(700);
    ear.hold(true);
    expect(recogniser.sessions).toHaveLength(2);
    expect(recogniser.sessions[0]?.aborted).toBe(true);
  });

  test('the key opens a shut ear for as long as it is held, and leaves an open one open', async () => {
    const shut = rigAt('counting');
    shut.ear.hold(true);
    await settled();
    shut.recogniser.opens();
    expect(shut.ear.view().state).toBe('open');
    shut.ear.hold(false);
    shut.clock.advance(600);
    expect(shut.ear.view().state).toBe('shut');
    const open = await openRig('counting');
    open.ear.hold(true);
    open.ear.hold(false);
    open.clock.advance(10_000);
    expect(open.ear.view().state).toBe('open');
    expect(open.recogniser.sessions).toHaveLength(1);
  });
});
