import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { tally } from '../../scripts/tally.mjs';

const folder = mkdtempSync(join(tmpdir(), 'turncaller-tally-'));
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});

interface Counts {
  readonly passed?: number;
  readonly failed?: number;
  readonly pending?: number;
  readonly todo?: number;
  readonly brokenFiles?: number;
}

function report(counts: Counts): string {
  const path = join(folder, 'report.json');
  const broken = { status: 'failed', assertionResults: [] };
  const contents = {
    numPassedTests: counts.passed ?? 0,
    numFailedTests: counts.failed ?? 0,
    numPendingTests: counts.pending ?? 0,
    numTodoTests: counts.todo ?? 0,
    testResults: Array.from({ length: counts.brokenFiles ?? 0 }, () => broken),
  };
  writeFileSync(path, JSON.stringify(contents));
  return path;
}

test('takes both counts from the report', () => {
  expect(tally(report({ passed: 7 }), true)).toEqual({ passed: 7, failed: 0 });
  expect(tally(report({ passed: 7, failed: 2 }), false)).toEqual({ passed: 7, failed: 2 });
});

test('a file that broke before its tests is a failure', () => {
  expect(tally(report({ passed: 7, brokenFiles: 1 }), false)).toEqual({ passed: 7, failed: 1 });
});

test('a skipped test is a failure', () => {
  expect(tally(report({ passed: 7, pending: 1, todo: 1 }), true)).toMatchObject({
    passed: 7,
    failed: 2,
  });
});

test('no report, no test, and a bad end are failures', () => {
  expect(tally(join(folder, 'none.json'), true)).toMatchObject({ passed: 0, failed: 1 });
  expect(tally(report({}), true)).toMatchObject({ passed: 0, failed: 1 });
  expect(tally(report({ passed: 7 }), false)).toMatchObject({ passed: 7, failed: 1 });
});
