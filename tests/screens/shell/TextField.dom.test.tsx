import { fireEvent, render, screen } from '@testing-library/react';
import { expect, test } from 'vitest';
import { TextField } from '../../../src/screens/shell/TextField';

function drawn() {
  const left: string[] = [];
  render(
    <TextField
      field="name"
      label="Name"
      value=""
      onChange={() => {}}
      onLeave={() => left.push('left')}
    />,
  );
  const input = screen.getByLabelText('Name');
  input.focus();
  return { left, input };
}

const nextFrame = () => new Promise((resolve) => requestAnimationFrame(resolve));

test('left by keyboard, a field is left at once', () => {
  const { left, input } = drawn();
  fireEvent.blur(input);
  expect(left).toEqual(['left']);
});

test.each(['pointerUp', 'pointerCancel'] as const)(
  'left by a press elsewhere, a field is left once the press is over: %s',
  async (over) => {
    const { left, input } = drawn();
    fireEvent.pointerDown(document.body);
    fireEvent.blur(input);
    expect(left).toEqual([]);
    fireEvent[over](document.body);
    await nextFrame();
    expect(left).toEqual(['left']);
    fireEvent[over](document.body);
    await nextFrame();
    expect(left).toEqual(['left']);
  },
);
