import { act, cleanup, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, test } from 'vitest';
import { allowed } from '#counting';
import { turn48, type Verdict } from '#valvetrain';
import { counted, openBench, setUp, toFirstValve } from './openBench';

const buttons = () => screen.getAllByRole('button').map((button) => button.textContent);

test('the count stands in the dial with the socket’s hour, and its preload beside it', async () => {
  await openBench([...counted(4), { type: 'step', size: 'half quarter' }]);
  expect(screen.getByRole('heading', { level: 1 })).toHaveTextContent('Exhaust of 1');
  expect(
    screen.getByRole('img', { name: '4 1/2 quarters, socket at half past one' }),
  ).toBeVisible();
  expect(screen.getByRole('img', { name: 'Preload 89 thou, Fits' })).toBeVisible();
  expect(screen.getByText('Position 1 of 8')).toBeVisible();
});

test('one ring a turn: five quarters fill the first ring and a quarter of the second', async () => {
  await openBench(counted(5));
  const rings = [...document.querySelectorAll('[data-ring]')].map((piece) =>
    piece.getAttribute('data-ring'),
  );
  expect(rings).toEqual(['0', '0', '0', '0', '1']);
});

describe('C12: every verdict has a word and a shape of its own', () => {
  // 0.0198 in a quarter; usable 75 to 110, preferred 80 to 100, keep-out from 180.
  const told: readonly (readonly [number, Verdict, string])[] = [
    [0, 'lash', 'Lash'],
    [3, 'light', 'Light'],
    [4, 'fits, light side', 'Fits, light side'],
    [5, 'fits', 'Fits'],
    [6, 'heavy', 'Heavy'],
    [10, 'near bottom', 'Near bottom'],
  ];
  test.each(told)('%i quarters: %s', async (quarters, verdict, word) => {
    await openBench(counted(quarters));
    const line = document.querySelector(`[data-verdict="${verdict}"]`) as HTMLElement;
    expect(line).toHaveTextContent(word);
    expect(line.querySelector(`[data-shape="${verdict}"]`)).not.toBeNull();
  });
  test('five and a half: fits, heavy side', async () => {
    await openBench([...counted(5), { type: 'step', size: 'half quarter' }]);
    expect(document.querySelector('[data-verdict="fits, heavy side"]')).not.toBeNull();
  });
  test('no two shapes are drawn alike', async () => {
    const drawn = new Set<string>();
    for (const [quarters, verdict] of told) {
      await openBench(counted(quarters));
      drawn.add(
        [...document.querySelectorAll(`[data-verdict="${verdict}"] [data-shape] path`)]
          .map((path) => `${path.getAttribute('d')} ${path.getAttribute('class')}`)
          .join('|'),
      );
      cleanup();
    }
    expect(drawn.size).toBe(told.length);
  });
});

test('the plunger stands deeper for every quarter counted', async () => {
  const { bench } = await openBench(counted(1));
  const depth = () => document.querySelector('[data-plunger]')?.getAttribute('d') ?? '';
  const at = (path: string) => Number(/^M57 ([\d.]+)H/.exec(path)?.[1]);
  const before = at(depth());
  act(() => bench.submit({ type: 'step', size: 'step' }, 'pedal'));
  expect(at(depth())).toBeGreaterThan(before);
});

test('without a window there is the figure and no verdict; without travel neither, and it says so', async () => {
  await openBench(counted(4), { setUp: { groups: [] } });
  expect(screen.getByText('79', { selector: 'span' })).toBeVisible();
  expect(screen.getByText(/No lifter chosen/)).toBeVisible();
  expect(document.querySelector('[data-verdict]')).toBeNull();
  cleanup();
  await openBench(counted(4), { setUp: { adjuster: null } });
  expect(document.querySelector('span[data-figure]')).toBeNull();
  expect(screen.getByText(/No thread or rocker set/)).toBeVisible();
});

test('C5: a question asked back stands in a box; yes takes it, and the count goes on', async () => {
  const { bench } = await openBench([
    ...counted(2),
    { type: 'call', to48: turn48(108), form: 'bare' },
  ]);
  const box = screen.getByRole('alert');
  expect(box).toHaveTextContent('Had 2, heard 9?');
  await userEvent.click(within(box).getByRole('button', { name: 'Yes: 9' }));
  expect(bench.store.getState().job.open?.count48).toBe(108);
  expect(screen.queryByRole('alert')).toBeNull();
});

test('C13: at rest the screen says a press counts nothing; touching wakes it and counts nothing', async () => {
  const { bench, services } = await openBench(counted(4));
  act(() => bench.store.setState({ resting: true }));
  expect(screen.getByText('Press any key to go on')).toBeVisible();
  expect(screen.getByText('Nothing will be counted by it.')).toBeVisible();
  expect(screen.getByText(/Socket at twelve/)).toBeVisible();
  // A practice run is offered until one was begun on this device.
  expect(buttons()).toEqual(['Go on', 'Practice run', 'More']);
  act(() => services.settings.change({ practised: true }));
  expect(buttons()).toEqual(['Go on', 'More']);
  await userEvent.click(screen.getByRole('button', { name: 'Go on' }));
  expect(bench.store.getState().job.open?.count48).toBe(48);
  expect(screen.queryByText('Press any key to go on')).toBeNull();
});

test('the turn of the crank is told fresh, and not after a rest with a helper at the crank', async () => {
  const { bench } = await openBench([], { setUp: { hands: 'with helper' } });
  act(() => bench.submit({ type: 'advance' }, 'pedal'));
  expect(screen.queryByText(/Turn the crank/)).toBeNull();
  act(() => bench.submit({ type: 'advance' }, 'pedal'));
  expect(screen.getByText(/Turn the crank/)).toBeVisible();
  act(() => bench.store.setState({ resting: true }));
  expect(screen.queryByText(/Turn the crank/)).toBeNull();
  act(() => bench.submit({ type: 'advance' }, 'pedal'));
  expect(bench.store.getState().resting).toBe(false);
  expect(screen.queryByText(/Turn the crank/)).toBeNull();
  expect(screen.getByText('Is the crank at cylinder 1?')).toBeVisible();
});

test('a line of an earlier sitting, or of another job, is not shown', async () => {
  const { services, clock } = await openBench(toFirstValve);
  const line = (token: number, text: string, at: number) => ({ token, text, at, spoken: true });
  const captions = [line(1, 'Turn ninety.', clock.now() - 1), line(2, 'Back at one.', clock.now())];
  act(() => services.mouth.setState({ captions }));
  expect(screen.getByText('Back at one.')).toBeVisible();
  expect(screen.queryByText('Turn ninety.')).toBeNull();
});

test('a line said before a rest is not shown after it', async () => {
  const { bench, services, clock } = await openBench(toFirstValve);
  const line = (token: number, text: string, at = clock.now()) => ({
    token,
    text,
    at,
    spoken: true,
  });
  act(() => services.mouth.setState({ captions: [line(1, 'Turn ninety.')] }));
  expect(screen.getByText('Turn ninety.')).toBeVisible();
  act(() => bench.store.setState({ resting: true }));
  act(() => bench.store.setState({ resting: false }));
  expect(screen.queryByText('Turn ninety.')).toBeNull();
  act(() =>
    services.mouth.setState({ captions: [line(1, 'Turn ninety.'), line(2, 'Back at one.')] }),
  );
  expect(screen.getByText('Back at one.')).toBeVisible();
  expect(screen.queryByText('Turn ninety.')).toBeNull();
});

describe('the touch bar', () => {
  const stages = [
    ['cautions', [], ['Cautions heard', 'More']],
    ['to start', toFirstValve, ['Zero lash', 'Take back', 'Skip this valve', 'Hold on', 'More']],
    [
      'counting',
      counted(2),
      [
        'One more',
        'Rocker seated',
        'Half a quarter',
        'Take back',
        'Skip this valve',
        'Hold on',
        'More',
      ],
    ],
    [
      'landing',
      [...counted(4), { type: 'advance' }],
      [
        'On the mark',
        'A bit past',
        'Half',
        'Just shy',
        'Accept, next valve',
        'Take back',
        'Hold on',
        'More',
      ],
    ],
  ] as const;
  test.each(stages)('%s: only what makes sense now', async (_, commands, names) => {
    await openBench(commands);
    expect(buttons()).toEqual(names);
  });

  test('every target of a whole engine is allowed when it is pressed', async () => {
    const { bench, sent } = await openBench([]);
    let pressed = 0;
    for (let i = 0; i < 60; i += 1) {
      const names = buttons().filter((name) => name !== 'More');
      const name = names[i % names.length];
      const before = bench.store.getState().job;
      await userEvent.click(screen.getByRole('button', { name: name ?? '' }));
      expect(allowed(before)).toContain(sent.at(-1)?.type);
      expect(bench.store.getState().told.map(({ fact }) => fact.kind)).not.toContain('refused');
      pressed += 1;
    }
    expect(pressed).toBe(60);
  });

  test('more has the rest, and the other cylinders', async () => {
    await openBench(toFirstValve);
    await userEvent.click(screen.getByRole('button', { name: 'More' }));
    for (const name of ['Where am I?', 'Loosening', 'Seated loose', '8', 'Results', 'Jobs']) {
      expect(screen.getByRole('button', { name })).toBeVisible();
    }
  });
});

test('C10: an append that fails stands as an alarm, in words and with a shape', async () => {
  const { bench } = await openBench(counted(1));
  act(() => bench.store.setState({ alarm: 'failed' }));
  expect(screen.getByRole('alert')).toHaveTextContent('Not kept: writing failed');
  expect(screen.getByRole('alert').querySelector('svg')).not.toBeNull();
});

test('another window is counting: read only, with the way to take over', async () => {
  const { bench } = await openBench(counted(1));
  act(() => bench.store.setState({ access: 'other window' }));
  expect(screen.getByText(/Another window is counting: read only/)).toBeVisible();
  expect(buttons()).toEqual(['Take over here', 'More']);
});

test('the plan shows each reading with its shape, the open valve and the next', async () => {
  await openBench([
    ...counted(5),
    { type: 'advance' },
    { type: 'land', word: 'nothing' },
    { type: 'advance' },
  ]);
  const plan = screen.getByRole('img', { name: /Engine from above/ });
  expect(plan).toHaveAccessibleName(/Exhaust of 1: 99, fits\. Intake of 1: open\./);
  const first = plan.querySelector('[data-cylinder="1"]') as SVGElement;
  expect(first.querySelector('[data-shape="fits"]')).not.toBeNull();
  expect(first.querySelector('[data-mark="open"]')).not.toBeNull();
  expect(plan.querySelectorAll('[data-cylinder]')).toHaveLength(setUp.engine?.cylinders ?? 0);
  expect(plan.querySelectorAll('[data-mark="next"]')).toHaveLength(1);
});

test('nothing shown ends in NaN, Infinity or undefined', async () => {
  for (const quarters of [0, 3, 40]) {
    await openBench(counted(quarters));
    expect(document.body.innerHTML).not.toMatch(/NaN|Infinity|undefined/);
    cleanup();
  }
});
