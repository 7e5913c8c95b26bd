import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { Announcement } from '#counting';
import { rules } from './rules';
import { outcomesOf, played, standingLike } from './rules/judge';
import type { Told } from './rules/row';
import { rulesDoc } from './rulesDoc';

for (const { number, sentence, rows } of rules) {
  describe(`${number}: ${sentence}`, () => {
    test.each(rows.map((row) => [`${number}: ${row.title}`, row] as const))('%s', (_, row) => {
      const job = played(row);
      expect(rounded(outcomesOf(job.decisions))).toMatchObject(rounded(row.comes));
      if (row.leaves)
        expect(rounded(standingLike(job.state, row.leaves))).toEqual(rounded(row.leaves));
      if (row.tells) expect(toldLike(job.told, row.tells)).toMatchObject(row.tells);
    });
  });
}

test('docs/counting-rules.md is these tables (npm run docs:rules writes it)', () => {
  const path = new URL('../../docs/counting-rules.md', import.meta.url);
  expect(readFileSync(path, 'utf8')).toBe(rulesDoc());
});

/** Thirds and twelfths of a quarter, alike however they were worked out. */
function rounded<T extends object>(value: T): T {
  return JSON.parse(
    JSON.stringify(value, (_, part) => (typeof part === 'number' ? +part.toFixed(6) : part)),
  );
}

/** The announcements a row names, in its order, others between them left out. */
function toldLike(told: readonly Announcement[], wanted: readonly Told[]): readonly Told[] {
  const found: Told[] = [];
  for (const { fact, cue, timing } of told) {
    if (wanted[found.length]?.fact !== fact.kind) continue;
    const verdict = fact.kind === 'counted' || fact.kind === 'read' ? fact.figures.verdict : null;
    found.push({
      fact: fact.kind,
      timing,
      ...(cue === null ? {} : { cue }),
      ...(verdict === null ? {} : { verdict }),
    });
  }
  return found;
}
