import { screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { beforeEach, expect, test } from 'vitest';
import { setUpOf } from '#counting';
import SetUpScreen from '../../../src/screens/set-up';
import { v8SetUp } from '../../fakes/setUps';
import { draw, fakeServices, openJob } from '../services';

beforeEach(() => sessionStorage.clear());

const user = userEvent.setup();

/** The set-up of an open job, to be changed. */
async function changing() {
  const { services } = fakeServices();
  const jobId = await openJob(services, v8SetUp());
  draw(<SetUpScreen jobId={jobId} />, services);
  return services;
}

async function type(label: string, text: string): Promise<void> {
  const field = screen.getByRole('textbox', { name: label });
  await user.clear(field);
  await user.paste(text);
  await user.tab();
}

function stops(): readonly string[] {
  const table = screen.getByRole('table', { name: 'The stops this comes to' });
  return within(table)
    .getAllByRole('row')
    .slice(1)
    .map((row) => within(row).getAllByRole('cell')[0]?.querySelector('strong')?.textContent ?? '');
}

test('an unknown cam says what it is taken for', async () => {
  await changing();
  expect(screen.getByLabelText('I don’t know the cam')).toBeChecked();
  expect(
    screen.getByText(/^The cam is not known: each valve is taken to be open for 320° about/),
  ).toBeInTheDocument();
});

test('a card by its events shows its other form; a misread separation is said with both figures', async () => {
  await changing();
  await user.click(screen.getByLabelText('The four events, in crank degrees'));
  await user.click(screen.getByLabelText('At the seat'));
  await type('Intake opens before TDC', '25');
  await type('Intake closes after BDC', '55');
  await type('Exhaust opens before BDC', '65');
  await type('Exhaust closes after TDC', '15');
  // The worked example advanced by 5: 260 and 260, 110 apart, the intake at 105.
  expect(
    screen.getByText(
      'In the other form: 260° and 260° intake and exhaust, separation 110°, intake centreline 105°.',
    ),
  ).toBeInTheDocument();
  await type('Lobe separation', '108');
  expect(
    screen.getByText(
      'The card’s lobe separation is 108°, but its events give 110°: they are 2° apart. One of them is misread.',
    ),
  ).toBeInTheDocument();
  expect(screen.getByText(/^The stops show here once/)).toBeInTheDocument();
});

test('a card by durations and advance, and the fewest stops of it, go into the set-up', async () => {
  const services = await changing();
  expect(stops()).toHaveLength(8);
  await user.click(screen.getByLabelText('Durations, lobe separation, and centreline or advance'));
  await user.click(screen.getByLabelText('At the seat'));
  await user.click(screen.getByLabelText('How far it is advanced'));
  await type('Intake duration', '280');
  await type('Exhaust duration', '284');
  await type('Lobe separation', '112');
  await type('Advanced by', '4');
  await user.selectOptions(screen.getByLabelText('How the crank is walked'), 'fewest stops');
  expect(stops()).toEqual(['exhaust 1 3 4 8, intake 1 2 5 7', 'exhaust 2 5 6 7, intake 3 4 6 8']);
  await user.click(screen.getByRole('button', { name: 'Change the set-up' }));
  await waitFor(() => expect(services.go).toHaveBeenCalled());
  const setUp = setUpOf(services.bench.store.getState().job);
  expect(setUp?.cam).toEqual({
    form: 'durations',
    statedAt: 'seat',
    lobes: {
      intakeDurationDeg: 280,
      exhaustDurationDeg: 284,
      lobeSeparationDeg: 112,
      intakeCentrelineDeg: 108,
    },
  });
  expect(setUp?.walk?.method).toBe('fewest stops');
});

test('a margin no position gives is refused, one that falls short is asked about and may be kept', async () => {
  await changing();
  await type('Margin wanted off the ramps', '100');
  // The cautious cam at a firing TDC: 360 − 160 − 110 = 90 either way, and 200 in the middle.
  const short = screen.getByText(/^Cylinder 1’s exhaust is only 90° off its ramp where this plan/);
  expect(short).toHaveTextContent('10° short of the 100° wanted');
  await user.click(screen.getByRole('button', { name: 'Keep it so' }));
  expect(screen.queryByText(/^Cylinder 1’s exhaust is only 90°/)).toBeNull();
  await type('Margin wanted off the ramps', '201');
  expect(
    screen.getByText(/^No crank position keeps cylinder 1’s \w+ 201° off its ramps/),
  ).toHaveTextContent('200° is the most');
});
