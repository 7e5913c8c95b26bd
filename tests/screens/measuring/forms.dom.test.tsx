import { screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, test } from 'vitest';
import { type CommandBody, setUpOf } from '#counting';
import { DialForm } from '../../../src/screens/measuring/DialForm';
import { RodForm } from '../../../src/screens/measuring/RodForm';
import { type Services, useBench } from '../../../src/screens/services';
import { oneCylinder } from '../../fakes/setUps';
import { draw, fakeServices, openJob } from '../services';

const user = userEvent.setup();

function Dial() {
  return <DialForm job={useBench((state) => state.job)} units="inch" />;
}

function Rod() {
  return <RodForm job={useBench((state) => state.job)} units="mm" />;
}

async function began(...commands: readonly CommandBody[]): Promise<Services> {
  const { services } = fakeServices();
  await openJob(services, oneCylinder());
  for (const command of commands) services.touch(command);
  return services;
}

const readings = (services: Services) => services.bench.store.getState().job.readings;

describe('a dial reading', () => {
  const take = () => user.click(screen.getByRole('button', { name: 'Take the reading' }));

  test('is taken for the valve chosen, and what the bench tells of it is shown', async () => {
    const services = await began({ type: 'cautionsHeard' });
    draw(<Dial />, services);
    await user.selectOptions(screen.getByLabelText('Valve'), '1 intake');
    await user.type(screen.getByLabelText('Travel'), '88');
    await take();
    expect(readings(services)).toMatchObject([
      { kind: 'dial', valve: { cylinder: 1, valve: 'intake' }, position: null },
    ]);
    expect(screen.getByRole('status')).toHaveTextContent(
      'Intake of one by dial: eighty-eight thousandths, fits.',
    );
    expect(screen.getByLabelText('Travel')).toHaveValue('');
  });

  test.each([
    ['', /Type the travel the dial shows/],
    ['a lot', /Type the travel the dial shows/],
    ['-4', /no plunger’s travel/],
    ['90 in', /no plunger’s travel/],
  ])('‘%s’ is refused in a sentence', async (text, sentence) => {
    const services = await began({ type: 'cautionsHeard' });
    draw(<Dial />, services);
    if (text !== '') await user.type(screen.getByLabelText('Travel'), text);
    await take();
    expect(screen.getByRole('alert')).toHaveTextContent(sentence);
    expect(readings(services)).toEqual([]);
  });

  test('waits while a valve is being counted', async () => {
    const services = await began(
      { type: 'cautionsHeard' },
      { type: 'crankThere' },
      { type: 'zero' },
    );
    draw(<Dial />, services);
    await user.type(screen.getByLabelText('Travel'), '2.2 mm');
    await take();
    expect(screen.getByRole('alert')).toHaveTextContent('Finish the valve');
    expect(screen.getByLabelText('Travel')).toHaveValue('2.2 mm');
  });
});

describe('another test pushrod', () => {
  test('is fitted in the middle of a job; readings so far keep theirs', async () => {
    const services = await began(
      { type: 'cautionsHeard' },
      { type: 'crankThere' },
      { type: 'seat', loose: true },
    );
    draw(<Rod />, services);
    expect(screen.getByText('Fitted now: 207.01 mm.')).toBeVisible();
    await user.type(screen.getByLabelText('Length'), '208.3');
    await user.click(screen.getByLabelText(/^Full ball/));
    await user.click(screen.getByRole('button', { name: 'It is fitted' }));
    const { job } = services.bench.store.getState();
    expect(job.pushrod).toEqual({ mm: 208.3, convention: 'full ball' });
    expect(job.readings[0]?.pushrod?.mm).toBeCloseTo(207.01, 9);
    expect(setUpOf(job)?.testPushrod?.mm).toBeCloseTo(207.01, 9);
    expect(screen.getByText('Fitted now: 208.30 mm.')).toBeVisible();
  });

  test('all are counted once more in a round of their own', async () => {
    const services = await began(
      { type: 'cautionsHeard' },
      { type: 'crankThere' },
      { type: 'seat', loose: true },
    );
    draw(<Rod />, services);
    await user.click(screen.getByRole('button', { name: 'Count them all again' }));
    const { job } = services.bench.store.getState();
    expect(job.round).toEqual({ number: 2, purpose: 'measure' });
    expect(job.readings).toHaveLength(1);
  });

  test.each([
    ['', 'Type its length'],
    ['0.4', 'not a pushrod’s length'],
  ])('‘%s’ is refused in a sentence', async (text, sentence) => {
    const services = await began({ type: 'cautionsHeard' });
    draw(<Rod />, services);
    if (text !== '') await user.type(screen.getByLabelText('Length'), text);
    await user.click(screen.getByRole('button', { name: 'It is fitted' }));
    expect(screen.getByRole('alert')).toHaveTextContent(sentence);
  });
});
