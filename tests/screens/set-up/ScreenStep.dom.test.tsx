import { screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { expect, test } from 'vitest';
import SetUpScreen from '../../../src/screens/set-up';
import { draw, fakeServices } from '../services';

test('set-up asks for the screen’s diagonal, keeps it with the device and says from how far it reads', async () => {
  const { services } = fakeServices();
  draw(<SetUpScreen jobId={null} />, services);
  const asked = await screen.findByText(/how large it is, and from how far the count then reads/);
  await userEvent.click(asked);
  await userEvent.type(screen.getByLabelText('Screen’s diagonal'), '24');
  expect(services.settings.store.getState().settings.screenDiagonalIn).toBe(24);
  expect(screen.getByText(/^the count reads from about \d+\.\d m$/)).toBeVisible();
});
