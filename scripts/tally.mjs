import { existsSync, readFileSync } from 'node:fs';

/**
 * What a Vitest JSON report says. A test that was skipped, a file that broke before its tests, a run
 * without a report or without a test, and a run that ended badly with every test passed: each fails.
 * @param {string} report the report's path
 * @param {boolean} ended whether the runner's exit code was 0
 * @returns {{ passed: number, failed: number, note?: string }}
 */
export function tally(report, ended) {
  if (!existsSync(report)) return { passed: 0, failed: 1, note: 'the runner left no report' };
  const { testResults, numPassedTests, numFailedTests, numPendingTests, numTodoTests } = JSON.parse(
    readFileSync(report, 'utf8'),
  );
  const brokenFiles = testResults.filter(
    (/** @type {{ status: string, assertionResults: { status: string }[] }} */ file) =>
      file.status === 'failed' && !file.assertionResults.some((test) => test.status === 'failed'),
  ).length;
  const skipped = numPendingTests + numTodoTests;
  const failed = numFailedTests + brokenFiles + skipped;
  if (failed > 0 && skipped > 0) {
    return { passed: numPassedTests, failed, note: `${skipped} skipped, counted as failed` };
  }
  if (failed === 0 && !ended) {
    return {
      passed: numPassedTests,
      failed: 1,
      note: 'every test passed, but the run ended badly',
    };
  }
  if (failed === 0 && numPassedTests === 0)
    return { passed: 0, failed: 1, note: 'no test was run' };
  return { passed: numPassedTests, failed };
}
