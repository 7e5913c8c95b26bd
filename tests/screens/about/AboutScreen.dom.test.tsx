import { screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { expect, test } from 'vitest';
import { shown } from '#words';
import AboutScreen from '../../../src/screens/about';
import { draw, fakeServices } from '../services';

test('states version and commit, what the browser lacks, every caution, and the notices', () => {
  const { services } = fakeServices();
  draw(<AboutScreen />, services);
  expect(screen.getByText('1.2.3')).toBeVisible();
  expect(screen.getByText('abc1234')).toBeVisible();
  const feature = screen.getByRole('row', { name: /Wake lock/ });
  expect(within(feature).getByText('no')).toBeVisible();
  expect(feature).toHaveTextContent('The screen may go dark.');
  const sentences = shown.cautions.flatMap((caution) => caution.sentences);
  expect(sentences.length).toBeGreaterThan(10);
  for (const sentence of sentences) expect(screen.getByText(sentence)).toBeVisible();
  expect(screen.getByRole('link', { name: /Notices/ })).toHaveAttribute('href', 'notices.txt');
});

test('says how the app stands on this device, and saves diagnostics', async () => {
  const { services } = fakeServices();
  draw(<AboutScreen />, services);
  expect(screen.getByText('Ready: opens without its server')).toBeVisible();
  expect(screen.getByText('Kept on this device')).toBeVisible();
  expect(screen.getByText(/the browser has promised/)).toBeVisible();
  await userEvent.click(screen.getByRole('button', { name: 'Save diagnostics' }));
  expect(services.save).toHaveBeenCalledWith('turncaller-diagnostics.json', '{"notices":[]}');
});
