import { act, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, test } from 'vitest';
import { BenchScreen, type EarShown } from '#screens';
import { v8SetUp } from '../../fakes/setUps';
import { draw, fakeServices, openJob } from '../services';

const user = userEvent.setup();

/** The bench, with the ear as it is told. */
async function benchWith() {
  const { services } = fakeServices({ screen: 'bench', jobId: 'job-1' });
  await openJob(services, v8SetUp());
  draw(<BenchScreen />, services);
  const ear = (shown: Partial<EarShown>) => act(() => services.ear.setState(shown));
  return { services, ear };
}

const heard = { utterance: '1.0', why: null };

describe('the ear on the bench', () => {
  test('open, shut and dead are said in words, and why', async () => {
    const { ear, services } = await benchWith();
    expect(screen.getByText('Ear shut: keys and pedal')).toBeVisible();
    act(() => services.settings.change({ whichEar: 'none' }));
    expect(screen.getByText('No ear: keys and pedal')).toBeVisible();
    act(() => services.settings.change({ whichEar: 'automatic' }));
    ear({ state: 'open' });
    expect(screen.getByText('Listening')).toBeVisible();
    ear({ level: -41.6 });
    expect(screen.getByText('Listening, room -42 dB')).toBeVisible();
    ear({ tooNoisy: true, level: null });
    expect(screen.getByText('Too noisy to hear: use the pedal')).toBeVisible();
    ear({ byKey: true, tooNoisy: false });
    expect(screen.getByText('Listening while held')).toBeVisible();
    ear({ state: 'opening', fetched: 0.456 });
    expect(screen.getByText('Fetching the ear, 45 %')).toBeVisible();
    ear({ fetched: 1 });
    expect(screen.getByText('Opening the ear')).toBeVisible();
    ear({ byKey: false, state: 'shut', why: 'too loud' });
    expect(screen.getByText('Ear shut, too loud: use the pedal')).toBeVisible();
    ear({ state: 'dead', why: 'denied' });
    expect(screen.getByText(/^The microphone is not allowed, no ear\./)).toBeVisible();
  });

  test('before speech leaves the device it asks; both answers go to the ear', async () => {
    const { services, ear } = await benchWith();
    ear({ state: 'shut', why: 'notice' });
    expect(screen.getByRole('alert')).toHaveTextContent('Your speech would leave this device');
    await user.click(screen.getByRole('button', { name: 'No: keys and pedal' }));
    expect(services.shutEar).toHaveBeenCalledTimes(1);
    expect(services.toggleEar).not.toHaveBeenCalled();
    await user.click(screen.getByRole('button', { name: 'Agree, and listen' }));
    expect(services.agreeToLeave).toHaveBeenCalledTimes(1);
  });

  test('what was heard stands there as heard and as understood, a ghost while it is being said', async () => {
    const { ear } = await benchWith();
    ear({ state: 'open' });
    expect(screen.getByText('Nothing heard yet')).toBeVisible();
    ear({ place: 'on device' });
    expect(screen.getByText(/^Nothing heard yet\. A sound check under Settings/)).toBeVisible();
    ear({ ghost: { heard: 'fo', understood: null, count48: null } });
    expect(screen.getByText('Hearing: fo …')).toBeVisible();
    ear({
      ghost: null,
      captions: [{ ...heard, kind: 'taken', heard: 'for', understood: 'four' }],
    });
    expect(screen.getByText('Heard: ‘for’, taken as four')).toBeVisible();
    ear({
      captions: [
        {
          ...heard,
          kind: 'missed',
          heard: 'rocket seat',
          understood: 'rocker seated',
          why: 'near',
        },
      ],
    });
    expect(screen.getByText('Heard: ‘rocket seat’. Not sure: say ‘rocker seated’.')).toBeVisible();
    ear({ captions: [{ ...heard, kind: 'outside', heard: 'pass the rag', understood: null }] });
    expect(screen.getByText('Heard: ‘pass the rag’, no phrase')).toBeVisible();
    ear({ captions: [{ ...heard, kind: 'doubt', heard: 'six', understood: 'six' }] });
    expect(screen.getByText('Heard: ‘six’, not taken: say it again')).toBeVisible();
  });
});
