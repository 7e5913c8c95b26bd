import { describe, expect, test } from 'vitest';
import { nextStage, type Reminder } from '#counting';
import { shown } from '#words';
import { stages } from './refusals';
import { valve } from './samples';
import { stateAt } from './stages';

describe('the cautions in full', () => {
  const text = shown.cautions.flatMap(({ sentences }) => sentences).join(' ');

  test.each([
    'battery',
    'ignition',
    'fuel',
    'plugs',
    'neutral',
    'cold',
    'by hand',
    'running direction',
    'tightens',
    'Take the bar off',
    'full of oil',
    '170 thou',
    'quarter at a time',
    'bled down',
    'no proof',
    'hands clear',
    'power tool',
    'blind bolt hole',
    'rag',
    'Count tools',
    'eye protection',
    'cable',
    'one ear',
    'Torque',
    'sequence',
    'no leave to start',
    'qualified engine builder',
  ])('speak of: %s', (matter) => {
    expect(text.toLowerCase()).toContain(matter.toLowerCase());
  });
});

test('what a hold will do is told at every stage', () => {
  const idle = ['not opened', 'discarded', 'all read'];
  for (const stage of stages) {
    const words = shown.holdWillDo(nextStage(stateAt[stage]), 'on');
    expect(words === 'Nothing next', stage).toBe(idle.includes(stage));
  }
});

test('every reminder is a sentence', () => {
  const reminders: readonly Reminder[] = [
    { kind: 'question open' },
    { kind: 'count doubtful' },
    { kind: 'lifters pressed in' },
    { kind: 'skipped valves', valves: [valve(3, 'intake')] },
    { kind: 'unnamed readings', count: 1 },
    { kind: 'unnamed readings', count: 2 },
    { kind: 'not torqued', count: 3 },
  ];
  const lines = reminders.map(shown.reminder);
  for (const line of lines) expect(line).toMatch(/^[A-Z0-9].*\.$/);
  expect(lines[3]).toBe('Skipped: 3 intake.');
});
