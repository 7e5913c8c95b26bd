import { act, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, test } from 'vitest';
import type { SoundCheckShown } from '#screens';
import SoundCheckScreen from '../../../src/screens/sound-check';
import { draw, fakeServices } from '../services';

const user = userEvent.setup();

function drawn() {
  const { services } = fakeServices();
  const { unmount } = draw(<SoundCheckScreen />, services);
  const check = (shown: Partial<SoundCheckShown>) =>
    act(() => services.soundCheck.store.setState(shown));
  return { services, check, unmount };
}

describe('the sound check', () => {
  test('begins when asked, says how far the ear is fetched, and what to say now', async () => {
    const { services, check } = drawn();
    await user.click(screen.getByRole('button', { name: 'Begin the sound check' }));
    expect(services.soundCheck.start).toHaveBeenCalledTimes(1);
    check({ state: 'fetching', fetched: 0.339 });
    expect(screen.getByRole('status')).toHaveTextContent('Fetching the ear, 33 %');
    check({ state: 'running', phase: 'room', done: 0, of: 18 });
    expect(screen.getByRole('status')).toHaveTextContent('Quiet, please');
    check({ phase: 'commands', asked: 'take it back', done: 13 });
    expect(screen.getByRole('status')).toHaveTextContent('Saytake it back13 of 18');
    await user.click(screen.getByRole('button', { name: 'Stop' }));
    expect(services.soundCheck.stop).toHaveBeenCalledTimes(1);
  });

  test.each([
    ['good', /^Good/],
    ['carrier', /^Usable: use the carrier word/],
    ['pedal', /^Too noisy: use the pedal/],
    ['nothing heard', /^Nothing was heard/],
  ] as const)('ends %s, with what to do', (verdict, says) => {
    const { check } = drawn();
    check({ state: 'over', verdict });
    expect(screen.getByRole('status')).toHaveTextContent(says);
    expect(screen.getByRole('button', { name: 'Do it again' })).toBeVisible();
  });

  test('the carrier word is put in use from the verdict', async () => {
    const { services, check } = drawn();
    check({ state: 'over', verdict: 'carrier' });
    await user.click(screen.getByRole('button', { name: 'Use the carrier word' }));
    expect(services.settings.store.getState().settings.carrier).toBe(true);
    expect(screen.getByText('The carrier word is in use.')).toBeVisible();
  });

  test('why it could not be held is said', () => {
    const { check } = drawn();
    check({ state: 'failed', why: 'denied' });
    expect(screen.getByRole('alert')).toHaveTextContent(
      /could not be held\. The microphone is not allowed/,
    );
  });

  test('the kept words can be deleted, and what could not be kept is said', async () => {
    const { services, check } = drawn();
    expect(screen.queryByRole('button', { name: 'Delete them' })).toBeNull();
    check({ kept: true, unkept: true });
    expect(screen.getByRole('alert')).toHaveTextContent(/could not be kept/);
    await user.click(screen.getByRole('button', { name: 'Delete them' }));
    expect(services.soundCheck.forget).toHaveBeenCalledTimes(1);
  });

  test('ends when the screen is left', () => {
    const { services, unmount } = drawn();
    unmount();
    expect(services.soundCheck.stop).toHaveBeenCalledTimes(1);
  });
});
