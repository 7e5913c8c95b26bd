import { render, screen, within } from '@testing-library/react';
import { expect, test } from 'vitest';
import { Pictures } from '../../../src/screens/pictures/Pictures';
import { afterAll, countAll, openedJob } from '../../fakes/countedJob';
import { oneCylinder, v8SetUp } from '../../fakes/setUps';

/** By hand: 19.5400 thou a quarter. 4½: 87.9; 4: 78.2; 5: 97.7. */
const counted = countAll(openedJob(), ({ cylinder, valve }) =>
  valve === 'intake' ? 4.5 : cylinder < 5 ? 4 : 5,
).state;

/** The cells of every row of the table inside a picture. */
function tableOf(picture: HTMLElement): readonly (readonly (string | null)[])[] {
  return within(picture)
    .getAllByRole('row', { hidden: true })
    .slice(1)
    .map((row) => [...row.children].map(({ textContent }) => textContent));
}

test('every valve in its window with its band, by number, and the same as a table', () => {
  render(<Pictures job={counted} units="inch" />);
  const picture = screen.getByRole('figure', { name: 'Preload of all valves, thou' });
  const rows = [...picture.querySelectorAll('[data-row]')];
  expect(rows.map((row) => row.getAttribute('data-row')).slice(0, 3)).toEqual([
    '1 intake',
    '1 exhaust',
    '2 intake',
  ]);
  expect(rows).toHaveLength(16);
  expect(picture.querySelectorAll('[data-band]')).toHaveLength(16);
  expect(picture.querySelectorAll('[data-shape="fits"]')).toHaveLength(12);
  expect(tableOf(picture).slice(0, 2)).toEqual([
    ['1 intake', '88 ± 8', 'Fits', '75 to 110', '80 to 100'],
    ['1 exhaust', '78 ± 8', 'Fits, light side, can’t tell from light', '75 to 110', '80 to 100'],
  ]);
  expect(
    within(picture).getByRole('img', { name: /1 intake 88 ± 8\. 1 exhaust 78/ }),
  ).toBeVisible();
});

test('intakes against exhausts: means, and whether they differ by more than noise', () => {
  render(<Pictures job={counted} units="inch" />);
  const picture = screen.getByRole('figure', { name: /^Intakes against exhausts/ });
  // Exhausts: half 78.16, half 97.70, mean 87.93; intakes all 87.93.
  expect(tableOf(picture)).toEqual([
    ['Intakes', '8', '88', '88', '88'],
    ['Exhausts', '8', '88', '78', '98'],
  ]);
  expect(picture).toHaveTextContent('On the whole they need the same length.');
});

test('predicted against final only in a final check, the ones not read yet said', () => {
  const cylinder = countAll(openedJob(oneCylinder()), () => 4);
  const { unmount } = render(<Pictures job={cylinder.state} units="mm" />);
  expect(screen.queryByRole('figure', { name: /^Predicted/ })).toBeNull();
  unmount();
  const length = { mm: 8.175 * 25.4, convention: 'tip to tip' } as const;
  const { state } = afterAll(
    cylinder,
    { type: 'startRound', purpose: 'final check' },
    { type: 'fitPushrod', length },
    { type: 'readDial', valve: { cylinder: 1, valve: 'intake' }, travelMm: 2.6 },
  );
  render(<Pictures job={state} units="mm" />);
  const picture = screen.getByRole('figure', { name: 'Predicted against final, preload in mm' });
  const [intake, exhaust] = tableOf(picture);
  // 4 × 0.49632 + 0.635 = 2.62 mm; found 2.60.
  expect(intake).toEqual([
    '1 intake',
    expect.stringMatching(/^2\.62 ± /),
    expect.stringMatching(/^2\.60 ± /),
    '−0.02',
    expect.any(String),
    'yes',
  ]);
  expect(exhaust?.slice(1)).toEqual([expect.stringMatching(/^2\.62 ± /), 'not yet', '–', '–', '–']);
});

test('nothing known, nothing drawn', () => {
  const { container } = render(<Pictures job={openedJob().state} units="inch" />);
  expect(container).toBeEmptyDOMElement();
  const noThread = countAll(openedJob(v8SetUp({ adjuster: null })), () => 4).state;
  render(<Pictures job={noThread} units="inch" />);
  expect(screen.queryByRole('figure')).toBeNull();
});
