import { describe, expect, test } from 'vitest';
import { systemClock } from '#clock';
import { fakeClock } from './fakes/clock';

describe('the system clock', () => {
  test('calls back once, after a wait', async () => {
    const before = systemClock.now();
    await new Promise<void>((resolve) => systemClock.after(5, resolve));
    expect(systemClock.now()).toBeGreaterThanOrEqual(before);
  });

  test('a cancelled wait does not call back', async () => {
    let called = false;
    const cancel = systemClock.after(1, () => {
      called = true;
    });
    cancel();
    await new Promise<void>((resolve) => systemClock.after(10, resolve));
    expect(called).toBe(false);
  });
});

describe('the fake clock', () => {
  test('stands still until told', () => {
    const clock = fakeClock(1000);
    const heard: string[] = [];
    clock.after(10, () => heard.push('ten'));
    clock.advance(9);
    expect(heard).toEqual([]);
    expect(clock.now()).toBe(1009);
    clock.advance(1);
    expect(heard).toEqual(['ten']);
    expect(clock.waiting()).toBe(0);
  });

  test('runs what is due in order of time, then of asking', () => {
    const clock = fakeClock(0);
    const heard: string[] = [];
    clock.after(20, () => heard.push(`late at ${clock.now()}`));
    clock.after(10, () => heard.push(`first at ${clock.now()}`));
    clock.after(10, () => heard.push(`second at ${clock.now()}`));
    clock.advance(100);
    expect(heard).toEqual(['first at 10', 'second at 10', 'late at 20']);
    expect(clock.now()).toBe(100);
  });

  test('a callback may ask for another within the same advance, or cancel one', () => {
    const clock = fakeClock(0);
    const heard: number[] = [];
    const cancel = clock.after(30, () => heard.push(-1));
    clock.after(10, () => {
      cancel();
      clock.after(10, () => heard.push(clock.now()));
    });
    clock.advance(30);
    expect(heard).toEqual([20]);
  });
});
