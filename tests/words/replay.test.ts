import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { bench } from './bench';
import { context, setUp } from './samples';

const folder = mkdtempSync(join(tmpdir(), 'replay-'));
afterAll(() => rmSync(folder, { recursive: true }));

function replayed(content: string, ...options: string[]) {
  const file = join(folder, 'job.json');
  writeFileSync(file, content);
  const run = spawnSync(process.execPath, ['scripts/replay.mjs', file, ...options], {
    encoding: 'utf8',
  });
  return { status: run.status, lines: run.stdout.trimEnd().split('\n'), error: run.stderr };
}

function smallJob() {
  const run = bench(setUp(), context('plain', 'inch', { hands: 'alone' }));
  for (const afterS of [5, 30, 10]) run.act({ type: 'advance' }, afterS);
  for (let count = 0; count < 4; count += 1) run.act({ type: 'step', size: 'step' }, 1);
  run.act({ type: 'advance' }, 20);
  run.act({ type: 'land', word: 'half' }, 2);
  return run;
}

test('a list of events gives the captions of the bench, with their seq and time', () => {
  const job = smallJob();
  const { status, lines } = replayed(JSON.stringify(job.events));
  expect(status).toBe(0);
  expect(lines.map((line) => line.slice(15))).toEqual(job.captions);
  expect(lines.at(-1)).toBe(
    '  10    +1:11  Exhaust of one: four and a half, eighty-eight thousandths, fits. True preload is a little more: some drag is there before it is felt.',
  );
});

test('an exported job is read too, terse where asked', () => {
  const file = { format: 'turncaller job', version: 1, events: smallJob().events };
  const { status, lines } = replayed(JSON.stringify(file), 'terse', 'mm');
  expect(status).toBe(0);
  expect(lines.at(-1)).toBe('  10    +1:11  Four and a half, two point two three, fits.');
});

test.each([
  ['not JSON', '{', 'is not JSON'],
  ['another file', '{"name": "x"}', "is not a job's file"],
  ['no events', '{"format": "turncaller job", "version": 1}', 'holds no events'],
  ['an empty list', '[]', 'holds no job'],
  ['a broken event', '[{"a": 1}]', 'event 1 is not to be read'],
  [
    'a damaged set-up',
    '[{"jobId":"j","seq":1,"v":1,"at":1,"by":"key","type":"jobOpened","setUp":{"name":"x"}}]',
    "can't be replayed to its end",
  ],
])('a bad file is answered with a sentence: %s', (_, content, sentence) => {
  const { status, error } = replayed(content);
  expect(status).toBe(1);
  expect(error).toContain(sentence);
  expect(error.trim().split('\n')).toHaveLength(1);
});
