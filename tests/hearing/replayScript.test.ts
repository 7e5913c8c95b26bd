import { spawnSync } from 'node:child_process';
import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { openRig } from './rig';

function replay(text: string) {
  const file = join(mkdtempSync(join(tmpdir(), 'ear-log-')), 'ear.json');
  writeFileSync(file, text);
  return spawnSync(process.execPath, ['scripts/replay-ear.mjs', file], { encoding: 'utf8' });
}

test('a saved log of the ear prints what it heard and what it made of it', async () => {
  const rig = await openRig('counting');
  rig.says('five');
  rig.says('pass me that rag');
  const { stdout, status } = replay(JSON.stringify(rig.ear.log()));
  expect(status).toBe(0);
  expect(stdout).toContain("taken     'five' -> five");
  expect(stdout).toContain('command   {"type":"call","to48":60');
  expect(stdout).toContain("outside   'pass me that rag'");
});

test('anything else is refused in a sentence', () => {
  for (const text of ['', '{}', '[1]', '{"inputs":3,"from":{}}']) {
    const { stderr, status } = replay(text);
    expect(status).toBe(1);
    expect(stderr).toContain('is no ear log. Save one under Settings, Ear');
  }
});
