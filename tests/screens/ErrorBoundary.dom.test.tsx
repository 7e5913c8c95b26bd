import { render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, expect, test, vi } from 'vitest';
import { ErrorBoundary } from '#screens';

afterEach(() => {
  vi.restoreAllMocks();
});

const build = { version: '1.2.3', commit: 'abc1234' };

function Broken(): never {
  throw new Error('the dial has no mark');
}

test('draws its children while they draw', () => {
  render(
    <ErrorBoundary build={build}>
      <p>four counted</p>
    </ErrorBoundary>,
  );
  expect(screen.getByText('four counted')).toBeVisible();
  expect(screen.queryByRole('alert')).toBeNull();
});

test('says what happened, that the count is kept, which build it is, and reloads when asked', async () => {
  vi.spyOn(console, 'error').mockImplementation(() => {});
  const reload = vi.spyOn(window.location, 'reload').mockImplementation(() => {});
  render(
    <ErrorBoundary build={build}>
      <Broken />
    </ErrorBoundary>,
  );
  const alert = screen.getByRole('alert');
  expect(alert).toHaveTextContent('the dial has no mark');
  expect(alert).toHaveTextContent('What was counted is kept on this device');
  expect(screen.getByRole('main')).toHaveTextContent('Version 1.2.3, commit abc1234');
  await userEvent.click(screen.getByRole('button', { name: 'Reload' }));
  expect(reload).toHaveBeenCalledTimes(1);
});
