import { act, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { expect, test } from 'vitest';
import SettingsScreen from '../../../src/screens/settings';
import { draw, fakeServices } from '../services';

const user = userEvent.setup();

test('changes what it shows', async () => {
  const { services } = fakeServices();
  const now = () => services.settings.store.getState().settings;
  draw(<SettingsScreen />, services);
  await user.click(screen.getByLabelText('Millimetres'));
  await user.click(screen.getByLabelText('Terse: the figures'));
  await user.click(screen.getByLabelText('Speak'));
  await user.click(screen.getByLabelText('Bright'));
  await user.click(screen.getByLabelText('Quick'));
  await user.click(screen.getByLabelText('Keys work on the bench'));
  expect(now()).toMatchObject({
    units: 'mm',
    level: 'terse',
    speaks: false,
    shop: 'bright',
    rate: 1.25,
    keysOn: false,
  });
});

test('asks for the screen’s diagonal, refuses an impossible one, and keeps the last good one', async () => {
  const { services } = fakeServices();
  const now = () => services.settings.store.getState().settings;
  draw(<SettingsScreen />, services);
  const field = screen.getByLabelText('Screen’s diagonal');
  await user.type(field, '24');
  expect(now().screenDiagonalIn).toBe(24);
  expect(screen.getByText(/The count on the bench reads from about \d+\.\d m\./)).toBeVisible();
  await user.type(field, '0');
  expect(field).toHaveAccessibleDescription(/from 3 to 120/);
  expect(now().screenDiagonalIn).toBe(24);
});

test('learns the pedal by pressing it, says what to press, and can be stopped', async () => {
  const { services } = fakeServices();
  const { rerender } = draw(<SettingsScreen />, services);
  await user.click(screen.getByRole('button', { name: 'Learn the pedal by pressing it' }));
  expect(services.learnPedal).toHaveBeenCalledTimes(1);
  const learning = { sentence: 'Press the pedal once.', done: false, problems: [] };
  act(() => services.keys.setState({ learning }));
  expect(screen.getByText('Press the pedal once.')).toBeVisible();
  await user.click(screen.getByRole('button', { name: 'Stop learning' }));
  expect(services.stopLearning).toHaveBeenCalledTimes(1);
  act(() => services.keys.setState({ learning: { ...learning, done: true } }));
  expect(screen.getByRole('button', { name: 'Done' })).toBeVisible();
  rerender(null);
  expect(services.stopLearning).toHaveBeenCalledTimes(2);
});

test('shows the keys as they are, and says why nothing is spoken', () => {
  const { services } = fakeServices();
  draw(<SettingsScreen />, services);
  expect(screen.getByRole('cell', { name: 'Space' })).toBeVisible();
  expect(screen.getByText(/This device has no voice/)).toBeVisible();
});

test('the ear: how it listens, what it may do, and its log only when there is one', async () => {
  const { services } = fakeServices();
  const now = () => services.settings.store.getState().settings;
  let log = '';
  draw(<SettingsScreen />, { ...services, earLog: () => log });
  await user.click(screen.getByLabelText('The browser’s own'));
  expect(now().whichEar).toBe('browser');
  await user.click(screen.getByLabelText('None: keys, pedal and touch'));
  expect(now().whichEar).toBe('none');
  await user.click(screen.getByLabelText('While its key is held'));
  expect(screen.getByText(/^No key is learned yet/)).toBeVisible();
  await user.click(screen.getByLabelText(/^Counts need the word/));
  await user.click(screen.getByLabelText('Speech may leave this device'));
  await user.click(screen.getByLabelText('I wear a headset'));
  expect(now()).toMatchObject({
    listens: 'while held',
    carrier: true,
    mayLeave: true,
    headset: true,
  });
  await user.click(screen.getByRole('button', { name: 'Learn the key to hold while speaking' }));
  expect(services.learnListen).toHaveBeenCalledTimes(1);
  const saves = screen.getByRole('button', { name: 'Save the ear’s log' });
  await user.click(saves);
  expect(screen.getByText(/there is no log/)).toBeVisible();
  expect(services.save).not.toHaveBeenCalled();
  log = '{"inputs":[]}';
  await user.click(saves);
  expect(services.save).toHaveBeenCalledWith('turncaller-ear-log.json', log);
  act(() => services.ear.setState({ state: 'dead', why: 'network' }));
  expect(screen.getByText(/^The speech service can’t be reached/)).toBeVisible();
});

test('a session of the ear is recorded only when asked for, and saved or deleted from here', async () => {
  const { services } = fakeServices();
  draw(<SettingsScreen />, services);
  expect(services.recording.look).toHaveBeenCalled();
  expect(screen.queryByRole('button', { name: 'Delete the recording' })).toBeNull();
  await user.click(screen.getByLabelText('Record the next session of the ear'));
  expect(services.recording.want).toHaveBeenCalledWith(true);
  act(() => services.recording.store.setState({ seconds: 83.4, unkept: true }));
  expect(screen.getByText('A session of 1 min 23 s is kept on this device.')).toBeVisible();
  expect(screen.getByRole('alert')).toHaveTextContent(/could not be kept/);
  await user.click(screen.getByRole('button', { name: 'Save the recording' }));
  expect(services.recording.hand).toHaveBeenCalledTimes(1);
  await user.click(screen.getByRole('button', { name: 'Delete the recording' }));
  expect(services.recording.forget).toHaveBeenCalledTimes(1);
});

test('the sound check is reached from the ear’s part', async () => {
  const { services } = fakeServices();
  draw(<SettingsScreen />, services);
  await user.click(screen.getByRole('button', { name: /^Sound check/ }));
  expect(services.go).toHaveBeenCalledWith({ screen: 'sound-check' });
});
