import { act, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { expect, test } from 'vitest';
import { App } from '#screens';
import { v8SetUp } from '../fakes/setUps';
import { draw, fakeServices } from './services';

const user = userEvent.setup();

test('shows the screen the route names, and goes where the bar is pressed', async () => {
  const { services } = fakeServices({ screen: 'jobs' });
  draw(<App />, services);
  expect(await screen.findByRole('heading', { name: 'Jobs', level: 1 })).toBeVisible();
  expect(screen.getByRole('link', { name: 'Jobs' })).toHaveAttribute('aria-current', 'page');
  expect(screen.queryByRole('link', { name: 'Bench' })).toBeNull();
  await user.click(screen.getByRole('link', { name: 'About' }));
  const about = await screen.findByRole('heading', { name: 'About', level: 1 });
  expect(about).toHaveFocus();
  expect(document.title).toBe('About · Turncaller');
});

test('opens the job its route names; the bench then has the page to itself', async () => {
  const { services } = fakeServices();
  const jobId = await services.shelf.create(v8SetUp());
  services.go({ screen: 'results', jobId: jobId! });
  draw(<App />, services);
  expect(await screen.findByText('0 of 16 valves read')).toBeVisible();
  expect(screen.getByRole('link', { name: 'Bench' })).toBeVisible();
  act(() => services.go({ screen: 'bench', jobId: jobId! }));
  expect(screen.queryByRole('navigation')).toBeNull();
  expect(screen.getByRole('heading', { level: 1 })).toHaveFocus();
  expect(document.title).toBe('Bench · Turncaller');
  expect(services.bench.store.getState().jobId).toBe(jobId);
});

test('a job that can’t be read says so and leads to the jobs', async () => {
  const { services, keeper } = fakeServices({ screen: 'results', jobId: 'gone' });
  keeper.unreadable = true;
  draw(<App />, services);
  expect(await screen.findByRole('alert')).toHaveTextContent(/can’t be read/);
  await user.click(screen.getByRole('button', { name: 'Go to the jobs' }));
  expect(services.go).toHaveBeenCalledWith({ screen: 'jobs' });
});
