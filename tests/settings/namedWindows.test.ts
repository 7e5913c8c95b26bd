import { describe, expect, test } from 'vitest';
import { defaultSettings, type NamedWindow, readSettings, withNamedWindow } from '#settings';
import { longTravel } from '../fakes/setUps';

const kept: NamedWindow = { v: 1, name: 'Pump rollers', window: longTravel };

describe('windows kept under a name', () => {
  test('come back from the device as they were', () => {
    const windows = withNamedWindow([kept], '  Drain rollers ', longTravel);
    expect(windows.map(({ name }) => name)).toEqual(['Drain rollers', 'Pump rollers']);
    const record = JSON.parse(JSON.stringify({ ...defaultSettings, windows }));
    expect(readSettings(record).windows).toEqual(windows);
  });

  test('the same name again takes its place', () => {
    const other = { ...longTravel, usableMinMm: 2 };
    expect(withNamedWindow([kept], 'Pump rollers', other)).toEqual([{ ...kept, window: other }]);
  });

  test.each([
    ['no list', 'windows'],
    ['a later version', [{ ...kept, v: 2 }]],
    ['no name', [{ ...kept, name: ' ' }]],
    ['a lifter that is none', [{ ...kept, window: { ...longTravel, lifter: 'solid' } }]],
    ['a figure missing', [{ ...kept, window: { ...longTravel, usableMaxMm: null } }]],
    ['outside its travel', [{ ...kept, window: { ...longTravel, usableMaxMm: 9 } }]],
  ])('%s is left out and the rest stays', (_, windows) => {
    const list = Array.isArray(windows) ? [...windows, { ...kept, name: 'Sound' }] : windows;
    const read = readSettings({ units: 'mm', windows: list });
    expect(read.units).toBe('mm');
    expect(read.windows.map(({ name }) => name)).toEqual(Array.isArray(windows) ? ['Sound'] : []);
  });

  test('an older record has none', () => {
    expect(readSettings({ units: 'mm' }).windows).toEqual([]);
  });
});
