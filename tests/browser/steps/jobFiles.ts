import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';

/** A job on the demo's set-up, every valve counted. */
export interface CountedFile {
  readonly id: string;
  readonly name: string;
  readonly testPushrodIn: number;
  /** Quarter turns of each valve, in quarters of a quarter. */
  readonly quarters: (cylinder: number, valve: 'intake' | 'exhaust') => number;
}

type Body = Readonly<Record<string, unknown>>;

const demo: { events: [{ setUp: Body & { engine: { firingOrder: number[] } } }] } = JSON.parse(
  readFileSync('demo-data/harrow-fen-pump-4.json', 'utf8'),
);
const { setUp: demoSetUp } = demo.events[0];
const START = Date.UTC(2026, 10, 2, 8, 0, 0);
const LANDINGS = ['nothing', 'a bit past', 'half', 'just shy'];

/** The file of such a job, written out here from docs/job-file.md. */
export function countedFile({ id, name, testPushrodIn, quarters }: CountedFile): string {
  const testPushrod = { mm: testPushrodIn * 25.4, convention: 'tip to tip' };
  const app = { version: 'test', commit: 'test' };
  const bodies: Body[] = [
    { type: 'jobOpened', setUp: { ...demoSetUp, name, testPushrod }, app },
    { type: 'cautionsHeard' },
  ];
  const { firingOrder } = demoSetUp.engine;
  for (const [place, cylinder] of firingOrder.entries()) {
    const both = (['exhaust', 'intake'] as const).map((valve) => ({ cylinder, valve }));
    const [exhaust, intake] = both;
    const position = { angleDeg: place * 90, cylinder, valves: both };
    if (place > 0) bodies.push({ type: 'bledDown' });
    bodies.push({ type: 'positionReached', position, valve: exhaust });
    for (const id of both) {
      const count48 = Math.round(quarters(cylinder, id.valve) * 12);
      const past48 = count48 % 12;
      bodies.push(
        { type: 'zeroTouched' },
        { type: 'counted', to48: count48 - past48, how: 'turns' },
        { type: 'seated', loose: false },
        { type: 'landed', answer: { told: LANDINGS[past48 / 3], past48 } },
        {
          type: 'valveLeft',
          valve: id,
          skipped: false,
          next: id.valve === 'exhaust' ? intake : null,
        },
      );
    }
  }
  const events = bodies.map((body, i) => ({
    jobId: id,
    seq: i + 1,
    v: 1,
    at: START + i * 5000,
    by: 'key',
    ...body,
  }));
  const checksum = createHash('sha256').update(canonical(events)).digest('hex');
  return JSON.stringify({
    format: 'turncaller job',
    version: 1,
    app,
    exportedAt: new Date(START).toISOString(),
    job: { id, name },
    events,
    checksum,
  });
}

/** JSON without white space, names sorted. */
function canonical(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(canonical).join(',')}]`;
  if (typeof value !== 'object' || value === null) return JSON.stringify(value);
  const members = Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1));
  return `{${members.map(([name, one]) => `${JSON.stringify(name)}:${canonical(one)}`).join(',')}}`;
}

/** Brings job files in on the jobs screen, one after another. */
export async function bringIn(page: Page, files: readonly CountedFile[]): Promise<void> {
  await page.evaluate(() => {
    location.hash = '#/jobs';
  });
  const input = page.locator('input[type="file"][aria-label="Bring in a job file"]');
  for (const file of files) {
    const buffer = Buffer.from(countedFile(file));
    await input.setInputFiles({ name: 'job.json', mimeType: 'application/json', buffer });
    await page.getByRole('heading', { level: 2, name: file.name, exact: true }).waitFor();
  }
  expect(await page.getByRole('alert').count()).toBe(0);
}
