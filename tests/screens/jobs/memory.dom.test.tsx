import { screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { expect, test } from 'vitest';
import { replay } from '#counting';
import JobsScreen from '../../../src/screens/jobs';
import { afterAll, countAll, openedJob } from '../../fakes/countedJob';
import { oneCylinder, v8SetUp } from '../../fakes/setUps';
import { draw, fakeServices, openJob } from '../services';

const user = userEvent.setup();

async function shelfWith(...names: readonly string[]) {
  const made = fakeServices();
  for (const name of names) await made.services.shelf.create(v8SetUp({ name }));
  return made;
}

const jobNames = () => screen.getAllByRole('heading', { level: 2 }).map((one) => one.textContent);

test('a job is tagged from the list and found by the tag', async () => {
  const { services, keeper } = await shelfWith('Pump 3', 'Winch');
  draw(<JobsScreen />, services);
  await user.click(await screen.findByRole('button', { name: 'Tags of Winch' }));
  await user.type(screen.getByRole('textbox', { name: 'Tags of Winch' }), 'spare');
  await user.click(screen.getByRole('button', { name: 'Keep' }));
  expect(await screen.findByRole('list', { name: 'Tags of Winch' })).toHaveTextContent('spare');
  expect(replay(keeper.logs.get('job-2')!).notes.tags).toEqual(['spare']);
  await user.selectOptions(screen.getByLabelText('Tag'), 'spare');
  expect(jobNames()).toEqual(['Winch']);
  expect(screen.getByText('1 of 2 jobs')).toBeVisible();
});

test('tagging the job on the bench goes through the bench, its only writer', async () => {
  const { services } = fakeServices();
  await openJob(services, v8SetUp());
  draw(<JobsScreen />, services);
  await user.click(await screen.findByRole('button', { name: 'Tags of Pump 3' }));
  await user.type(screen.getByRole('textbox', { name: 'Tags of Pump 3' }), 'bench');
  await user.click(screen.getByRole('button', { name: 'Keep' }));
  await waitFor(() => expect(services.bench.store.getState().job.notes.tags).toEqual(['bench']));
});

test('words find a job, and where none holds them it is said', async () => {
  const { services } = await shelfWith('Pump 3', 'Pump 4', 'Winch');
  draw(<JobsScreen />, services);
  await user.type(await screen.findByLabelText('Find'), 'pump 4');
  expect(jobNames()).toEqual(['Pump 4']);
  await user.type(screen.getByLabelText('Find'), ' crane');
  expect(screen.getByText('No job holds all of that.')).toBeVisible();
});

test('two jobs beside each other: lengths needed, by hand, and what differs', async () => {
  const { services, keeper } = fakeServices();
  const other = { ...v8SetUp().adjuster!, rockerRatio: 1.7 };
  const first = countAll(openedJob(oneCylinder({ name: 'First' }), 'first'), () => 4);
  const second = countAll(
    openedJob(oneCylinder({ name: 'Second', adjuster: other, hands: 'with helper' }), 'second'),
    () => 4.5,
  );
  await keeper.append(first.events);
  await keeper.append(second.events);
  draw(<JobsScreen />, services);
  await user.click(await screen.findByRole('button', { name: 'Compare First' }));
  expect(screen.getByText('Choose another job to compare with.')).toBeVisible();
  await user.click(screen.getByRole('button', { name: 'Compare Second' }));
  const part = await screen.findByRole('region', { name: 'Two jobs compared' });
  expect(await within(part).findByText(/^Same engine and parts/)).toBeVisible();
  const cells = (name: string) =>
    within(within(part).getByRole('row', { name: new RegExp(`^${name}`) }))
      .getAllByRole('cell')
      .map(({ textContent }) => textContent);
  // 8.150 less 4 quarters of 19.54 thou, and 90 to aim at: 8.1618; half a quarter more: 9.8 less.
  expect(cells('Intakes need')).toEqual(['8.162 in', '8.152 in', '−10 thou']);
  expect(cells('Engine')[2]).toBe('the same');
  expect(cells('1 intake')).toEqual(['8.162 in', '8.152 in', '−10 thou']);
  await user.click(within(part).getByRole('button', { name: 'Stop comparing' }));
  expect(screen.queryByRole('region', { name: 'Two jobs compared' })).toBeNull();
});

test('jobs of other parts are said to be so, and one not measured has no lengths', async () => {
  const { services, keeper } = fakeServices();
  const adjuster = { ...v8SetUp().adjuster!, rockerRatio: 1.5 };
  await keeper.append(openedJob(oneCylinder({ name: 'First', adjuster }), 'first').events);
  await keeper.append(afterAll(openedJob(oneCylinder({ name: 'Second' }), 'second')).events);
  draw(<JobsScreen />, services);
  await user.click(await screen.findByRole('button', { name: 'Compare First' }));
  await user.click(screen.getByRole('button', { name: 'Compare Second' }));
  const part = await screen.findByRole('region', { name: 'Two jobs compared' });
  expect(await within(part).findByText(/^Not the same engine and parts/)).toBeVisible();
  expect(part.textContent).not.toMatch(/NaN|undefined|Infinity/);
  expect(within(part).getByRole('row', { name: /^Parts .* differs$/ })).toBeVisible();
});
