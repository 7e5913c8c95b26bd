import { expect, test } from 'vitest';
import type { JobEvent } from '#counting';
import { type BackupKeeper, createShelf, type Restored } from '#shelf';
import { fakeClock } from '../fakes/clock';

const event = (jobId: string): JobEvent => ({ jobId, seq: 1 }) as JobEvent;

function shelfWith(backup: Partial<BackupKeeper>) {
  const taken: unknown[] = [];
  const shelf = createShelf({
    clock: fakeClock(),
    app: { version: '1', commit: 'a' },
    newId: () => 'new',
    keeper: {
      jobs: async () => [],
      read: async () => ({ events: [] }),
      append: async () => {},
      readJobFile: async () => ({ ok: false, sentence: 'No.' }),
      writeJobFile: async () => '',
    },
    backup: {
      readBackup: async () => ({
        ok: true,
        logs: [[event('a')], [event('b')], [event('c')]],
        settings: { units: 'mm' },
      }),
      writeBackup: async () => '',
      restoreLog: async () => 'new',
      settings: async () => undefined,
      takeSettings: (kept) => taken.push(kept),
      ...backup,
    },
  });
  return { shelf, taken, trouble: () => shelf.store.getState().trouble };
}

test('each job is restored by itself, and counted by what became of it', async () => {
  const became: Restored[] = ['new', 'apart', 'new'];
  const { shelf } = shelfWith({ restoreLog: async () => became.shift() ?? 'here' });
  expect((await shelf.restoreBackup('x'))?.jobs).toEqual({
    new: 2,
    longer: 0,
    here: 0,
    apart: 1,
    open: 0,
  });
});

test('settings are taken where the device has none, and never over its own', async () => {
  const fresh = shelfWith({});
  expect(await fresh.shelf.restoreBackup('x')).toMatchObject({ settings: true });
  expect(fresh.taken).toEqual([{ units: 'mm' }]);
  const own = shelfWith({ settings: async () => ({ units: 'inch' }) });
  expect(await own.shelf.restoreBackup('x')).toMatchObject({ settings: false });
  expect(own.taken).toEqual([]);
});

test('a file that is refused changes nothing, and its sentence is told', async () => {
  let restored = 0;
  const { shelf, trouble } = shelfWith({
    readBackup: async () => ({ ok: false, sentence: 'Not a backup.' }),
    restoreLog: async () => {
      restored += 1;
      return 'new';
    },
  });
  expect(await shelf.restoreBackup('x')).toBeNull();
  expect(trouble()).toBe('Not a backup.');
  expect(restored).toBe(0);
});

test('a disk that fills up half way: said with how far it came', async () => {
  let left = 2;
  const { shelf, trouble, taken } = shelfWith({
    restoreLog: async () => {
      left -= 1;
      if (left < 0) throw new Error('full');
      return 'new';
    },
  });
  expect(await shelf.restoreBackup('x')).toBeNull();
  expect(trouble()).toMatch(/^2 of 3 jobs were restored, then the device would keep no more/);
  expect(taken).toEqual([]);
});
