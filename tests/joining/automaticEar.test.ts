import { describe, expect, test } from 'vitest';
import type { EarKind, EarNotice, EarWhy } from '#words';
import { automaticEar, type TakesOver } from '../../src/joining/automaticEar';

/** Ears that do nothing but remember what they were told. */
function rig(order: readonly [EarKind, ...EarKind[]]) {
  const log: string[] = [];
  const waiting: (() => void)[] = [];
  const asks: TakesOver[] = [];
  const ear = automaticEar(
    order,
    (kind, takesOver) => {
      asks.push(takesOver);
      log.push(`${kind} made`);
      return {
        toggle: () => log.push(`${kind} toggled`),
        hold: (on) => log.push(`${kind} held ${on}`),
        start: () => log.push(`${kind} started`),
        stop: () => log.push(`${kind} stopped`),
        log: () => kind,
        close: () => log.push(`${kind} closed`),
      };
    },
    (then) => waiting.push(then),
  );
  const tells = (state: EarNotice['state'], why: EarWhy) =>
    asks.at(-1)?.({ state, why, count48: null }) ?? null;
  const settle = () => {
    for (const then of waiting.splice(0)) then();
  };
  return { ear, log, tells, settle };
}

describe('the ear left to the app', () => {
  test('one that dies is followed by the next, which is opened', () => {
    const { ear, log, tells, settle } = rig(['browser', 'offline']);
    ear.start();
    expect(tells('dead', 'no answer')).toBe('offline');
    settle();
    expect(log).toEqual([
      'browser made',
      'browser started',
      'browser closed',
      'offline made',
      'offline started',
    ]);
    expect(ear.log()).toBe('offline');
    expect(tells('dead', 'model damaged')).toBeNull();
  });

  test('with its key held, the next is held too', () => {
    const { ear, log, tells, settle } = rig(['offline', 'browser']);
    ear.hold(true);
    expect(tells('dead', 'no model')).toBe('browser');
    settle();
    expect(log.at(-1)).toBe('browser held true');
  });

  test('no other ear cures a missing microphone, nor is it asked for leave by one', () => {
    const { tells, log, settle } = rig(['offline', 'browser']);
    for (const why of ['no microphone', 'denied', 'notice'] as const) {
      expect(tells(why === 'notice' ? 'shut' : 'dead', why)).toBeNull();
    }
    expect(tells('shut', 'asked')).toBeNull();
    expect(tells('open', 'room louder')).toBeNull();
    settle();
    expect(log).toEqual(['offline made']);
  });

  test('rather than send speech elsewhere, the one that needs no network takes over', () => {
    const { tells } = rig(['browser', 'offline']);
    expect(tells('shut', 'notice')).toBe('offline');
  });

  test('closed meanwhile, none is opened', () => {
    const { ear, tells, settle, log } = rig(['browser', 'offline']);
    expect(tells('dead', 'network')).toBe('offline');
    ear.close();
    settle();
    expect(log).toEqual(['browser made', 'browser closed']);
  });
});
