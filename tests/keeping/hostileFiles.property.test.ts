import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { initial, replay } from '#counting';
import { readBackup, readJobFile, writeBackup, writeJobFile } from '#keeping';
import { backupChecksum } from '../../src/keeping/backup/writeBackup';
import { checksumOf } from '../../src/keeping/jobFile/writeJobFile';
import { journeys } from './journeys';

/** How many files are mutated: three in four with the checksum made to fit, as an enemy would. */
const RUNS = 20_000;
const SEEDS = 'tests/keeping/hostileSeeds';
const app = { version: '0.1.0', commit: 'abc1234' };
const AT = Date.UTC(2026, 2, 3, 12, 0, 0);

type Path = readonly (string | number)[];
type Fields = Record<string | number, unknown>;

const jobFile: Fields = JSON.parse(writeJobFile(journeys.unnamed!, app, AT));
const longFile: Fields = JSON.parse(writeJobFile(journeys['day-two']!, app, AT));
const backupFile: Fields = JSON.parse(
  writeBackup({ logs: [journeys.unnamed!, journeys.walk!], settings: { units: 'mm' } }, app, AT),
);

function pathsOf(value: unknown, path: Path = []): Path[] {
  const own = path.length > 0 ? [path] : [];
  if (typeof value !== 'object' || value === null) return own;
  const inner = Object.entries(value).flatMap(([name, member]) =>
    pathsOf(member, [...path, Array.isArray(value) ? Number(name) : name]),
  );
  return [...own, ...inner];
}

const bases = [jobFile, longFile, backupFile].map((file) => ({ file, paths: pathsOf(file) }));

const deep = (levels: number): unknown => (levels === 0 ? 1 : [deep(levels - 1)]);

/** Values that have broken programs before. */
const strange = fc.oneof(
  fc.jsonValue({ maxDepth: 3 }),
  fc.constantFrom<unknown>(
    ...[null, true, '', -1, 0, -0, 0.5, 1e-320, 49, 2 ** 31, 2 ** 53, 1e21, 1.7e308, [], {}],
    ...['__proto__', 'constructor', '<img src=x onerror=alert(1)>', '=1+1', '\u0000', '\ud800'],
    ...['x'.repeat(70_000), { __proto__: null }, deep(18)],
  ),
);

type Mutation =
  | { readonly kind: 'put'; readonly where: number; readonly value: unknown }
  | { readonly kind: 'drop' | 'twice' | 'rename'; readonly where: number }
  | { readonly kind: 'swap'; readonly where: number; readonly other: number };

const place = fc.nat(1_000_000);
const mutation: fc.Arbitrary<Mutation> = fc.oneof(
  { weight: 4, arbitrary: fc.record({ kind: fc.constant('put'), where: place, value: strange }) },
  fc.record({ kind: fc.constantFrom('drop', 'twice', 'rename'), where: place }),
  fc.record({ kind: fc.constant('swap'), where: place, other: place }),
);

/** Bytes changed in the text itself, after the rest. */
const textDamage = fc.oneof(
  { weight: 4, arbitrary: fc.constant(null) },
  fc.record({
    at: place,
    cut: fc.nat(40),
    put: fc.constantFrom('', '\ufffd', '{', '"', '1e999', 'NaN', '\u2028', '"__proto__":{},'),
  }),
);

const hostile = fc.record({
  base: fc.nat(bases.length - 1),
  mutations: fc.array(mutation, { minLength: 1, maxLength: 4 }),
  fits: fc.integer({ min: 0, max: 3 }).map((n) => n > 0),
  damage: textDamage,
});
type Hostile = typeof hostile extends fc.Arbitrary<infer T> ? T : never;

function ownerOf(file: Fields, path: Path): Fields | null {
  let owner: unknown = file;
  for (const name of path.slice(0, -1)) {
    if (typeof owner !== 'object' || owner === null) return null;
    owner = Reflect.get(owner, name);
  }
  return typeof owner === 'object' && owner !== null ? (owner as Fields) : null;
}

function mutate(file: Fields, paths: readonly Path[], change: Mutation): void {
  const path = paths[change.where % paths.length]!;
  const owner = ownerOf(file, path);
  const name = path.at(-1)!;
  if (owner === null) return;
  if (change.kind === 'put') owner[name] = change.value;
  else if (change.kind === 'swap') {
    const otherPath = paths[change.other % paths.length]!;
    const other = ownerOf(file, otherPath);
    const otherName = otherPath.at(-1)!;
    // A list has inherited members of its own, such as 'at'.
    if (other !== null && Object.hasOwn(other, otherName))
      owner[name] = structuredClone(other[otherName]);
  } else if (Array.isArray(owner) && change.kind === 'twice') {
    owner.splice(Number(name), 0, structuredClone(owner[Number(name)]));
  } else if (Array.isArray(owner)) owner.splice(Number(name), 1);
  else {
    if (change.kind !== 'drop') owner[`${name}x`] = owner[name];
    if (change.kind !== 'twice') delete owner[name];
  }
}

/** The checksum a forger would put; none fits what is no list, or nests past reason. */
function forged(file: Fields): unknown {
  try {
    if (Array.isArray(file.events)) return checksumOf(file.events);
    if (Array.isArray(file.jobs)) return backupChecksum(file.jobs, file.settings ?? null);
  } catch {
    return '';
  }
  return '';
}

function textOf({ base, mutations, fits, damage }: Hostile): string {
  const { file, paths } = bases[base]!;
  const mutated = structuredClone(file);
  for (const change of mutations) mutate(mutated, paths, change);
  if (fits) mutated.checksum = forged(mutated);
  const text = JSON.stringify(mutated);
  if (damage === null) return text;
  const at = damage.at % text.length;
  return text.slice(0, at) + damage.put + text.slice(at + damage.cut);
}

/** Either reader refuses in a sentence, or gives logs that fold to jobs; the outcome by name. */
async function outcomeOf(text: string, backup: boolean): Promise<string> {
  const read = backup ? await readBackup(text) : await readJobFile(text);
  if (!read.ok) {
    expect(read.sentence).toMatch(/^[A-Z][^\n]*[.]$/);
    expect(read.sentence).not.toMatch(/undefined|NaN|Infinity|null|\[object|[<>]/);
    expect(read.sentence.length).toBeLessThan(300);
    return read.code;
  }
  const logs = 'logs' in read ? read.logs : [read.events];
  for (const events of logs) {
    expect(events.map(({ seq }) => seq)).toEqual(events.map((_event, i) => i + 1));
    expect(replay(events).status).not.toBe(initial.status);
  }
  return 'taken in';
}

test(`${RUNS} mutated files: each is refused in a sentence or taken in whole, none crashes`, async () => {
  const outcomes = new Map<string, number>();
  const before = Object.getOwnPropertyNames(Object.prototype).join();
  const seed = Number(process.env.SEED ?? Date.now() % 2 ** 31);
  console.log(`hostile files: seed ${seed} (SEED=${seed} runs the same again)`);
  await fc.assert(
    fc.asyncProperty(hostile, async (one) => {
      const outcome = await outcomeOf(textOf(one), one.base === 2);
      outcomes.set(outcome, (outcomes.get(outcome) ?? 0) + 1);
    }),
    { numRuns: RUNS, seed },
  );
  console.log(`hostile files, ${RUNS}:`, Object.fromEntries(outcomes));
  expect(Object.getOwnPropertyNames(Object.prototype).join()).toBe(before);
  expect([...outcomes.values()].reduce((a, b) => a + b, 0)).toBeGreaterThanOrEqual(RUNS);
  for (const often of ['wrong shape', 'changed since', 'not JSON', 'out of order', 'too deep']) {
    expect(outcomes.get(often), often).toBeGreaterThan(20);
  }
}, 300_000);

test('files that once broke something are refused or taken in too', async () => {
  const files = readdirSync(SEEDS).filter((name) => name.endsWith('.json'));
  expect(files.length).toBeGreaterThan(0);
  for (const name of files) {
    const text = readFileSync(`${SEEDS}/${name}`, 'utf8');
    await outcomeOf(text, false);
    await outcomeOf(text, true);
  }
});
