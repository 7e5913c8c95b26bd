import fc, { type IProperty } from 'fast-check';
import { expect } from 'vitest';

const RUNS = 1000;

/**
 * Runs a property and prints its seed and what the runs really met. Every kind of case named in
 * `met` must have come up, so a property can't pass by never reaching its subject.
 */
export function checkProperty<T>(
  title: string,
  property: IProperty<T>,
  met: Readonly<Record<string, number>> = {},
  runs: number = RUNS,
): void {
  const seed = process.env.SEED === undefined ? {} : { seed: Number(process.env.SEED) };
  const result = fc.check(property, { numRuns: runs, ...seed });
  const tally = Object.entries(met).map(([name, times]) => `${name} ${times}`);
  console.info([`${title}: seed ${result.seed}, ${result.numRuns} runs`, ...tally].join(', '));
  expect(result.failed, fc.defaultReportMessage(result)).toBe(false);
  for (const [name, times] of Object.entries(met)) {
    expect(times, `${name} never came up`).toBeGreaterThan(0);
  }
}
