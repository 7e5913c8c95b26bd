import { screen, waitFor } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { expect, test, vi } from 'vitest';
import JobsScreen from '../../../src/screens/jobs';
import { v8SetUp } from '../../fakes/setUps';
import { draw, fakeServices, openJob } from '../services';

const user = userEvent.setup();

async function press(name: string): Promise<void> {
  await user.click(await screen.findByRole('button', { name }));
}

test('no job yet: says so, and leads to a set-up', async () => {
  const { services } = fakeServices();
  draw(<JobsScreen />, services);
  expect(await screen.findByText(/No job on this device yet/)).toBeVisible();
  await press('Set up a job');
  expect(services.go).toHaveBeenCalledWith({ screen: 'set-up', jobId: null });
});

test('opens, copies and exports a job', async () => {
  const { services } = fakeServices();
  const id = await services.shelf.create(v8SetUp());
  draw(<JobsScreen />, services);
  expect(await screen.findByText('0 of 16 read')).toBeVisible();
  await press('Open Pump 3');
  expect(services.go).toHaveBeenCalledWith({ screen: 'bench', jobId: id });
  await press('Export Pump 3');
  await waitFor(() => expect(services.save).toHaveBeenCalledTimes(1));
  await press('Use Pump 3 as a template');
  expect(await screen.findByText('Pump 3, again')).toBeVisible();
  await waitFor(() =>
    expect(services.go).toHaveBeenCalledWith({ screen: 'set-up', jobId: 'job-2' }),
  );
});

test('counts now on the last set-up, with no engine to name the valve by', async () => {
  const { services, keeper } = fakeServices();
  await services.shelf.create(v8SetUp());
  draw(<JobsScreen />, services);
  await press('Count now');
  await waitFor(() =>
    expect(services.go).toHaveBeenCalledWith({ screen: 'bench', jobId: 'job-2' }),
  );
  expect(keeper.logs.get('job-2')?.[0]).toMatchObject({
    type: 'jobOpened',
    setUp: {
      name: 'Quick count 1',
      engine: null,
      scope: [],
      adjuster: v8SetUp().adjuster,
      groups: v8SetUp().groups,
    },
  });
});

test('counts now with no set-up at all', async () => {
  const { services, keeper } = fakeServices();
  draw(<JobsScreen />, services);
  await press('Count now');
  await waitFor(() => expect(services.go).toHaveBeenCalled());
  expect(keeper.logs.get('job-1')?.[0]).toMatchObject({
    setUp: { engine: null, adjuster: null, groups: [], testPushrod: null },
  });
});

test('discards a job and brings it back', async () => {
  const { services } = fakeServices();
  await services.shelf.create(v8SetUp());
  draw(<JobsScreen />, services);
  await press('Discard Pump 3');
  await user.click(await screen.findByText('1 discarded job'));
  await press('Bring back Pump 3');
  expect(await screen.findByRole('button', { name: 'Open Pump 3' })).toBeVisible();
});

test('the job on the bench is discarded through the bench, its only writer', async () => {
  const { services, keeper } = fakeServices();
  const id = await openJob(services, v8SetUp());
  draw(<JobsScreen />, services);
  await press('Discard Pump 3');
  expect(await screen.findByText('1 discarded job')).toBeVisible();
  expect(services.bench.store.getState().job.status).toBe('discarded');
  expect(keeper.logs.get(id)?.map(({ seq }) => seq)).toEqual([1, 2]);
});

test('takes in a job file, and says why another can’t be read', async () => {
  const { services, keeper } = fakeServices();
  const id = await services.shelf.create(v8SetUp());
  const log = JSON.stringify(keeper.logs.get(id!));
  keeper.logs.clear();
  draw(<JobsScreen />, services);
  const input = await screen.findByLabelText('Bring in a job file', { selector: 'input' });
  await user.upload(input, new File([log], 'pump-3.json', { type: 'application/json' }));
  expect(await screen.findByRole('button', { name: 'Open Pump 3' })).toBeVisible();
  await user.upload(input, new File(['?'], 'other.json', { type: 'application/json' }));
  expect(await screen.findByRole('alert')).toHaveTextContent('That is no job file.');
});

test('backs everything up into one file, and restores one with what became of it', async () => {
  const { services } = fakeServices();
  await services.shelf.create(v8SetUp());
  draw(<JobsScreen />, services);
  await user.click(await screen.findByText('Backup'));
  await press('Back up everything');
  await waitFor(() =>
    expect(services.save).toHaveBeenCalledWith(
      'turncaller-backup.json',
      expect.stringContaining('jobOpened'),
    ),
  );
  const [, text = ''] = vi.mocked(services.save).mock.calls[0] ?? [];
  const other = text.replaceAll('job-1', 'job-9');
  const input = await screen.findByLabelText('Restore a backup', { selector: 'input' });
  await user.upload(input, new File([other], 'backup.json', { type: 'application/json' }));
  expect(await screen.findByText('1 job brought in.')).toBeVisible();
  await user.upload(input, new File(['?'], 'backup.json', { type: 'application/json' }));
  expect(await screen.findByRole('alert')).toHaveTextContent('That is no backup.');
  expect(screen.queryByText('1 job brought in.')).toBeNull();
});

test('a file too large to be one is not read', async () => {
  const { services } = fakeServices();
  draw(<JobsScreen />, services);
  const input = await screen.findByLabelText('Bring in a job file', { selector: 'input' });
  const large = new File(['{}'], 'large.json', { type: 'application/json' });
  Object.defineProperty(large, 'size', { value: 1e9 });
  Object.defineProperty(large, 'text', { value: () => Promise.reject(new Error('read')) });
  await user.upload(input, large);
  expect(await screen.findByRole('alert')).toHaveTextContent('That file is too big');
});
