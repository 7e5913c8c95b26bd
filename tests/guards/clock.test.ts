import { expect, test } from 'vitest';
import { lint, plant } from './planted';

const planted = [
  'setTimeout(go, 1);',
  'setInterval(go, 1);',
  'window.setTimeout(go, 1);',
  'globalThis.setInterval(go, 1);',
  'export const now = Date.now();',
  'export const today = new Date();',
  'export const start = new Date(0);',
  'export function go() {}',
].join('\n');

test('timers and the time now are refused everywhere in src but in the clock', () => {
  const { status, findings } = lint(plant({ 'src/bench/planted.ts': planted }));
  const lines = findings.filter((finding) => finding.path === 'src/bench/planted.ts');
  expect([...new Set(lines.map((finding) => finding.line))].sort()).toEqual([1, 2, 3, 4, 5, 6]);
  expect(status).not.toBe(0);
  expect(lint(plant({ 'src/clock.ts': planted })).findings).toEqual([]);
});

test('only main hands out the system clock', () => {
  const text = "export { type Clock, systemClock } from '#clock';\n";
  expect(
    lint(plant({ 'src/bench/planted.ts': text })).findings.map((found) => found.message),
  ).toEqual([expect.stringContaining('Only main.tsx hands out the system clock')]);
  expect(lint(plant({ 'src/main.tsx': text })).findings).toEqual([]);
});

test('a pure room leaves nothing to chance', () => {
  const text = 'export const chance = () => Math.random();\n';
  expect(lint(plant({ 'src/counting/planted.ts': text })).status).not.toBe(0);
  expect(lint(plant({ 'src/speaking/planted.ts': text })).findings).toEqual([]);
});
