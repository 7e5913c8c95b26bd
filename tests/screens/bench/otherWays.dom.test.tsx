import { screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, test } from 'vitest';
import { turn48 } from '#valvetrain';
import { counted, openBench, setUp, toFirstValve } from './openBench';

const user = userEvent.setup();

describe('adjustable rockers', () => {
  const adjustable = { ...setUp, rockers: 'adjustable' } as const;

  test('where to stop stands on the bench before and while the turns are counted', async () => {
    // Target 90 thou; 19.8 a quarter is 4.54 quarters: 4½ to a quarter of one, 89 thou.
    await openBench(counted(2), { setUp: adjustable });
    expect(screen.getByText('Stop at about 4 1/2 quarters, for 89 thou')).toBeVisible();
  });

  test('each group has its own', async () => {
    const [all] = setUp.groups;
    const low = { ...all!.window, usableMinMm: 0.6, preferredMinMm: 1, preferredMaxMm: 1.2 };
    const groups = [
      {
        id: 'i',
        name: 'Intakes',
        window: all!.window,
        members: { kind: 'valve', valve: 'intake' },
      },
      { id: 'e', name: 'Exhausts', window: low, members: { kind: 'valve', valve: 'exhaust' } },
    ] as const;
    await openBench(counted(1), { setUp: { ...adjustable, groups } });
    // The exhaust of one: 1.1 mm is 43.3 thou, 2.19 quarters of 19.76: 2¼ to a quarter of one.
    expect(screen.getByText('Stop at about 2 1/4 quarters, for 44 thou')).toBeVisible();
  });
});

describe('a checking pushrod', () => {
  const checking = {
    ...setUp,
    adjuster: null,
    calling: { way: 'turns' },
    checking: { closedMm: 172.72, perTurnMm: 1.27, convention: 'tip to tip' },
  } as const;
  const panel = () => screen.getByRole('region', { name: 'Checking pushrod' });

  test('its length grows by the turn, and no plunger is drawn', async () => {
    await openBench([...counted(0), { type: 'call', to48: turn48(2.5 * 48), form: 'turns' }], {
      setUp: checking,
    });
    // 6.800 and two and a half turns of .050.
    expect(panel()).toHaveTextContent('6.925inOpened so far');
    expect(screen.queryByRole('img', { name: /Preload/ })).toBeNull();
  });

  test('before it is opened it stands at its closed length', async () => {
    await openBench(toFirstValve, { setUp: checking });
    expect(panel()).toHaveTextContent('6.800inScrewed right in');
  });
});

test('under More a dial reading can be taken, and another test pushrod fitted', async () => {
  await openBench(toFirstValve);
  await user.click(screen.getByRole('button', { name: 'More' }));
  const more = screen.getByRole('region', { name: 'More' });
  await user.click(within(more).getByText('Dial indicator reading'));
  // The valve that is open is offered first.
  expect(within(more).getByLabelText('Valve')).toHaveValue('1 exhaust');
  expect(within(more).getByText('Another test pushrod')).toBeVisible();
});
