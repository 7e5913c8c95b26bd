import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import {
  holdUnkept,
  type JobFileProblem,
  MOST_BACKUP_CHARACTERS,
  readBackup,
  readJobFile,
  restoreLog,
  writeBackup,
  writeJobFile,
} from '#keeping';
import { backupChecksum } from '../../src/keeping/backup/writeBackup';
import { journeys } from './journeys';
import { fakeLockManager } from './lockManager';
import { device } from './store';

const app = { version: '0.1.0', commit: 'abc1234' };
const AT = Date.UTC(2026, 2, 3, 12, 0, 0);
const logs = Object.values(journeys);
const walk = journeys.walk!;
const settings = { units: 'mm', keys: { pedal: { codes: ['PageDown'] } } };

type Fields = Record<string, unknown>;

/** The backup of all journeys with its fields changed, the checksum made to fit. */
function backupWith(change: (file: Fields, jobs: Fields[]) => void): string {
  const file: Fields = JSON.parse(writeBackup({ logs, settings }, app, AT));
  change(file, file.jobs as Fields[]);
  if (Array.isArray(file.jobs)) file.checksum = backupChecksum(file.jobs, file.settings);
  return JSON.stringify(file);
}

describe('a device out and in again', () => {
  test('every log and the settings come back as they were', async () => {
    const read = await readBackup(writeBackup({ logs, settings }, app, AT));
    expect(read).toEqual({ ok: true, logs, settings });
  });

  test('a device with no job and no settings comes back as that', async () => {
    const read = await readBackup(writeBackup({ logs: [[]], settings: undefined }, app, AT));
    expect(read).toEqual({ ok: true, logs: [], settings: null });
  });
});

const refusals: readonly (readonly [string, JobFileProblem, () => string])[] = [
  ['nothing', 'not JSON', () => ''],
  ['a job file', 'not a backup', () => writeJobFile(walk, app, AT)],
  ['jobs that are no list', 'not a backup', () => backupWith((f) => (f.jobs = {}))],
  ['a newer backup', 'newer file', () => backupWith((f) => (f.version = 2))],
  ['no version', 'not a backup', () => backupWith((f) => delete f.version)],
  ['too much text', 'too big for a backup', () => ' '.repeat(MOST_BACKUP_CHARACTERS + 1)],
  ['too many jobs', 'too many jobs', () => backupWith((f) => (f.jobs = Array(2001).fill(0)))],
  ['a job twice', 'a job twice', () => backupWith((_f, jobs) => jobs.push(jobs[0]!))],
  ['a job that is none', 'no events', () => backupWith((_f, jobs) => jobs.push({ events: 1 }))],
  ['an empty job', 'no events', () => backupWith((_f, jobs) => jobs.push({ events: [] }))],
  [
    'settings changed by hand',
    'changed since',
    () => writeBackup({ logs, settings }, app, AT).replace('"mm"', '"inch"'),
  ],
  [
    'a damaged event',
    'wrong shape',
    () =>
      backupWith((_f, jobs) => {
        const events = jobs[1]!.events as Fields[];
        events[3] = { ...events[3], odd: 1 };
      }),
  ],
];

describe('a backup that is not taken in', () => {
  test.each(refusals)('%s: %s', async (_name, code, text) => {
    const read = await readBackup(text());
    expect(read).toMatchObject({ ok: false, code });
    expect(read.ok ? '' : read.sentence).toMatch(/^[A-Z].*[.]$/);
  });

  test('a fault in one job says which; a backup is not taken for a job file', async () => {
    const read = await readBackup(refusals.at(-1)![2]());
    expect(read.ok ? '' : read.sentence).toBe(
      'Job 2: Event 4 is damaged, so the file was not opened.',
    );
    expect(await readJobFile(writeBackup({ logs, settings }, app, AT))).toMatchObject({
      code: 'a backup',
    });
  });
});

describe('restoring a job', () => {
  async function here(events = walk) {
    const locks = fakeLockManager();
    const keeping = device().window({ locks });
    await keeping.append(events);
    const held = holdUnkept(keeping, () => undefined);
    return { keeping, locks, restore: (log = walk) => restoreLog(held, keeping, log) };
  }
  const logHere = async ({ keeping }: Awaited<ReturnType<typeof here>>) =>
    (await keeping.read('job-walk')).events;

  test('that is not here: it is now', async () => {
    const on = await here([]);
    expect(await on.restore()).toBe('new');
    expect(await logHere(on)).toEqual(walk);
  });

  test('that is here up to a point: what follows is added', async () => {
    const on = await here(walk.slice(0, 7));
    expect(await on.restore()).toBe('longer');
    expect(await logHere(on)).toEqual(walk);
  });

  test('that is here with more: newer events stay', async () => {
    const on = await here();
    expect(await on.restore(walk.slice(0, 7))).toBe('here');
    expect(await on.restore()).toBe('here');
    expect(await logHere(on)).toEqual(walk);
  });

  test('that went on otherwise here: nothing is overwritten', async () => {
    const other = walk.slice(0, 9).map((event, i) => (i < 7 ? event : { ...event, at: 1 }));
    const on = await here(other);
    expect(await on.restore()).toBe('apart');
    expect(await logHere(on)).toEqual(other);
  });

  test('that a window is counting on: left alone, and free again for it afterwards', async () => {
    const on = await here(walk.slice(0, 7));
    const claim = await on.keeping.claim('job-walk', () => undefined);
    expect(await on.restore()).toBe('open');
    expect(await logHere(on)).toEqual(walk.slice(0, 7));
    claim?.release();
    expect(await on.restore()).toBe('longer');
    await new Promise((resolve) => setTimeout(resolve));
    expect(on.locks.held()).toEqual([]);
  });
});

describe('files of every version are kept, and read', () => {
  const file = (name: string) => readFileSync(`tests/keeping/fixtures/files/${name}.json`, 'utf8');

  test('job file 1', async () => {
    const read = await readJobFile(file('job-1'));
    expect(read.ok ? read.events.length : read.sentence).toBe(34);
  });

  test('backup 1', async () => {
    const read = await readBackup(file('backup-1'));
    expect(read).toMatchObject({ ok: true, settings: { units: 'mm' } });
    expect(read.ok && read.logs.map((events) => events[0]?.jobId)).toEqual([
      'job-walk',
      'job-unnamed',
    ]);
  });
});
