import { screen, within } from '@testing-library/react';
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
