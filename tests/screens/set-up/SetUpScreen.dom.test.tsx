import { screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { beforeEach, describe, expect, test } from 'vitest';
import { setUpOf } from '#counting';
import SetUpScreen from '../../../src/screens/set-up';
import { v8SetUp } from '../../fakes/setUps';
import { draw, fakeServices, openJob } from '../services';

beforeEach(() => sessionStorage.clear());

const user = userEvent.setup();

async function choose(label: string, option: string): Promise<void> {
  await user.selectOptions(screen.getByLabelText(label), option);
}

async function type(label: string, text: string): Promise<void> {
  await user.clear(screen.getByLabelText(label));
  await user.type(screen.getByLabelText(label), text);
  await user.tab();
}

async function shortestRoad(pushrod: string): Promise<void> {
  await choose('Layout and firing order', 'V8, numbered alternately, 1-8-4-3-6-5-7-2');
  await user.click(screen.getByLabelText('Clockwise'));
  await choose('Thread', 'M8 × 1.25');
  await type('Rocker ratio', '1.7');
  await choose('Lifter kind', 'Long-travel hydraulic roller');
  await type('Length of the test pushrod', pushrod);
}

async function started() {
  const { services } = fakeServices({ screen: 'set-up', jobId: null });
  const drawn = draw(<SetUpScreen jobId={null} />, services);
  await screen.findByLabelText('Job name');
  return { services, drawn };
}

async function setUpMade(services: Awaited<ReturnType<typeof started>>['services']) {
  await waitFor(() => expect(services.go).toHaveBeenCalled());
  return services.shelf.lastSetUp();
}

describe('a new job', () => {
  test('by engine, thread, ratio, lifter and test pushrod in inches', async () => {
    const { services } = await started();
    await shortestRoad('8.150');
    // 1.25 × (1 + 1/1.7) / 4 = 0.4963 mm = 19.54 thou a quarter turn, worked by hand.
    expect(screen.getByText('19.5 thou')).toBeVisible();
    await user.click(screen.getByRole('button', { name: 'Start counting' }));
    const made = await setUpMade(services);
    expect(made?.adjuster?.pitchMm).toBe(1.25);
    expect(made?.testPushrod?.mm).toBeCloseTo(207.01, 6);
    expect(made?.groups[0]?.window.usableMinMm).toBeCloseTo(1.905, 6);
    expect(services.go).toHaveBeenCalledWith({ screen: 'bench', jobId: 'job-1' });
  });

  test('in millimetres, changed on the way: the text is the same length', async () => {
    const { services } = await started();
    await shortestRoad('8.150');
    await user.click(screen.getByLabelText('Millimetres'));
    expect(screen.getByLabelText('Length of the test pushrod')).toHaveValue('207.01');
    expect(screen.getByText('0.496 mm')).toBeVisible();
    expect(services.settings.store.getState().settings.units).toBe('mm');
    await type('Length of the test pushrod', '210.5');
    await user.click(screen.getByRole('button', { name: 'Start counting' }));
    expect((await setUpMade(services))?.testPushrod?.mm).toBe(210.5);
  });

  test('has no window until the lifter kind is chosen, then one to be confirmed', async () => {
    await started();
    expect(screen.getByText('No window until the lifter kind is chosen.')).toBeVisible();
    expect(screen.queryByLabelText('Plunger travel')).toBeNull();
    await choose('Lifter kind', 'Long-travel hydraulic roller');
    expect(
      screen.getByText('Common practice: confirm against the lifter maker’s own figures'),
    ).toBeVisible();
    expect(screen.getByLabelText('Usable from')).toHaveValue('75');
  });

  test('says what is missing at its end and goes to the first of it', async () => {
    const { services } = await started();
    await user.click(screen.getByRole('button', { name: 'Start counting' }));
    expect(screen.getByText('5 things are missing or can’t be right:')).toBeVisible();
    expect(screen.getByLabelText('Layout and firing order')).toHaveFocus();
    await user.click(screen.getByRole('button', { name: /rocker ratio is missing/i }));
    expect(screen.getByLabelText('Rocker ratio')).toHaveFocus();
    expect(services.go).not.toHaveBeenCalled();
  });

  test('shows a refusal beside its field, and asks an odd figure back once', async () => {
    const { services } = await started();
    await shortestRoad('8.150');
    await type('Rocker ratio', '0');
    const field = screen.getByLabelText('Rocker ratio');
    expect(field).toHaveAccessibleDescription(/rocker ratio of 0 is out of range/i);
    expect(field).toBeInvalid();
    await type('Rocker ratio', '2.1');
    await user.click(screen.getByRole('button', { name: 'Keep 2.1' }));
    expect(screen.queryByRole('button', { name: 'Keep 2.1' })).toBeNull();
    await user.click(screen.getByRole('button', { name: 'Start counting' }));
    expect((await setUpMade(services))?.adjuster?.rockerRatio).toBe(2.1);
  });

  test('ball and hole known, the pushrod’s length stands both ways', async () => {
    await started();
    await type('Length of the test pushrod', '8.150');
    const figures = { 'Ball at the lifter': '0.3125', 'Oil hole at the lifter': '0.100' };
    for (const [label, text] of Object.entries(figures)) {
      await type(label, text);
      await type(label.replace('lifter', 'rocker'), text);
    }
    // 5/16 balls with holes of .100: .0164 at both ends together.
    expect(screen.getByText('8.150 in tip to tip is 8.1664 in full ball.')).toBeInTheDocument();
    await type('Oil hole at the rocker', '0.5');
    expect(screen.getByText(/wider than the oil hole through it/)).toBeInTheDocument();
  });

  test.each([
    ['Layout and firing order', 'Overhead cam', /no pushrod to carry the preload/],
    [
      'What turns',
      'One shaft or bridge that holds several rockers',
      /rocker by rocker: torque them/,
    ],
    ['Lifter kind', 'Solid lifters', /feeler gauge/],
  ])('%s: %s is answered in a sentence', async (label, option, sentence) => {
    await started();
    await choose(label, option);
    expect(screen.getByText(sentence)).toBeVisible();
  });

  test('survives a reload, and says that nothing is lost', async () => {
    const { services, drawn } = await started();
    await shortestRoad('8.150');
    drawn.unmount();
    draw(<SetUpScreen jobId={null} />, services);
    expect(await screen.findByText(/nothing you typed is lost/)).toBeVisible();
    expect(screen.getByLabelText('Rocker ratio')).toHaveValue('1.7');
  });

  test('copies the last set-up without its name, and says so', async () => {
    const { services } = fakeServices();
    await services.shelf.create(v8SetUp());
    draw(<SetUpScreen jobId={null} />, services);
    expect(await screen.findByText(/Copied from ‘Pump 3’/)).toBeVisible();
    expect(screen.getByLabelText('Job name')).toHaveValue('');
    expect(screen.getByLabelText('Length of the test pushrod')).toHaveValue('8.150');
    await user.click(screen.getByRole('button', { name: 'Start with nothing filled in' }));
    expect(screen.getByLabelText('Length of the test pushrod')).toHaveValue('');
  });

  test('a returning builder counts on the copied set-up with one press', async () => {
    const { services } = fakeServices();
    await services.shelf.create(v8SetUp());
    draw(<SetUpScreen jobId={null} />, services);
    await user.click(await screen.findByRole('button', { name: 'Count on it as it stands' }));
    await waitFor(() =>
      expect(services.go).toHaveBeenCalledWith({ screen: 'bench', jobId: 'job-2' }),
    );
    expect(await services.shelf.lastSetUp()).toEqual({
      ...v8SetUp(),
      name: 'V8, 1-8-4-3-6-5-7-2',
      scope: expect.arrayContaining([...v8SetUp().scope]),
    });
  });

  test('shows pitch and lever side by side, and says where they conflict', async () => {
    await started();
    await shortestRoad('8.150');
    await user.click(screen.getByText('Why this figure'));
    const table = within(screen.getByText('Why this figure').closest('details')!).getByRole(
      'table',
    );
    // 1.25 / 4 = 0.3125 mm = 12.30 thou by the pitch alone, worked by hand.
    expect(within(table).getByRole('row', { name: /By the pitch alone/ })).toHaveTextContent(
      '12.3',
    );
    expect(within(table).getByRole('row', { name: /By pitch and lever/ })).toHaveTextContent(
      '19.5',
    );
    expect(screen.getByText(/Much trade text takes the pitch alone/)).toBeVisible();
  });
});

describe('a change to the open job', () => {
  test('before any reading is taken at once, also on a resting bench', async () => {
    const { services } = fakeServices();
    const jobId = await services.shelf.create(v8SetUp());
    await services.bench.open(jobId!);
    draw(<SetUpScreen jobId={jobId} />, services);
    await type('Rocker ratio', '1.6');
    await user.click(screen.getByRole('button', { name: 'Change the set-up' }));
    const { job } = services.bench.store.getState();
    expect(setUpOf(job)?.adjuster?.rockerRatio).toBe(1.6);
    expect(setUpOf(job)?.name).toBe('Pump 3');
    expect(services.go).toHaveBeenCalledWith({ screen: 'bench', jobId });
    expect(sessionStorage).toHaveLength(0);
  });

  test('half typed survives a reload, and gives way to the set-up in force when asked', async () => {
    const { services } = fakeServices();
    const jobId = await openJob(services, v8SetUp());
    draw(<SetUpScreen jobId={jobId} />, services).unmount();
    const looked = draw(<SetUpScreen jobId={jobId} />, services);
    expect(screen.queryByText(/nothing you typed is lost/)).toBeNull();
    await type('Rocker ratio', '1.6');
    looked.unmount();
    draw(<SetUpScreen jobId={jobId} />, services);
    expect(screen.getByLabelText('Rocker ratio')).toHaveValue('1.6');
    await user.click(screen.getByRole('button', { name: 'Show the set-up in force instead' }));
    expect(screen.getByLabelText('Rocker ratio')).toHaveValue('1.7');
  });

  test.each([
    ['Change it for all readings', 'setupChanged all'],
    ['Change it from here on', 'setupChanged from here'],
  ])('with a reading asks what becomes of it: %s', async (button, expected) => {
    const { services, keeper } = fakeServices();
    const jobId = await openJob(services, v8SetUp());
    for (const type of ['cautionsHeard', 'crankThere', 'zero'] as const) services.touch({ type });
    services.touch({ type: 'step', size: 'step' });
    services.touch({ type: 'seat', loose: false });
    draw(<SetUpScreen jobId={jobId} />, services);
    await type('Rocker ratio', '1.6');
    await user.click(screen.getByRole('button', { name: 'Change the set-up' }));
    expect(screen.getByText(/1 reading is taken/)).toBeVisible();
    await user.click(screen.getByRole('button', { name: button }));
    await waitFor(() => {
      const last = keeper.logs.get(jobId)?.at(-1);
      expect(last?.type === 'setupChanged' && `${last.type} ${last.appliesTo}`).toBe(expected);
    });
  });
});
